package org.hidewright.core.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.junit.jupiter.api.Test;

/** Every line says where its answer stands, so that it can be changed there. */
class AskedLineTest {
    private final WorkedSlip slip = new Shop(new Sampler())
            .one(
                    "sampler",
                    "'thickness': '2 mm', 'core': {'is': 'own-layers', 'own-layers': {'layers': '3'}},"
                            + " 'edge': {'bevel': '0.5 mm'}, 'layers': [{'thickness': '1 mm'},"
                            + " {'id': 'b', 'thickness': '3 mm'}], 'sections': [{'id': 'r', 'run': {'length': '9 mm'}}]");

    @Test
    void pathsGoThroughGroupsVariantsAndRows() {
        List<String> typed = slip.asked().stream()
                .filter(line -> line.typed() && !line.text().isEmpty())
                .map(line -> line.path() + "=" + line.text())
                .toList();
        assertEquals(
                List.of(
                        "thickness=2 mm",
                        "core.own-layers.layers=3",
                        "edge.bevel=0.5 mm",
                        "layers[row-1].thickness=1 mm",
                        "layers[b].thickness=3 mm",
                        "sections[r].run.length=9 mm"),
                typed);
    }

    @Test
    void whatWasTypedStandsThere() {
        for (AskedLine line : slip.asked()) {
            if (line.typed() && !line.text().isEmpty()) {
                assertEquals(
                        line.text(),
                        ((JsonScalar) slip.slip().answer(line.path()).orElseThrow()).text());
            } else if (line.preset()) {
                assertTrue(
                        slip.slip().answer(line.path()).isEmpty(), line.path().toString());
            }
        }
    }
}
