package org.hidewright.core.jobcard;

import static org.hidewright.core.bench.Shop.ENGLISH;
import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hidewright.core.bench.Plate;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.bench.Spotting;
import org.hidewright.core.paper.DrawingWriter.Named;
import org.junit.jupiter.api.Test;

/** Drawings that bundles want written as files for machines. */
class DrawnFilesTest {
    private final Shop shop = new Shop(new Spotting(), new Relay(), new Plate());

    private Map<String, List<Named>> files(String... slips) {
        return new Packet(shop.work(slips), ENGLISH).drawings();
    }

    @Test
    void aDrawingThatIsCutByIsAFileOfTheNameOfItsSlip() {
        Map<String, List<Named>> files =
                files(slip("cord", "spotting", json("'line': '80 mm'")), slip("r", "relay", json("'take': '1 mm'")));
        assertEquals(Set.of("cord"), files.keySet());
        Named file = files.get("cord").get(0);
        assertEquals("line", file.id());
        assertEquals("Spotting “cord”", file.title());
        assertEquals(80, file.drawing().bounds().maxX(), 1e-9);
    }

    @Test
    void aSlipOfTheNameOfAFileOfPatternsTakesNothingAway() {
        Map<String, List<Named>> files = files(
                slip("plate", "plate", json("'width': '100 mm'")),
                slip("patterns-plate", "spotting", json("'line': '80 mm'")));
        assertEquals(List.of("patterns-plate", "patterns-plate-2"), List.copyOf(files.keySet()));
        assertEquals("line", files.get("patterns-plate-2").get(0).id());
    }

    @Test
    void aSlipWithoutAnswersHasNoFile() {
        assertEquals(Map.of(), files(slip("cord", "spotting", json("'note': 'no line'"))));
    }
}
