package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.project.Link;
import org.junit.jupiter.api.Test;

class LinkableTest {
    private final Shop shop = new Shop(new Sampler(), new Relay());

    private final WorkedProject worked = shop.work(
            slip("first", "sampler", json("'thickness': '2 mm'")),
            slip("middle", "relay", json("'take': {'from': 'first', 'answer': 'cut'}")),
            slip("last", "relay", json("'take': {'from': 'middle', 'answer': 'give'}")));

    private Question question(String slip, String key) {
        return worked.slips()
                .get(slip)
                .installed()
                .orElseThrow()
                .calculator()
                .declaration()
                .question(key)
                .orElseThrow();
    }

    private List<String> to(String slip, String key) {
        return Linkable.to(worked, slip, question(slip, key)).stream()
                .map(Link::toString)
                .toList();
    }

    /** What it offers, followed, is taken; the links themselves are the proof. */
    @Test
    void everyLinkOfferedHolds() throws Exception {
        for (String key : List.of("thickness", "turn", "panel", "holes", "shrink", "tannage", "lined", "marks")) {
            for (Link link : Linkable.to(worked, "last", question("first", key))) {
                Map<String, Object> asked = new LinkedHashMap<>(Map.of("thickness", "2 mm"));
                asked.put(key, linked(link));
                String probe = JsonOut.line(asked);
                WorkedProject other = shop.work(
                        slip("first", "sampler", json("'thickness': '2 mm'")),
                        slip("middle", "relay", json("'take': '3 mm'")),
                        slip("probe", "sampler", probe.substring(1, probe.length() - 1)));
                List<String> said = Shop.keys(other.slips().get("probe").remarks());
                assertTrue(
                        said.stream().allMatch(one -> one.endsWith("-limit") || one.equals("unusual")),
                        key + " from " + link + ": " + said);
            }
        }
    }

    private static Map<String, Object> linked(Link link) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", link.slip());
        json.put("answer", link.answer());
        if (!link.row().isEmpty()) {
            json.put("row", link.row());
        }
        if (!link.column().isEmpty()) {
            json.put("column", link.column());
        }
        return json;
    }

    @Test
    void nothingIsOfferedThatHangsOnTheAskingSlip() {
        assertTrue(
                to("last", "take").contains("middle.give"), to("last", "take").toString());
        assertTrue(to("last", "take").contains("first.cut"));
        assertFalse(to("middle", "take").contains("last.give"));
        assertFalse(to("middle", "take").contains("middle.give"));
        assertEquals(List.of(), to("first", "thickness"), "both others hang on it");
    }

    @Test
    void onlyWhatFitsIsOffered() {
        assertFalse(Linkable.to(worked, "last", question("first", "thickness")).isEmpty());
        assertTrue(Linkable.to(worked, "last", question("first", "core")).isEmpty(), "variants are chosen, not linked");
        assertEquals(List.of(), Linkable.to(worked, "nowhere", question("first", "thickness")));
    }
}
