package org.hidewright.layout;

import static org.hidewright.layout.Cuts.at;
import static org.hidewright.layout.Cuts.held;
import static org.hidewright.layout.Cuts.hide;
import static org.hidewright.layout.Cuts.matches;
import static org.hidewright.layout.Cuts.panel;
import static org.hidewright.layout.Cuts.rectangle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Working;
import org.hidewright.layout.CuttingLayout.LaidOut;
import org.hidewright.layout.CuttingLayout.PairLaid;
import org.hidewright.layout.CuttingLayout.Placed;
import org.junit.jupiter.api.Test;

/** Which pieces are seen together on one item. */
class MatchedPairsTest {
    private final Cuts cuts = Cuts.of(rectangle("front", 50, 50), rectangle("back", 50, 60))
            .times(3)
            .on(panel("panel", 900, 600, 2))
            .rules(matches("front", "back"));

    private static List<Placed> numbered(Cuts cuts, Placed... placed) throws Refusal {
        return LayoutTask.of(cuts.cut()).pairs().numbered(List.of(placed));
    }

    private static Outcome<LaidOut> outcome(Cuts cuts) {
        return new CuttingLayout().calculate(cuts.cut(), Working.NONE);
    }

    private static List<PairLaid> pairs(Cuts cuts) {
        return outcome(cuts).answers().orElseThrow().pairs();
    }

    private static Map<String, Double> xs(List<Placed> layout) {
        Map<String, Double> xs = new HashMap<>();
        layout.forEach(placed -> xs.put(placed.id(), placed.x().mm()));
        return xs;
    }

    private static List<String> keys(Cuts cuts) {
        return outcome(cuts).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    @Test
    void theNearestBecomeOneItem() throws Refusal {
        List<Placed> numbered = numbered(
                cuts,
                at("front-1", "panel-1", 50, 50, 0),
                at("front-2", "panel-1", 400, 50, 0),
                at("front-3", "panel-1", 800, 50, 0),
                at("back-1", "panel-1", 800, 150, 0),
                at("back-2", "panel-1", 50, 150, 0),
                at("back-3", "panel-1", 400, 150, 0));
        assertEquals(
                Map.of(
                        "front-1", 50.0, "front-2", 400.0, "front-3", 800.0, "back-1", 50.0, "back-2", 400.0, "back-3",
                        800.0),
                xs(numbered));
        List<PairLaid> pairs = pairs(cuts.laid(numbered));
        assertEquals(3, pairs.size());
        pairs.forEach(pair -> assertEquals(100, pair.apart().orElseThrow().mm(), 1e-9, pair.toString()));
        assertEquals("back-1", pairs.get(0).other());
        assertEquals(List.of(), keys(cuts.laid(numbered)));
    }

    /** The backbone runs from left to right through the middle of the hide, 300 from below. */
    @Test
    void placesMirroredAboutTheBackboneMatch() throws Refusal {
        Cuts onHide = cuts.on(hide("0,0 900,0 900,600 0,600", 0)).times(1);
        List<PairLaid> pairs = pairs(onHide.laid(at("front", "hide", 200, 100, 0), at("back", "hide", 207, 500, 0)));
        assertTrue(pairs.get(0).mirrored());
        assertEquals(7, pairs.get(0).apart().orElseThrow().mm(), 1e-9);
        assertTrue(!pairs(onHide.laid(at("front", "hide", 200, 100, 0), at("back", "hide", 300, 100, 0)))
                .get(0)
                .mirrored());
    }

    @Test
    void whatIsHeldKeepsItsNumber() throws Refusal {
        List<Placed> numbered = numbered(
                cuts,
                at("front-1", "panel-1", 50, 50, 0),
                at("front-2", "panel-1", 400, 50, 0),
                held(at("back-1", "panel-1", 400, 150, 0)),
                at("back-2", "panel-1", 50, 150, 0));
        assertEquals(Map.of("front-1", 50.0, "front-2", 400.0, "back-1", 400.0, "back-2", 50.0), xs(numbered));
    }

    /** What is found by exchanging two at a time is not worse than any single exchange of it. */
    @Test
    void noExchangeOfTwoBringsThemNearer() throws Refusal {
        Cuts many = cuts.times(12);
        Random random = new Random(7);
        List<Placed> placed = new ArrayList<>();
        for (int piece = 1; piece <= 12; piece++) {
            placed.add(at("front-" + piece, "panel-1", random.nextInt(900), random.nextInt(600), 0));
            placed.add(at("back-" + piece, "panel-1", random.nextInt(900), random.nextInt(600), 0));
        }
        double before = far(many, placed);
        List<Placed> numbered = numbered(many, placed.toArray(Placed[]::new));
        double now = far(many, numbered);
        assertTrue(now < before, now + " after " + before);
        for (int one = 1; one <= 12; one++) {
            for (int other = 1; other < one; other++) {
                assertTrue(far(many, exchanged(numbered, "back-" + one, "back-" + other)) > now - 0.02);
            }
        }
    }

    private static double far(Cuts cuts, List<Placed> layout) throws Refusal {
        return LayoutTask.of(cuts.cut()).pairs().laid(layout).stream()
                .mapToDouble(pair -> pair.apart().orElseThrow().mm())
                .sum();
    }

    private static List<Placed> exchanged(List<Placed> layout, String one, String other) {
        return layout.stream()
                .map(placed -> new Placed(
                        placed.id().equals(one) ? other : placed.id().equals(other) ? one : placed.id(),
                        placed.sheet(),
                        placed.x(),
                        placed.y(),
                        placed.turned(),
                        placed.held()))
                .toList();
    }

    @Test
    void twoOfOnePartMatchEachOther() throws Refusal {
        Cuts gussets = Cuts.of(rectangle("gusset", 50, 50).pieces(1, 1))
                .times(2)
                .on(panel("panel", 900, 600, 1))
                .rules(matches("gusset", "gusset"));
        List<Placed> numbered = numbered(
                gussets,
                at("gusset-1", "panel", 50, 300, 0),
                at("gusset-2", "panel", 700, 300, 0),
                at("gusset-3", "panel", 800, 300, 0),
                at("gusset-4", "panel", 150, 300, 0));
        assertEquals(Map.of("gusset-1", 50.0, "gusset-2", 150.0, "gusset-3", 800.0, "gusset-4", 700.0), xs(numbered));
    }

    @Test
    void aPairOnTwoSheetsIsTold() {
        Cuts apart = cuts.times(1).laid(at("front", "panel-1", 50, 50, 0), at("back", "panel-2", 50, 50, 0));
        assertEquals(Optional.empty(), pairs(apart).get(0).apart());
        assertEquals(List.of("layout-pair-on-two-sheets"), keys(apart));
        assertEquals("rules[front].matches", outcome(apart).notices().get(0).place());
    }

    @Test
    void whatCannotBePairedIsTold() {
        assertEquals(List.of("layout-no-such-part"), keys(cuts.rules(matches("front", "side"))));
        Cuts twoBacks = Cuts.of(
                        rectangle("front", 50, 50), rectangle("back", 50, 60).pieces(2, 0))
                .on(panel("panel", 900, 600, 1));
        assertEquals(List.of("layout-no-pairs"), keys(twoBacks.rules(matches("front", "back"))));
        assertEquals(List.of("layout-no-pairs"), keys(twoBacks.rules(matches("front", "front"))));
        assertEquals(List.of(), keys(twoBacks.rules(matches("back", "back"))));
    }
}
