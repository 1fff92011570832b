package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.open.FilledPanels;
import org.hidewright.layout.open.OpenInstance;
import org.hidewright.layout.open.RunBudget;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;
import org.hidewright.layout.task.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetLayoutsTest {
    private static List<SheetsFound> search(List<Piece> pieces, List<Sheet> sheets, int workers, long tries) {
        List<SheetsFound> found = Collections.synchronizedList(new ArrayList<>());
        new SheetLayouts(pieces, sheets).search(RunBudget.ofTries(1, workers, tries), found::add);
        for (SheetsFound each : found) {
            assertEquals(List.of(), LayoutCheck.faults(pieces, sheets, each.laid(), 0));
            List<Integer> all = Stream.concat(each.laid().stream().map(Laid::piece), each.leftOver().stream())
                    .sorted()
                    .toList();
            assertEquals(
                    java.util.stream.IntStream.range(0, pieces.size()).boxed().toList(), all);
        }
        for (int index = 1; index < found.size(); index++) {
            assertTrue(found.get(index).betterThan(found.get(index - 1)));
        }
        return found;
    }

    private static SheetsFound last(List<SheetsFound> found) {
        return found.get(found.size() - 1);
    }

    /**
     * What fills panels exactly by its known best layout (open/terashima/SOURCE.md) takes one more at most, within a budget that is
     * small.
     */
    @ParameterizedTest
    @CsvSource({"TA001.txt, 3", "TB002.txt, 10"})
    void piecesThatFillPanelsTakeAtMostOneMore(String name, int fewest) throws IOException {
        OpenInstance instance = OpenInstance.read(FilledPanels.folder().resolve(name));
        assertEquals(fewest * 1e6, instance.area(), 1e-3);
        SheetsFound found = last(search(instance.pieces(), instance.sheets(), 2, 2_000_000));
        assertEquals(List.of(), found.leftOver());
        assertTrue(found.cost() <= fewest + 1, found.cost() + " of " + fewest);
    }

    /**
     * Two panels cut up by straight lines, worked by hand: a strap of half the height, two triangles and a square; and a trapezium of
     * half the panel with what is left beside it. They take two panels again, without a hair between them.
     */
    @ParameterizedTest
    @CsvSource({"1", "0.25", "12.5"})
    void panelsCutIntoPiecesAreFilledAgain(double scale) {
        double[][][] rings = {
            {{0, 240, 240, 0}, {0, 0, 50, 50}},
            {{0, 140, 0}, {0, 0, 50}},
            {{140, 140, 0}, {0, 50, 50}},
            {{0, 100, 100, 0}, {0, 0, 50, 50}},
            {{0, 160, 80, 0}, {0, 0, 100, 100}},
            {{160, 240, 240, 80}, {0, 0, 100, 100}}
        };
        List<Piece> pieces = new ArrayList<>();
        for (double[][] ring : rings) {
            Outline outline = new Outline(
                    Arrays.stream(ring[0]).map(x -> x * scale).toArray(),
                    Arrays.stream(ring[1]).map(y -> y * scale).toArray());
            pieces.add(
                    new Piece("piece " + pieces.size(), outline, Turning.steps(List.of(0.0, 90.0, 180.0, 270.0)), 0));
        }
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, 240 * scale, 100 * scale));
        SheetsFound found = last(search(pieces, Collections.nCopies(4, panel), 1, 1_000_000));
        assertEquals(List.of(), found.leftOver());
        assertEquals(2, found.cost());
    }

    /** Three straps as long as the panel: their ends are flush with its edges, and no digit of a sum may keep them off. */
    @ParameterizedTest
    @CsvSource({"1000, 600, 0", "279.4, 215.9, 90", "0.7, 0.3, 0"})
    void piecesAsLongAsThePanelAreLaid(double length, double height, double turned) {
        Outline strap = new Outline(
                new double[] {0, length, length, length / 3, 0},
                new double[] {0, 0, height / 4, height / 4, height / 5});
        List<Piece> pieces = new ArrayList<>();
        for (int number = 0; number < 3; number++) {
            pieces.add(new Piece("strap " + number, strap, Turning.steps(List.of(turned)), 0));
        }
        boolean upright = turned == 90;
        Outline panel = Outline.rectangle(0, 0, upright ? height : length, upright ? length : height);
        SheetsFound found = last(search(pieces, List.of(Sheet.plain("panel", panel)), 1, 100_000));
        assertEquals(List.of(), found.leftOver());
    }

    /**
     * By their areas eight discs would fit one panel; in truth five do (a square holds five of a radius of 0.2071 of its side, six of
     * 0.1877: Schaer and others, from memory). The other three are drawn together all the same: two in the corners and one against
     * both reach to 64.6.
     */
    @Test
    void wherePanelsCannotBeGivenUpTheLastIsDrawnTogether() {
        double[] x = new double[40];
        double[] y = new double[40];
        for (int corner = 0; corner < 40; corner++) {
            x[corner] = 19.7 * Math.cos(2 * Math.PI * corner / 40);
            y[corner] = 19.7 * Math.sin(2 * Math.PI * corner / 40);
        }
        Outline disc = new Outline(x, y);
        List<Piece> pieces = new ArrayList<>();
        for (int number = 0; number < 8; number++) {
            pieces.add(new Piece("disc " + number, disc, Turning.steps(List.of(0.0)), 0));
        }
        Outline panel = Outline.rectangle(0, 0, 100, 100);
        List<Sheet> panels = List.of(Sheet.plain("one", panel), Sheet.plain("other", panel));
        SheetsFound found = last(search(pieces, panels, 1, 1_000_000));
        assertEquals(List.of(), found.leftOver());
        assertEquals(3 * disc.area(), found.lastArea(), 1e-6);
        assertTrue(found.lastRest() > (100 - 66) * 100, "left " + found.lastRest());
    }

    /** A hide with a bay, a hole and a scar: what may not lie on the scar does not, and what may does. */
    @Test
    void onAHidePiecesKeepToTheLeatherTheyAskFor() {
        Outline hide = new Outline(new double[] {0, 100, 100, 60, 50, 40, 0}, new double[] {0, 0, 60, 60, 30, 60, 60});
        Sheet sheet = new Sheet(
                "hide",
                hide,
                List.of(Outline.rectangle(10, 10, 20, 20)),
                List.of(new Zone(Outline.rectangle(60, 5, 95, 50), 1)),
                1);
        Outline square = Outline.rectangle(0, 0, 14, 14);
        List<Piece> pieces = new ArrayList<>();
        for (int number = 0; number < 16; number++) {
            pieces.add(new Piece("piece " + number, square, Turning.free(), number % 2 == 0 ? 1 : 3));
        }
        SheetsFound found = last(search(pieces, List.of(sheet), 1, 3_000_000));
        assertTrue(found.laid().size() >= 14, found.laid().size() + " laid");
        boolean onTheScar = found.laid().stream()
                .filter(laid -> pieces.get(laid.piece()).avoids() == 1)
                .anyMatch(laid -> Forms.box(laid, pieces.get(laid.piece()))[0] > 60);
        assertTrue(onTheScar);
    }

    @Test
    void whatCannotBeLaidIsLeftOverByItsNumber() {
        Outline large = Outline.rectangle(0, 0, 60, 60);
        Outline small = Outline.rectangle(0, 0, 20, 20);
        Piece one = new Piece("front", large, Turning.steps(List.of(0.0)), 0);
        Piece other = new Piece("back", large, Turning.steps(List.of(0.0)), 0);
        Piece tab = new Piece("tab", small, Turning.steps(List.of(0.0)), 0);
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, 100, 100));
        SheetsFound found = last(search(List.of(one, tab, other), List.of(panel), 1, 200_000));
        assertEquals(2, found.laid().size());
        assertEquals(1, found.leftOver().size());
        assertEquals(3600, found.leftOverArea());
    }

    /** What fits no sheet at all is told once and keeps no search from its end; what fits is laid all the same. */
    @Test
    void whatFitsNoSheetKeepsNobodyFromTheRest() {
        Piece tooLong = new Piece("long", Outline.rectangle(0, 0, 150, 10), Turning.steps(List.of(0.0, 90.0)), 0);
        Piece any = new Piece("any", Outline.rectangle(0, 0, 40, 40), Turning.steps(List.of(0.0)), 0);
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, 100, 100));
        SheetsFound found = last(search(List.of(tooLong, any, any), List.of(panel, panel), 1, 200_000));
        assertEquals(List.of(0), found.leftOver());
        assertEquals(1, found.cost());
        assertEquals(
                List.of(0),
                last(search(List.of(tooLong), List.of(panel), 1, 200_000)).leftOver());
    }

    /** Sixteen squares of 20 with a hair between them reach a little over 80 of a panel that is 200 long. */
    @Test
    void onTheLastSheetPartsAreDrawnTogether() {
        Piece any = new Piece("any", Outline.rectangle(0, 0, 20, 20), Turning.steps(List.of(0.0)), 0);
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, 200, 82));
        List<SheetsFound> found = search(Collections.nCopies(16, any), List.of(panel), 1, 1_000_000);
        assertTrue(
                last(found).lastRest() > (200 - 84) * 82, "left " + last(found).lastRest());
        assertEquals(16 * 400, last(found).lastArea(), 1e-9);
    }

    /** Three squares of 100 side by side along a short edge of 600 by 400 leave 500 by 400, along a long one 600 by 300. */
    @ParameterizedTest
    @CsvSource({"600, 400", "400, 600"})
    void mostIsLeftInOnePieceOnWhicheverSide(double width, double height) {
        Piece any = new Piece("any", Outline.rectangle(0, 0, 100, 100), Turning.free(), 0);
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, width, height));
        SheetsFound found = last(search(Collections.nCopies(3, any), List.of(panel), 1, 400_000));
        assertTrue(found.lastRest() > 495 * 400, "left " + found.lastRest());
    }

    /** Two cheap panels hold what one dear one would. */
    @Test
    void theDearSheetIsGivenUp() {
        Piece any = new Piece("any", Outline.rectangle(0, 0, 40, 40), Turning.steps(List.of(0.0)), 0);
        Sheet dear = new Sheet("dear", Outline.rectangle(0, 0, 100, 100), List.of(), List.of(), 9);
        Sheet cheap = new Sheet("cheap", Outline.rectangle(0, 0, 50, 100), List.of(), List.of(), 2);
        SheetsFound found = last(search(Collections.nCopies(4, any), List.of(dear, cheap, cheap), 1, 2_000_000));
        assertEquals(List.of(), found.leftOver());
        assertEquals(4, found.cost());
    }
}
