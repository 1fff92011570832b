package org.hidewright.layout;

import static org.hidewright.layout.Cuts.at;
import static org.hidewright.layout.Cuts.hide;
import static org.hidewright.layout.Cuts.panel;
import static org.hidewright.layout.Cuts.priced;
import static org.hidewright.layout.Cuts.rectangle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.layout.CuttingLayout.Cut;
import org.hidewright.layout.CuttingLayout.Places;
import org.hidewright.layout.PiecesFromLeather.Gives;
import org.hidewright.layout.PiecesFromLeather.Stock;
import org.hidewright.layout.open.RunBudget;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many whole pieces leather gives: where rectangles fill it exactly, that is plain arithmetic. */
class PiecesFromLeatherTest {
    private static final long TRIES = 400_000;

    private static Stock stock(Cuts cuts) {
        Cut cut = cuts.cut();
        return new Stock(cut.item(), cut.leather(), cut.gap(), cut.within(), cut.sheets(), cut.rules(), cut.layout());
    }

    private static Outcome<Gives> outcome(Cuts cuts) {
        return new PiecesFromLeather().calculate(stock(cuts), Working.NONE);
    }

    private static Gives answers(Cuts cuts) {
        Outcome<Gives> outcome = outcome(cuts);
        return outcome.answers().orElseThrow(() -> new AssertionError(outcome.toString()));
    }

    private static List<Gives> search(Cuts cuts, long tries) {
        List<Places> found = new ArrayList<>();
        new PiecesFromLeather().search(stock(cuts), RunBudget.ofTries(1, 1, tries), found::add);
        return found.stream().map(places -> answers(cuts.laid(places.pieces()))).toList();
    }

    private static Gives last(List<Gives> found) {
        return found.get(found.size() - 1);
    }

    /** 4 columns of 48 and 2, and 5 rows of 38 and 2, with 2 to the edges, in 202 by 202; and edge to edge, with no gap. */
    @ParameterizedTest
    @CsvSource({"202, 2", "240, 0"})
    void rectanglesEdgeToEdgeAreAllFound(double side, double gap) {
        int count = gap == 0 ? 5 * 6 : 4 * 5;
        double height = gap == 0 ? 40 : 38;
        Cuts cuts = Cuts.of(rectangle("tag", 48, height)).apart(gap).on(panel("panel", side, side, 1));
        assertEquals(count, last(search(cuts, TRIES)).pieces());
    }

    /** The same in 204 by 204: 4 columns of 48 and 2, and 5 rows of 38 and 2, with 2 to the edges. */
    @Test
    void rectanglesThatFillAPanelAreAllFound() {
        Cuts cuts = Cuts.of(rectangle("tag", 48, 38)).on(priced(panel("panel", 204, 204, 1), 30));
        Gives most = last(search(cuts, TRIES));
        assertEquals(20, most.pieces());
        assertEquals(22, most.atMost(), "204 * 204 / (48 * 38)");
        assertEquals("1.50", most.eachCosts().orElseThrow().amount().toPlainString());
        assertEquals(
                "30", most.oneMore().orElseThrow().amount().stripTrailingZeros().toPlainString());
        assertEquals(204.0 * 204 / 20, most.eachTakes().orElseThrow().mm2(), 1e-6);
    }

    @Test
    void eachThatIsFoundHasMoreThanTheOneBefore() {
        List<Gives> found = search(Cuts.of(rectangle("tag", 48, 38)).on(panel("panel", 300, 300, 1)), TRIES);
        for (int index = 1; index < found.size(); index++) {
            assertTrue(found.get(index).pieces() > found.get(index - 1).pieces(), found.toString());
        }
        assertTrue(found.size() > 1, found.toString());
    }

    /** A front and two backs are one piece: with room for 5 rectangles there is one whole piece. */
    @Test
    void onlyWholePiecesCount() {
        Cuts cuts = Cuts.of(
                        rectangle("front", 96, 96), rectangle("back", 96, 96).pieces(2, 0))
                .on(panel("strip", 506, 102, 1));
        Gives most = last(search(cuts, TRIES));
        assertEquals(1, most.pieces());
        assertEquals(1, most.atMost());
        Gives two = answers(cuts.laid(
                at("front", "strip", 50, 50, 0), at("back-1", "strip", 150, 50, 0), at("back-2", "strip", 250, 50, 0)));
        assertEquals(1, two.pieces());
        assertEquals(0, answers(cuts.laid(at("front", "strip", 50, 50, 0))).pieces());
    }

    @Test
    void whatStandsThereIsBeatenOrKept() {
        Cuts cuts = Cuts.of(rectangle("tag", 48, 38)).on(panel("panel", 104, 44, 1));
        assertEquals(2, last(search(cuts, TRIES)).pieces());
        Cuts full = cuts.laid(at("tag-1", "panel", 26.2, 21.2, 0), at("tag-2", "panel", 76.3, 21.2, 0));
        assertEquals(2, answers(full).pieces());
        assertEquals(List.of(), search(full, TRIES));
    }

    @Test
    void theSameSeedFindsTheSame() {
        Cuts cuts = Cuts.of(rectangle("tag", 48, 38)).on(hide("0,0 300,20 340,200 150,260 -20,180", 5));
        List<Gives> found = search(cuts, 100_000);
        assertTrue(found.size() > 2, found.toString());
        assertEquals(found, search(cuts, 100_000));
    }

    @Test
    void anotherSheetIsTheCheapestThatIsLargeEnough() {
        Cuts cuts = Cuts.of(rectangle("tag", 48, 38))
                .on(
                        priced(panel("offcut", 30, 30, 5), 1),
                        priced(panel("panel", 200, 200, 1), 30),
                        priced(panel("side", 900, 500, 1), 25));
        assertEquals(
                "25",
                answers(cuts)
                        .oneMore()
                        .orElseThrow()
                        .amount()
                        .stripTrailingZeros()
                        .toPlainString());
        Cuts unpriced = cuts.on(panel("panel", 200, 200, 1), priced(panel("side", 900, 500, 1), 25));
        assertEquals(Optional.empty(), answers(unpriced).oneMore());
    }

    @Test
    void oneIsCountedOnWhereItIsNotSaidHowManyThereAre() {
        Cuts cuts = Cuts.of(rectangle("tag", 48, 38)).on(panel("panel", 200, 200, null));
        assertEquals(200 * 200 / (48 * 38), answers(cuts).atMost());
        assertEquals("layout-counted-one", outcome(cuts).notices().get(0).kind().key());
        assertEquals("sheets[panel].panel.count", outcome(cuts).notices().get(0).place());
        assertEquals(List.of(), outcome(cuts.on(panel("panel", 200, 200, 1))).notices());
    }

    @Test
    void whatFitsNowhereIsFoundNowhere() {
        assertEquals(List.of(), search(Cuts.of(rectangle("tag", 480, 38)).on(panel("panel", 200, 200, 1)), 50_000));
    }
}
