package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.open.FilledPanels;
import org.hidewright.layout.open.OpenInstance;
import org.hidewright.layout.open.RunBudget;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;
import org.junit.jupiter.api.Test;

class StripLayoutsTest {
    private static List<Found> search(List<Piece> pieces, double height, long seed, int workers, long tries) {
        List<Found> found = Collections.synchronizedList(new ArrayList<>());
        new StripLayouts(pieces, height).search(RunBudget.ofTries(seed, workers, tries), found::add);
        return found;
    }

    /** Pieces that fill three panels exactly (open/terashima/SOURCE.md) on a strip as high as a panel. */
    @Test
    void piecesOfThreePanelsTakeLittleMoreThanTheirLength() throws IOException {
        List<Piece> pieces =
                OpenInstance.read(FilledPanels.folder().resolve("TA001.txt")).pieces();
        List<Found> found = search(pieces, 1000, 1, 1, 400_000);
        double before = Double.POSITIVE_INFINITY;
        for (Found each : found) {
            assertTrue(each.length() < before);
            assertEquals(pieces.size(), each.laid().size());
            Sheet strip = Sheet.plain("strip", Outline.rectangle(0, 0, each.length(), 1000));
            assertEquals(List.of(), LayoutCheck.faults(pieces, List.of(strip), each.laid(), 0));
            before = each.length();
        }
        assertTrue(before < 3500, "length " + before);
        assertTrue(before > 3000, "shorter than the area allows: " + before);
    }

    @Test
    void theSameSeedAndBudgetFindTheSameLayouts() throws IOException {
        List<Piece> pieces =
                OpenInstance.read(FilledPanels.folder().resolve("TB002.txt")).pieces();
        List<Found> once = search(pieces, 1000, 7, 1, 60_000);
        assertEquals(once, search(pieces, 1000, 7, 1, 60_000));
        assertTrue(once.size() > 1);
        assertTrue(!once.equals(search(pieces, 1000, 8, 1, 60_000)));
    }

    @Test
    void twoWorkersHandOverOneAfterTheOther() throws IOException {
        List<Piece> pieces =
                OpenInstance.read(FilledPanels.folder().resolve("TC001.txt")).pieces();
        List<Found> found = search(pieces, 1000, 3, 2, 60_000);
        for (int index = 1; index < found.size(); index++) {
            assertTrue(found.get(index).length() < found.get(index - 1).length());
        }
        assertTrue(found.size() > 1);
    }

    /** Leather cut along the backbone: each piece within ten degrees of it, either way round. */
    @Test
    void piecesStayWithinTheirWindows() throws IOException {
        Turning along = Turning.about(List.of(0.0, 180.0), 10);
        List<Piece> pieces = OpenInstance.read(FilledPanels.folder().resolve("TA001.txt")).pieces().stream()
                .map(piece -> new Piece(piece.name(), piece.outline(), along, piece.avoids()))
                .toList();
        List<Found> found = search(pieces, 1000, 1, 1, 60_000);
        assertTrue(found.size() > 1);
        boolean slanted = false;
        for (Found each : found) {
            slanted |= each.laid().stream().anyMatch(laid -> Math.abs(Math.sin(laid.angle())) > 1e-3);
            assertTrue(each.laid().stream().allMatch(laid -> along.allows(laid.angle())));
        }
        assertTrue(slanted);
    }

    @Test
    void aPieceTooTallForTheStripIsNamed() {
        Piece tall = new Piece("front", Outline.rectangle(0, 0, 4, 30), Turning.steps(List.of(0.0)), 0);
        String told = assertThrows(IllegalArgumentException.class, () -> new StripLayouts(List.of(tall), 20))
                .getMessage();
        assertTrue(told.startsWith("front is too tall"), told);
        Piece turned = new Piece("front", Outline.rectangle(0, 0, 4, 30), Turning.free(), 0);
        assertEquals(1, search(List.of(turned), 20, 1, 1, 1).size());
    }
}
