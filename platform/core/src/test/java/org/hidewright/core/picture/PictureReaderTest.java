package org.hidewright.core.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a picture holds, and what is told of one that cannot be drawn. */
class PictureReaderTest {
    private static final String PEN = """
            {"shapes": [
              {"path": "M 0 0 H 60 V 8 H 0 Z", "role": "hardware"},
              {"circle": [64, 4, 8], "role": "inner-cut"},
              {"measure": [0, 0, 60, 0], "beside": -6, "of": "length"},
              {"measure": [60, 0, 60, 8], "of": "thickness"},
              {"text": "clip", "at": [40, 12], "anchor": "bottom"}
            ]}
            """;

    private static List<Shape> shapes(String part) {
        PictureReader.Result result = PictureReader.read(PEN);
        assertEquals(List.of(), result.remarks());
        return result.picture()
                .orElseThrow()
                .drawing(part, key -> key.equals("clip") ? "Clip" : "?")
                .shapes();
    }

    @Test
    void questionsThatShareItShowWhatIsOfAllAndTheirOwn() {
        assertEquals(3, shapes("").size());
        List<Shape> length = shapes("length");
        assertEquals(4, length.size());
        DimensionLine measure = length.stream()
                .filter(DimensionLine.class::isInstance)
                .map(DimensionLine.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(60, measure.from().distanceTo(measure.to()), 1e-9);
        assertEquals(-6, measure.offset(), 1e-9);
    }

    @Test
    void linesHaveTheRolesOfDrawingsAndWordsAreLookedUp() {
        List<Shape> shapes = shapes("");
        assertEquals(Role.HARDWARE, shapes.get(0).role());
        assertEquals(Role.INNER_CUT, shapes.get(1).role());
        assertEquals("Clip", ((Label) shapes.get(2)).text());
    }

    @Test
    void aPartThatNothingIsOfIsKnown() {
        Picture pen = PictureReader.read(PEN).picture().orElseThrow();
        assertTrue(pen.has("length"));
        assertFalse(pen.has("width"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"shapes\": [",
                "[]",
                "{}",
                "{\"shapes\": [{\"path\": \"M 0 0 sheep\", \"role\": \"cut\"}]}",
                "{\"shapes\": [{\"path\": \"M 0 0 H 40\", \"role\": \"sheep\"}]}",
                "{\"shapes\": [{\"path\": \"M 0 0 H 40\"}]}",
                "{\"shapes\": [{\"circle\": [0, 0], \"role\": \"cut\"}]}",
                "{\"shapes\": [{\"circle\": [0, 0, 0], \"role\": \"cut\"}]}",
                "{\"shapes\": [{\"measure\": [1, 1, 1, 1]}]}",
                "{\"shapes\": [{\"measure\": [0, 0, 40, \"0\"]}]}",
                "{\"shapes\": [{\"measure\": [0, 0, 40, 0], \"beside\": \"far\"}]}",
                "{\"shapes\": [{\"text\": \"clip\"}]}",
                "{\"shapes\": [{\"text\": \"clip\", \"at\": [0, 0], \"anchor\": \"sheep\"}]}"
            })
    void whatCannotBeDrawnIsToldWithItsPlace(String text) {
        PictureReader.Result result = PictureReader.read(text);
        assertTrue(result.picture().isEmpty());
        assertTrue(result.remarks().stream().anyMatch(remark -> remark.stops()), result.remarks()::toString);
        assertTrue(result.remarks().stream().allMatch(remark -> remark.place() != null), result.remarks()::toString);
    }
}
