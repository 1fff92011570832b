package org.hidewright.costing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.measure.Length;
import org.hidewright.costing.ItemCost.NoPriceLine;

/**
 * What a batch needs and nobody gave a price for, with enough for what is spoilt: it is in no sum, and must be bought all the
 * same.
 */
final class WithoutPrice {
    private WithoutPrice() {}

    /**
     * Fittings of one name together, then the thread.
     *
     * @param fittings of one piece
     * @param thread of one piece; nothing where it has a price
     */
    static List<NoPriceLine> of(List<Fitting> fittings, Length thread, int pieces, double spoilage) {
        double begun = pieces / (1 - spoilage);
        List<NoPriceLine> rows = new ArrayList<>();
        Map<String, List<Fitting>> byName = fittings.stream()
                .collect(Collectors.groupingBy(Fitting::name, LinkedHashMap::new, Collectors.toList()));
        byName.forEach((name, alike) -> rows.add(new NoPriceLine(
                CostKind.HARDWARE.line(alike.get(0).id()),
                CostKind.HARDWARE,
                name,
                Phrase.of(Shopping.COUNT, LeatherBought.whole(alike.size() * begun)))));
        if (thread.mm() > 0) {
            rows.add(new NoPriceLine(
                    CostKind.THREAD.key(), CostKind.THREAD, "", SoldBy.LENGTH.atLeast(thread.times(begun))));
        }
        return List.copyOf(rows);
    }
}
