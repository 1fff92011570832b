package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.hidewright.layout.open.FilledPanels;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;
import org.hidewright.layout.task.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CornerGridTest {
    private static final Turning QUARTERS = Turning.steps(List.of(0.0, 90.0, 180.0, 270.0));
    private static final Sheet PANEL = Sheet.plain("panel", Outline.rectangle(0, 0, 240, 120));

    private static CornerGrid grid(double width, Turning turning, Sheet sheet) {
        Piece piece = new Piece("strap", Outline.rectangle(0, 0, width, 36), turning, Piece.ALL);
        return CornerGrid.of(List.of(piece), List.of(sheet));
    }

    /** The greatest common divisor of 240, 120, 36 and the width, by hand. */
    @ParameterizedTest
    @CsvSource({"48, 12", "50, 2", "49, 1", "48.5, 0.5", "48.25, 0.25"})
    void itsStepDividesAllCorners(double width, double step) {
        assertEquals(new CornerGrid(step, 240), grid(width, QUARTERS, PANEL));
    }

    /** A tenth has no exact double; other angles than quarters and hides leave the grid; so do poorer places. */
    @Test
    void thereIsNoneWherePlacesWouldNotBeExact() {
        assertFalse(grid(48.1, QUARTERS, PANEL).exists());
        assertFalse(grid(48, Turning.free(), PANEL).exists());
        assertFalse(grid(48, Turning.steps(List.of(0.0, 45.0)), PANEL).exists());
        assertFalse(grid(48, Turning.about(List.of(0.0), 5), PANEL).exists());
        Outline hide = new Outline(new double[] {0, 240, 200, 0}, new double[] {0, 0, 120, 120});
        assertFalse(grid(48, QUARTERS, Sheet.plain("hide", hide)).exists());
        Zone scar = new Zone(Outline.rectangle(0, 0, 12, 12), 1);
        assertFalse(grid(48, QUARTERS, new Sheet("panel", PANEL.outline(), List.of(), List.of(scar), 1))
                .exists());
    }

    /** A grid so fine that a search does not tell its places apart is none. */
    @Test
    void aGridTooFineIsNone() {
        double fine = 1.0 / 1024;
        assertFalse(grid(48 + fine, QUARTERS, PANEL).exists());
        assertEquals(1.0 / 16, grid(48 + 1.0 / 16, QUARTERS, PANEL).step());
    }

    @Test
    void thePlaceNearestIsTold() {
        CornerGrid grid = new CornerGrid(2.5, 240);
        assertEquals(new Laid(3, 1, 0, 10, -2.5), grid.nearest(new Laid(3, 1, 0, 11.2, -3.7)));
    }

    /** Published layouts without a hair between the pieces (open/terashima/SOURCE.md): all their corners are even numbers. */
    @ParameterizedTest
    @MethodSource("org.hidewright.layout.open.FilledPanels#all")
    void publishedPanelsHaveOne(FilledPanels published) {
        List<Piece> square = published.pieces().stream()
                .map(piece -> new Piece(piece.name(), piece.outline(), QUARTERS, Piece.ALL))
                .toList();
        assertEquals(2, CornerGrid.of(square, published.sheets()).step());
    }
}
