package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.deg;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;
import org.hidewright.straps.geometry.Face;
import org.hidewright.testkit.BundleCalculators;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Working as it is printed: letters that a card can show, a number for every symbol, and who is to be credited. */
class WorkingLinesTest {
    /**
     * What the typeface of the cards was seen to have beyond plain ASCII. It has no brackets for “whole part of”, so
     * such formulas say floor; a new sign is tried on a printed card before it is added here.
     */
    private static final String PRINTABLE = "αβθρπ√²·";

    private static final Pattern SYMBOL = Pattern.compile("\\p{L}+");
    private static final Set<String> NO_SYMBOLS =
            Set.of("π", "cos", "tan", "asin", "acos", "atan", "asinh", "floor", "rounded", "up");

    /** One step, and the symbols it left without a number. */
    private static final class Lines implements Working {
        private final Set<String> formulas = new TreeSet<>();
        private final List<String> open = new ArrayList<>();
        private final Map<String, Source> credited = new HashMap<>();

        @Override
        public void step(Formula formula, Object result, Object... symbolsAndValues) {
            formulas.add(formula.key());
            Set<String> given = new TreeSet<>(NO_SYMBOLS);
            for (int i = 0; i < symbolsAndValues.length; i += 2) {
                given.add(String.valueOf(symbolsAndValues[i]));
            }
            String right = formula.symbols().substring(formula.symbols().indexOf('=') + 1);
            Matcher symbols = SYMBOL.matcher(right);
            while (symbols.find()) {
                if (!given.contains(symbols.group())) {
                    open.add(formula + " leaves " + symbols.group());
                }
            }
            assertFalse(right.indexOf('=') >= 0, () -> formula + " is more than one formula");
        }

        @Override
        public void source(String answer, Source source) {
            credited.put(answer, source);
        }
    }

    private Lines lines;

    @BeforeEach
    void begin() {
        lines = new Lines();
    }

    private <Q extends Record, A extends Record> A work(Calculator<Q, A> calculator, Q asked) {
        return calculator.calculate(asked, lines).answers().orElseThrow();
    }

    private static BendAllowance.OneBend bend(Face outside, Preparation preparation, double legs) {
        Optional<Length> leg = legs > 0 ? Optional.of(mm(legs)) : Optional.empty();
        return new BendAllowance.OneBend(mm(3), mm(3), deg(90), outside, preparation, Optional.empty(), leg, leg);
    }

    private static KeeperLength.Loop keeper(double ease, double width, double k) {
        return new KeeperLength.Loop(
                List.of(
                        new KeeperLength.KeeperLayer("strap", mm(3.5), 2),
                        new KeeperLength.KeeperLayer("turn-back", mm(2), 1)),
                mm(38),
                mm(1),
                mm(ease),
                KeeperLength.KeeperPlace.BELT_AT_TURN_BACK,
                mm(2),
                new KeeperLength.KeeperJoint.Lapped(mm(50)),
                mm(width),
                k);
    }

    private static TwoBars.Bars bars(TwoBars.BarRun run, double k) {
        return new TwoBars.Bars(mm(20), mm(10), mm(200), run, mm(3), k, Length.ZERO);
    }

    private static StripCount.Panel panel(double trim, double cutLength) {
        return new StripCount.Panel(
                Size.of(mm(1200), mm(400)),
                mm(trim),
                mm(38),
                new StripCount.StripCutter.Knife(mm(1)),
                Optional.of(mm(cutLength)),
                1,
                mm(40));
    }

    private static List<WrapShape> shapes() {
        return List.of(
                new WrapShape.Ring(mm(20), mm(1), mm(15)),
                new WrapShape.HalfWrap(mm(6), mm(20)),
                new WrapShape.Teardrop(mm(6), mm(12)),
                new WrapShape.RoundedRectangle(Size.of(mm(38), mm(8)), mm(1), mm(12)),
                new WrapShape.TwoPostsOpen(mm(10), mm(5), mm(20)),
                new WrapShape.TwoPostsCrossed(mm(10), mm(5), mm(20)),
                new WrapShape.Roll(mm(10), 4, RollRule.LAYERS),
                new WrapShape.Roll(mm(10), 4, RollRule.SPIRAL),
                new WrapShape.Roll(mm(10), 4, RollRule.SPIRAL_OF_MID_LINE),
                new WrapShape.Piping(mm(5), mm(8)),
                new WrapShape.UGusset(Size.of(mm(200), mm(150)), mm(30)),
                new WrapShape.TwoLayers(mm(1.5), deg(180), mm(0.1)));
    }

    private void workEverything() {
        work(new BendAllowance(), bend(Face.GRAIN, DRY, 30));
        work(new BendAllowance(), bend(Face.FLESH, DRY, 0));
        work(new BendAllowance(), bend(Face.GRAIN, new Preparation.Cased(), 0));
        work(new BendAllowance(), bend(Face.GRAIN, new Preparation.Grooved(mm(1)), 0));
        work(
                new StrapLayout(),
                strap(
                        3,
                        List.of(
                                straight("leg", 100),
                                turnBack("buckle", 5, 15, Face.GRAIN, DRY),
                                straight("tip", 50),
                                Straps.roundBar("ring", 6),
                                straight("end", 40)),
                        hole("rivet", "leg", From.END, 10, "tip")));
        work(new BeltLayout(), new Belts().build());
        Belts parallel = new Belts();
        parallel.contact = 0;
        work(new BeltLayout(), parallel.build());
        work(new KeeperLength(), keeper(1.5, 12, 0.5));
        work(new TwoBars(), bars(TwoBars.BarRun.OPEN, 0.5));
        work(new TwoBars(), bars(TwoBars.BarRun.CROSSED, 0.5));
        work(new StripCount(), panel(5, 2000));
        shapes().forEach(shape -> work(new WrapLength(), new WrapLength.Wrap(shape, mm(3), 0.5)));
        work(new StrapWidth(), new StrapWidth.Hardware(mm(25), mm(1), Optional.empty(), Optional.empty()));
        work(new StrapWidth(), new StrapWidth.Hardware(mm(25), mm(1), Optional.of(mm(24)), Optional.empty()));
        work(
                new MeasuredNeutralLine(),
                new MeasuredNeutralLine.Strip(mm(100), mm(42), mm(43), deg(180), mm(3), mm(3), mm(0.2)));
    }

