package org.hidewright.layout.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenInstanceTest {
    @TempDir
    Path folder;

    private OpenInstance read(String text) throws IOException {
        Path file = folder.resolve("instance");
        Files.writeString(file, text);
        return OpenInstance.read(file);
    }

    @Test
    void aStripIsRead() throws IOException {
        OpenInstance strip = read("""
            {"name": "two", "strip_height": 40.004, "items": [
              {"id": 0, "demand": 2, "allowed_orientations": [0, 180],
               "shape": {"type": "simple_polygon", "data": [[0, 0], [4, 0], [4, 3], [0, 0]]}},
              {"id": 7, "demand": 1, "shape": {"type": "rectangle",
               "data": {"x_min": 1, "y_min": 2, "width": 5, "height": 6}}}]}
            """);
        assertEquals(40.004, strip.stripHeight().orElseThrow());
        assertEquals(List.of(), strip.sheets());
        assertEquals(
                List.of("item 0, copy 1", "item 0, copy 2", "item 7, copy 1"),
                strip.pieces().stream().map(Piece::name).toList());
        assertEquals(2 * 6 + 30, strip.area());
        assertEquals(3, strip.pieces().get(0).outline().corners());
        assertFalse(strip.pieces().get(0).turning().allows(1));
        assertTrue(strip.pieces().get(2).turning().allows(1));
    }

    @Test
    void hidesAreReadWithHolesAndQualities() throws IOException {
        OpenInstance hides = read("""
            {"name": "hide", "items": [{"id": 0, "demand": 1, "min_quality": 1,
               "shape": {"type": "simple_polygon", "data": [[0, 0], [4, 0], [4, 3]]}}, {"id": 1, "demand": 1,
               "shape": {"type": "simple_polygon", "data": [[0, 0], [4, 0], [4, 3]]}}],
             "bins": [{"id": 3, "cost": 9, "stock": 2, "shape": {"type": "polygon",
               "data": {"outer": [[0, 0], [20, 0], [20, 20], [0, 20]], "inner": [[[1, 1], [2, 1], [2, 2]]]}},
               "zones": [{"quality": 0, "shape": {"type": "simple_polygon", "data": [[5, 5], [6, 5], [6, 6]]}},
                         {"quality": 1, "shape": {"type": "simple_polygon", "data": [[8, 8], [9, 8], [9, 9]]}}]}]}
            """);
        assertTrue(hides.stripHeight().isEmpty());
        assertEquals(2, hides.sheets().size());
        Sheet hide = hides.sheets().get(0);
        assertEquals(9, hide.cost());
        assertEquals(2, hide.holes().size());
        assertEquals(1, hide.zones().size());
        assertEquals(400 - 1, hide.area());
        assertEquals(
                List.of(1L, Piece.ALL),
                hides.pieces().stream().map(Piece::avoids).toList());
    }

    @Test
    void panelsAreRead() throws IOException {
        OpenInstance panels = OpenInstance.read(FilledPanels.folder().resolve("TA001.txt"));
        assertEquals(30, panels.pieces().size());
        assertEquals(30, panels.sheets().size());
        // what fills three panels of 1000 x 1000
        assertEquals(3_000_000, panels.area(), 1e-6);
    }
}
