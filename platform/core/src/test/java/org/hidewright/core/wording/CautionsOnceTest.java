package org.hidewright.core.wording;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Predicate;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.junit.jupiter.api.Test;

class CautionsOnceTest {
    /** Above 5 mm the sampler raises a check, which names the thickness, and a caution. */
    @Test
    void aCautionInTheSameWordsIsLetThroughOnceAndAnythingElseAlways() {
        List<Remark> remarks = new Shop(new Sampler())
                .work(
                        slip("a", "sampler", json("'thickness': '6 mm'")),
                        slip("b", "sampler", json("'thickness': '6 mm'")))
                .remarks();
        assertEquals(List.of("thick", "sharp", "thick", "sharp"), keys(said(remarks, remark -> true)));
        assertEquals(List.of("thick", "sharp", "thick"), keys(said(remarks, new CautionsOnce(Shop.ENGLISH))));
        assertEquals(
                List.of("thick", "sharp", "thick"),
                keys(said(remarks, new CautionsOnce(Shop.ENGLISH))),
                "another list begins anew");
    }

    private static List<Remark> said(List<Remark> remarks, Predicate<Remark> heard) {
        return remarks.stream()
                .filter(remark -> !remark.key().contains("unusual"))
                .filter(heard)
                .toList();
    }
}