    @Test
    void everySymbolOfEveryFormulaGetsItsNumber() {
        workEverything();
        assertEquals(List.of(), lines.open);
        Set<String> declared = BundleCalculators.beside(StrapLayout.class).stream()
                .flatMap(calculator -> calculator.formulas().stream())
                .map(Formula::key)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(declared, lines.formulas);
    }

    @Test
    void everyFormulaIsWrittenInLettersThatACardCanPrint() {
        Set<String> odd = new TreeSet<>();
        BundleCalculators.beside(StrapLayout.class).stream()
                .flatMap(calculator -> calculator.formulas().stream())
                .forEach(formula -> formula.symbols()
                        .chars()
                        .filter(letter -> (letter < ' ' || letter > '~') && PRINTABLE.indexOf(letter) < 0)
                        .forEach(letter -> odd.add((char) letter + " in " + formula)));
        assertEquals(Set.of(), odd);
    }

    @Test
    void aSpiralIsTheDifferenceOfTwoFromItsCentre() {
        WrapShape roll = new WrapShape.Roll(mm(10), 4, RollRule.SPIRAL);
        Steps steps = new Steps(new WrapLength());
        double length = new WrapLength()
                .calculate(new WrapLength.Wrap(roll, mm(3), 0.5), steps)
                .answers()
                .orElseThrow()
                .length()
                .mm();
        List<Double> ends = steps.of("roll-spiral-from-centre");
        assertEquals(length, ends.get(1) - ends.get(0), 1e-9);
        assertEquals(3 / (2 * Math.PI), steps.of("roll-spiral-rise").get(0), 1e-12);
    }

    @Test
    void aKeepersLayersAreLaidOneOnTheOther() {
        Steps steps = new Steps(new KeeperLength());
        new KeeperLength().calculate(keeper(1.5, 12, 0.5), steps);
        assertEquals(List.of(7.0, 9.0), steps.of("keeper-stack"));
    }

    @Test
    void aKeeperIsCreditedToTheHabitsItKeeps() {
        work(new KeeperLength(), keeper(1.5, 12, 0.5));
        assertEquals(
                Map.of(
                        "cut-length", Origins.NEUTRAL_HABIT,
                        "inside-length", Origins.KEEPER_HABITS,
                        "inside", Origins.KEEPER_HABITS,
                        "blank", Origins.KEEPER_HABITS),
                lines.credited);
        begin();
        work(new KeeperLength(), keeper(3, 20, 0.53));
        assertEquals(Map.of(), lines.credited);
        work(new KeeperLength(), keeper(0.9, 9.9, 0.53));
        assertEquals(Map.of(), lines.credited);
        work(new KeeperLength(), keeper(1, 15, 0.53));
        assertEquals(Set.of("inside-length", "inside", "blank"), lines.credited.keySet());
    }

    @Test
    void aNeutralLineByHabitIsCreditedWhereItCounts() {
        work(new TwoBars(), bars(TwoBars.BarRun.OPEN, 0.5));
        assertEquals(Map.of("length", Origins.NEUTRAL_HABIT), lines.credited);
        begin();
        work(new TwoBars(), bars(TwoBars.BarRun.OPEN, 0.52));
        assertEquals(Map.of(), lines.credited);
        for (WrapShape shape : shapes()) {
            begin();
            work(new WrapLength(), new WrapLength.Wrap(shape, mm(3), 0.5));
            boolean counts = !(shape instanceof WrapShape.Roll) && !(shape instanceof WrapShape.UGusset);
            assertEquals(counts, lines.credited.containsKey("length"), shape.toString());
        }
    }

    @Test
    void aBeltIsCreditedToTheHabitsItKeeps() {
        work(new BeltLayout(), new Belts().build());
        for (String answer :
                List.of("smallest-size", "largest-size", "fold-to-tip", "slot-centre", "slot-start", "slot-end")) {
            assertEquals(Origins.BELT_HABITS, lines.credited.get(answer), answer);
        }
        begin();
        Belts own = new Belts();
        own.holes = 6;
        own.tipBeyond = 126;
        own.turnBack = 91;
        own.slot = 24;
        work(new BeltLayout(), own.build());
        assertFalse(lines.credited.containsValue(Origins.BELT_HABITS));
        own.holes = 7;
        own.spacing = 25.4;
        own.tipBeyond = 75;
        own.turnBack = 60;
        work(new BeltLayout(), own.build());
        assertTrue(lines.credited
                .keySet()
                .containsAll(Set.of("smallest-size", "largest-size", "fold-to-tip", "slot-centre")));
    }

    @Test
    void whatATrimAndALapTakeIsCreditedToHabit() {
        work(new StripCount(), panel(5, 2000));
        assertEquals(
                Map.of(
                        "leftover-width", Origins.STRIP_HABITS,
                        "strips-for-one-strap", Origins.STRIP_HABITS),
                lines.credited);
        begin();
        work(new StripCount(), panel(0, 1000));
        assertEquals(Map.of(), lines.credited);
    }
}
