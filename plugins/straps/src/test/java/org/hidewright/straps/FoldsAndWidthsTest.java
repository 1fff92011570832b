package org.hidewright.straps;

import static org.hidewright.straps.OutsideChecksTest.answers;
import static org.hidewright.straps.OutsideChecksTest.wrap;
import static org.hidewright.straps.Straps.deg;
import static org.hidewright.straps.Straps.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;

/** One bend, a measured strip, wraps and widths, each against its own arithmetic. */
class FoldsAndWidthsTest {
    private static BendAllowance.Allowance bend(
            double t, double r, double turn, Face outside, Preparation preparation) {
        return answers(
                new BendAllowance(),
                new BendAllowance.OneBend(
                        mm(t),
                        mm(r),
                        deg(turn),
                        outside,
                        preparation,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    @Test
    void aSkivedBendIsAsThickAsWhatIsLeft() {
        BendAllowance.Allowance skived = bend(3, 2, 90, Face.GRAIN, new Preparation.Skived(mm(1), mm(5)));
        assertEquals(Math.PI / 2 * (2 + 0.6 * 1), skived.allowance().mm(), 1e-9);
        assertEquals(3, skived.setback().orElseThrow().mm(), 1e-9); // (2 + 1) tan 45°
        assertEquals(6 - Math.PI / 2 * 2.6, skived.deduction().orElseThrow().mm(), 1e-9);
        assertEquals(Optional.empty(), skived.flatLength());
    }

    @Test
    void aGroovedBendKeepsTheMiddleOfItsWeb() {
        BendAllowance.Allowance grooved = bend(4, 1, 180, Face.GRAIN, new Preparation.Grooved(mm(1)));
        assertEquals(Math.PI * (1 + 4 - 0.5), grooved.allowance().mm(), 1e-9);
        assertEquals(0.875, grooved.neutralLine(), 1e-12);
        assertEquals(Optional.empty(), grooved.setback());
    }

    @Test
    void aMeasuredStripGivesBackTheNeutralLineItWasFoldedWith() {
        Random random = new Random(8);
        for (int i = 0; i < 100; i++) {
            double k = 0.2 + 0.6 * random.nextDouble();
            double t = 0.5 + 40 * random.nextDouble();
            double r = 20 * random.nextDouble();
            double turn = 30 + 300 * random.nextDouble();
            double inBend = Math.toRadians(turn) * (r + k * t);
            MeasuredNeutralLine.Measured measured = answers(
                    new MeasuredNeutralLine(),
                    new MeasuredNeutralLine.Strip(mm(80 + inBend), mm(30), mm(50), deg(turn), mm(r), mm(t), mm(0.2)));
            assertEquals(k, measured.neutralLine(), 1e-9);
            assertEquals(inBend, measured.inTheBend().mm(), 1e-9);
            assertEquals(0.6 / (Math.toRadians(turn) * t), measured.spread(), 1e-9);
            assertEquals(measured.neutralLine() - measured.spread(), measured.lowest(), 1e-12);
            assertEquals(measured.neutralLine() + measured.spread(), measured.highest(), 1e-12);
        }
    }

    @Test
    void legsLapsAndEaseAreAddedAsTheyAreTyped() {
        assertEquals(Math.PI * (3 + 1.5) + 2 * 25, wrap(new WrapShape.HalfWrap(mm(6), mm(25)), 3, 0.5), 1e-9);
        assertEquals(Math.PI * (20 + 2 * 0.5 + 3) + 9, wrap(new WrapShape.Ring(mm(20), mm(0.5), mm(9)), 3, 0.5), 1e-9);
        assertEquals(
                Math.PI / 2 * (0.7 * 1.5 + 0.2 + 0.3 * 2),
                wrap(new WrapShape.TwoLayers(mm(1.5), deg(90), mm(0.2)), 2, 0.3),
                1e-9);
    }

    @Test
    void roundTwoPostsTheThicknessGoesWithTheNeutralLine() {
        double bare = wrap(new WrapShape.TwoPostsOpen(mm(30), mm(12), mm(70)), 4, 0);
        assertEquals(
                bare + 2 * Math.PI * 0.5 * 4, wrap(new WrapShape.TwoPostsOpen(mm(30), mm(12), mm(70)), 4, 0.5), 1e-9);
        double beta = Math.asin((17.0 + 8) / 70);
        assertEquals(
                2 * 70 * Math.cos(beta) + 25 * (Math.PI + 2 * beta),
                wrap(new WrapShape.TwoPostsCrossed(mm(30), mm(12), mm(70)), 4, 0.5),
                1e-9);
        TwoBars.Loop lapped = answers(
                new TwoBars(), new TwoBars.Bars(mm(30), mm(12), mm(70), TwoBars.BarRun.OPEN, mm(4), 0.5, mm(15)));
        assertEquals(bare + 4 * Math.PI + 15, lapped.length().mm(), 1e-9);
    }

    @Test
    void aRollGrowsByItsThicknessInEachTurn() {
        WrapLength.Strip roll = answers(
                new WrapLength(), new WrapLength.Wrap(new WrapShape.Roll(mm(10), 4, RollRule.LAYERS), mm(2), 0.5));
        assertEquals(Optional.of(Length.ofMm(26)), roll.outerDiameter());
    }

    @Test
    void theStrapIsTheHardwareLessItsEaseUnlessItIsCutAlready() {
        StrapWidth.Width worked = answers(
                new StrapWidth(),
                new StrapWidth.Hardware(mm(30), mm(0.8), Optional.empty(), Optional.of(List.of(mm(3), mm(4)))));
        assertEquals(29.2, worked.width().mm(), 1e-9);
        assertEquals(0.8, worked.ease().mm(), 1e-9);
        assertEquals(22.2, worked.netWidth().mm(), 1e-9);
        assertEquals(22.2 / 29.2, worked.netWidthFactor(), 1e-12);
        StrapWidth.Width judged = answers(
                new StrapWidth(), new StrapWidth.Hardware(mm(30), mm(0.8), Optional.of(mm(28)), Optional.empty()));
        assertEquals(2, judged.ease().mm(), 1e-9);
        assertEquals(1, judged.netWidthFactor());
    }

    @Test
    void flatBarCornersMakeTheirOwnDifference() {
        Section.Bend ring =
                Straps.bend("ring", new Core.FlatBar(mm(4), mm(9), mm(0.5)), 180, Face.GRAIN, new Preparation.Cased());
        StrapLayout.Layout layout =
                Straps.layout(Straps.strap(2, List.of(Straps.straight("a", 30), ring, Straps.straight("b", 30))));
        assertEquals(
                60 + Math.PI * (0.5 + 1) + 3, layout.cutLength().mm(), 1e-9); // two corners and 4 - 2 · 0.5 between
    }

    private static StrapLayout.FoldZone folded(Preparation preparation) {
        return Straps.layout(Straps.strap(
                        3,
                        List.of(
                                Straps.straight("a", 60),
                                Straps.bend("fold", new Core.RoundBar(mm(6)), 180, Face.FLESH, preparation),
                                Straps.straight("b", 60))))
                .folds()
                .get(0);
    }

    @Test
    void theTableOfFoldsSaysHowEachIsPrepared() {
        assertEquals(Prepared.DRY, folded(Straps.DRY).prepared());
        assertEquals(mm(3), folded(Straps.DRY).left());
        assertEquals(Face.GRAIN, folded(Straps.DRY).markOn());
        assertEquals(Prepared.CASED, folded(new Preparation.Cased()).prepared());
        assertEquals(mm(3), folded(new Preparation.Cased()).left());
        assertEquals(
                Prepared.SKIVED, folded(new Preparation.Skived(mm(2), mm(6))).prepared());
        assertEquals(mm(2), folded(new Preparation.Skived(mm(2), mm(6))).left());
        assertEquals(Prepared.GROOVED, folded(new Preparation.Grooved(mm(1.2))).prepared());
        assertEquals(mm(1.2), folded(new Preparation.Grooved(mm(1.2))).left());
    }

    @Test
    void lettersApartCountAddedLeftOutAndChanged() {
        assertEquals(0, Nearest.lettersApart("leg", "leg"));
        assertEquals(1, Nearest.lettersApart("leg", "legs"));
        assertEquals(1, Nearest.lettersApart("leg", "lag"));
        assertEquals(3, Nearest.lettersApart("", "tip"));
        assertEquals(3, Nearest.lettersApart("kitten", "sitting"));
        assertEquals(Optional.of("buckle"), Nearest.to("bukcle", List.of("leg", "buckle", "tip")));
        assertTrue(Nearest.to("xyzuvw", List.of("leg", "tip")).isEmpty());
    }

    @Test
    void theWorkingOfAStrapEndsInItsAnswers() {
        Steps steps = new Steps();
        StrapLayout.Layout layout = new StrapLayout()
                .calculate(
                        Straps.strap(
                                3,
                                List.of(
                                        Straps.straight("leg", 100),
                                        Straps.turnBack("buckle", 5, 15, Face.GRAIN, Straps.DRY),
                                        Straps.straight("tip", 50)),
                                Straps.hole("h", "leg", From.END, 10, "tip")),
                        steps)
                .answers()
                .orElseThrow();
        assertEquals(layout.cutLength(), steps.last("cut-length"));
        assertEquals(layout.stackThickness(), steps.last("stack-thickness"));
        assertEquals(Straps.place(layout, "h-on-tip"), ((Length) steps.last("folded-place")).mm(), 1e-9);
        assertEquals(layout.sections().get(1).length().mm(), 2 * ((Length) steps.last("teardrop-leg")).mm(), 1e-9);
        assertTrue(steps.all().stream().allMatch(new StrapLayout().formulas()::contains));
    }

    /** Keeps the steps of a working. */
    static final class Steps implements Working {
        private final List<Formula> formulas = new ArrayList<>();
        private final Map<String, Object> results = new HashMap<>();

        @Override
        public void step(Formula formula, Object result, Object... symbolsAndValues) {
            formulas.add(formula);
            results.put(formula.key(), result);
            for (int i = 0; i < symbolsAndValues.length; i += 2) {
                assertTrue(
                        formula.symbols().contains((String) symbolsAndValues[i]),
                        formula + " has no " + symbolsAndValues[i]);
            }
        }

        @Override
        public void source(String answer, Source source) {}

        Object last(String formula) {
            return results.get(formula);
        }

        List<Formula> all() {
            return formulas;
        }
    }
}
