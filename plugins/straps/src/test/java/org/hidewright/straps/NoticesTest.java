package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.deg;
import static org.hidewright.straps.Straps.flatFold;
import static org.hidewright.straps.Straps.glued;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.overlap;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;
import org.hidewright.straps.geometry.Face;
import org.hidewright.testkit.BundleCalculators;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What the calculators catch: each kind of notice is raised by one case and not by its mended neighbour. */
class NoticesTest {
    private final List<NoticeCase> cases = new ArrayList<>();

    private static <Q extends Record, A extends Record> Outcome<A> work(Calculator<Q, A> calculator, Q questions) {
        return calculator.calculate(questions, Working.NONE);
    }

    private void hardware() {
        width("strap-wider-than-hardware", 0, 25.1, List.of(), 1, 25, List.of());
        width("strap-as-wide-as-hardware", 0, 25, List.of(), 1, 24, List.of());
        width("strap-tight-in-hardware", 0.4, 0, List.of(), 0.5, 0, List.of());
        width("strap-loose-in-hardware", 3.5, 0, List.of(), 3, 0, List.of());
        width("width-all-ease", 25, 0, List.of(), 1, 0, List.of());
        width("width-all-holes", 1, 0, List.of(mm(12), mm(12)), 1, 0, List.of(mm(4)));
        width("holes-near-edge", 1, 0, List.of(mm(6.1)), 1, 0, List.of(mm(6)));
        width("holes-near-edge", 1, 0, List.of(mm(4), mm(4)), 1, 0, List.of(mm(3), mm(3)));
    }

    private void width(
            String key,
            double ease,
            double width,
            List<Length> holes,
            double mendedEase,
            double mendedWidth,
            List<Length> mended) {
        cases.add(new NoticeCase(
                key,
                null,
                work(new StrapWidth(), hardware(ease, width, holes)),
                work(new StrapWidth(), hardware(mendedEase, mendedWidth, mended))));
    }

    private static StrapWidth.Hardware hardware(double ease, double width, List<Length> holes) {
        return new StrapWidth.Hardware(
                mm(25),
                mm(ease),
                width > 0 ? Optional.of(mm(width)) : Optional.empty(),
                holes.isEmpty() ? Optional.empty() : Optional.of(holes));
    }

    private void bends() {
        one("fold-too-tight", 0.5, 90, Face.GRAIN, DRY, 0.75, 90, Face.GRAIN, DRY);
        one(
                "groove-in-grain",
                3,
                90,
                Face.FLESH,
                new Preparation.Grooved(mm(1)),
                3,
                90,
                Face.GRAIN,
                new Preparation.Grooved(mm(1)));
        one(
                "bend-web-too-thick",
                3,
                90,
                Face.GRAIN,
                new Preparation.Grooved(mm(3.1)),
                3,
                90,
                Face.GRAIN,
                new Preparation.Grooved(mm(3)));
        one(
                "bend-skive-too-thick",
                3,
                90,
                Face.GRAIN,
                new Preparation.Skived(mm(3.1), mm(5)),
                3,
                90,
                Face.GRAIN,
                new Preparation.Skived(mm(3), mm(5)));
        cases.add(new NoticeCase("bend-no-corner", "turn", legs(180, 20), legs(179, 2000)));
        cases.add(new NoticeCase("bend-no-corner", "turn", legs(180, Optional.empty()), outcomeWithoutLegs(180)));
        cases.add(new NoticeCase("bend-one-leg", "leg-b", legs(90, Optional.empty()), legs(90, 6)));
        cases.add(new NoticeCase("bend-legs-too-short", "leg-a", legs(90, 5.9), legs(90, 6)));
        cases.add(new NoticeCase("bend-legs-too-short", "leg-a", legs(120, 10.3), legs(120, 10.4)));
        cases.add(new NoticeCase(
                "strip-legs-longer-than-strip", "strip-length", strip(50, 50, 3, 0.2), strip(42, 43, 3, 0.2)));
        cases.add(new NoticeCase("neutral-line-outside-leather", "", strip(43, 48, 3, 0.1), strip(42, 43, 3, 0.1)));
        cases.add(new NoticeCase("neutral-line-outside-leather", "", strip(40, 40, 3, 0.1), strip(42, 43, 3, 0.1)));
        cases.add(new NoticeCase("neutral-line-unusual", "", strip(43, 45, 3, 0.1), strip(42, 43.5, 3, 0.1)));
        cases.add(new NoticeCase("neutral-line-unusual", "", strip(41, 42, 3, 0.1), strip(42, 43.5, 3, 0.1)));
        cases.add(new NoticeCase(
                "neutral-line-reading-too-coarse", "reading-error", strip(42, 43, 3, 0.7), strip(42, 43, 3, 0.6)));
    }

    private void one(
            String key,
            double r,
            double turn,
            Face outside,
            Preparation preparation,
            double mendedR,
            double mendedTurn,
            Face mendedOutside,
            Preparation mendedPreparation) {
        cases.add(new NoticeCase(
                key,
                null,
                work(new BendAllowance(), oneBend(r, turn, outside, preparation)),
                work(new BendAllowance(), oneBend(mendedR, mendedTurn, mendedOutside, mendedPreparation))));
    }

    private static BendAllowance.OneBend oneBend(double r, double turn, Face outside, Preparation preparation) {
        return new BendAllowance.OneBend(
                mm(3), mm(r), deg(turn), outside, preparation, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Outcome<?> outcomeWithoutLegs(double turn) {
        return work(new BendAllowance(), oneBend(3, turn, Face.GRAIN, DRY));
    }

    private static Outcome<?> legs(double turn, double leg) {
        return legs(turn, Optional.of(mm(leg)));
    }

    private static Outcome<?> legs(double turn, Optional<Length> legB) {
        return work(
                new BendAllowance(),
                new BendAllowance.OneBend(
                        mm(3), mm(3), deg(turn), Face.GRAIN, DRY, Optional.empty(), Optional.of(mm(30)), legB));
    }

    private static Outcome<?> strip(double before, double after, double thickness, double error) {
        return work(
                new MeasuredNeutralLine(),
                new MeasuredNeutralLine.Strip(
                        mm(100), mm(before), mm(after), deg(180), mm(3), mm(thickness), mm(error)));
    }

    private void wraps() {
        wrap("contact-too-near", new WrapShape.Teardrop(mm(6), mm(4)), new WrapShape.Teardrop(mm(6), mm(6)));
        wrap(
                "wrap-corner-too-large",
                new WrapShape.RoundedRectangle(Size.of(mm(30), mm(8)), mm(4.1), Length.ZERO),
                new WrapShape.RoundedRectangle(Size.of(mm(30), mm(8)), mm(4), Length.ZERO));
        wrap(
                "wrap-corner-too-large",
                new WrapShape.UGusset(Size.of(mm(100), mm(80)), mm(51)),
                new WrapShape.UGusset(Size.of(mm(100), mm(80)), mm(50)));
        wrap(
                "bar-inside-other-bar",
                new WrapShape.TwoPostsOpen(mm(40), mm(10), mm(14.9)),
                new WrapShape.TwoPostsOpen(mm(40), mm(10), mm(15)));
        wrap(
                "bars-touch",
                new WrapShape.TwoPostsOpen(mm(10), mm(10), mm(12.9)),
                new WrapShape.TwoPostsOpen(mm(10), mm(10), mm(13.1)));
        wrap(
                "bars-too-near-to-cross",
                new WrapShape.TwoPostsCrossed(mm(10), mm(10), mm(12.9)),
                new WrapShape.TwoPostsCrossed(mm(10), mm(10), mm(13.1)));
        bars("bar-inside-other-bar", 14.9, TwoBars.BarRun.OPEN);
        bars("bars-touch", 20, TwoBars.BarRun.OPEN);
        bars("bars-too-near-to-cross", 20, TwoBars.BarRun.CROSSED);
    }

    private void wrap(String key, WrapShape raises, WrapShape mended) {
        cases.add(new NoticeCase(
                key,
                null,
                work(new WrapLength(), new WrapLength.Wrap(raises, mm(3), 0.5)),
                work(new WrapLength(), new WrapLength.Wrap(mended, mm(3), 0.5))));
    }

    private void bars(String key, double centres, TwoBars.BarRun run) {
        cases.add(new NoticeCase(
                key,
                "",
                work(new TwoBars(), new TwoBars.Bars(mm(40), mm(10), mm(centres), run, mm(3), 0.5, Length.ZERO)),
                work(new TwoBars(), new TwoBars.Bars(mm(40), mm(10), mm(60), run, mm(3), 0.5, Length.ZERO))));
    }

    private void keepers() {
        keeper("keeper-no-layers", 0, 1.5, 1, 3, 1.5, 1);
        keeper("keeper-too-few-layers", 2, 1.5, 1, 3, 1.5, 1);
        keeper("keeper-no-ease", 3, 0.9, 1, 3, 1, 1);
        keeper("keeper-corner-too-large", 3, 1.5, 4.6, 3, 1.5, 4.5);
    }

    private void keeper(
            String key, int layers, double ease, double radius, int mended, double mendedEase, double mendedRadius) {
        cases.add(new NoticeCase(
                key,
                null,
                work(new KeeperLength(), Keepers.keeper(layers, ease, radius)),
                work(new KeeperLength(), Keepers.keeper(mended, mendedEase, mendedRadius))));
    }

    private void strips() {
        Outcome<?> plain = strips(400, 38, Optional.empty(), 1, 40);
        cases.add(new NoticeCase(
                "strips-none",
                "panel",
                strips(42, 38, Optional.empty(), 1, 40),
                strips(43, 38, Optional.empty(), 1, 40)));
        cases.add(new NoticeCase(
                "strips-lap-too-long", "join-lap", strips(400, 38, Optional.of(mm(1200)), 1, 1000), plain));
        cases.add(new NoticeCase(
                "strips-too-short",
                "cut-length",
                strips(400, 38, Optional.of(mm(1001)), 1, 40),
                strips(400, 38, Optional.of(mm(1000)), 1, 40)));
        cases.add(new NoticeCase(
                "strips-not-enough",
                "straps",
                strips(400, 38, Optional.of(mm(600)), 11, 40),
                strips(400, 38, Optional.of(mm(600)), 10, 40)));
        cases.add(new NoticeCase("strips-direction", "", plain, null));
    }

    private static Outcome<?> strips(double across, double width, Optional<Length> cut, int straps, double lap) {
        return work(
                new StripCount(),
                new StripCount.Panel(
                        Size.of(mm(1000), mm(across)),
                        mm(5),
                        mm(width),
                        new StripCount.StripCutter.StrapCutter(),
                        cut,
                        straps,
                        mm(lap)));
    }

    NoticesTest() {
        cases.addAll(StrapNoticeCases.all());
        cases.addAll(BeltNoticeCases.all());
        hardware();
        bends();
        wraps();
        keepers();
        strips();
    }

    @Test
    void eachIsRaisedAndMended() {
        assertAll(cases.stream().<Executable>map(one -> () -> {
            Notice notice = one.raised().notices().stream()
                    .filter(raised -> raised.kind().key().equals(one.key()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(one.key() + " is not raised: " + one.raised()));
            assertEquals(
                    notice.kind().severity() == NoticeKind.Severity.STOP,
                    one.raised().refused());
            if (one.place() != null) {
                assertEquals(one.place(), notice.place());
            }
            if (one.mended() != null) {
                assertTrue(
                        one.mended().notices().stream()
                                .noneMatch(raised -> raised.kind().key().equals(one.key())),
                        () -> one.key() + " is not mended: " + one.mended());
            }
        }));
    }

    @Test
    void everyKindAnyCalculatorListsIsRaisedByACase() {
        TreeSet<String> listed = new TreeSet<>();
        BundleCalculators.beside(StrapLayout.class)
                .forEach(calculator -> calculator.notices().forEach(kind -> listed.add(kind.key())));
        TreeSet<String> raised = new TreeSet<>();
        cases.forEach(one -> one.raised()
                .notices()
                .forEach(notice -> raised.add(notice.kind().key())));
        assertEquals(listed, raised);
    }

    @Test
    void anUnknownSectionIsToldWithTheNearestRightOne() {
        Outcome<?> outcome = work(new StrapLayout(), StrapNoticeCases.simple(hole("h", "legg", From.START, 20)));
        assertEquals(List.of("legg", "leg"), outcome.notices().get(0).args());
        outcome = work(new StrapLayout(), StrapNoticeCases.simple(hole("h", "something-else", From.START, 20)));
        assertEquals(
                List.of("something-else", "leg, ring, tip"),
                outcome.notices().get(0).args());
        outcome = work(new StrapLayout(), StrapNoticeCases.simple(hole("h", "leg", From.START, 20, "tipp")));
        assertEquals(List.of("tipp", "tip"), outcome.notices().get(0).args());
        outcome = work(new StrapLayout(), StrapNoticeCases.fold(StrapNoticeCases.round("fold", "fould")));
        assertEquals(List.of("fould", "fold"), outcome.notices().get(0).args());
        outcome = work(
                new StrapLayout(),
                strap(2, List.of(straight("outer", 100), flatFold("fold", Face.GRAIN), overlap("inner", "fold", 60))));
        assertEquals(List.of("fold", "outer"), outcome.notices().get(0).args());
    }

    private static List<Object> said(String key, StrapLayout.Strap strap) {
        Notice notice = Straps.work(strap).notices().stream()
                .filter(raised -> raised.kind().key().equals(key))
                .findFirst()
                .orElseThrow();
        return notice.args().stream()
                .map(arg -> arg instanceof Length length ? mm(Math.round(length.mm() * 1e6) / 1e6) : arg)
                .toList();
    }

    /** A leg of 100 mm, 3 mm thick and 20 mm wide, a ring of 6 mm, a tip of 50 mm; holes of 4 mm. */
    @Test
    void aHoleIsToldHowMuchLeatherItLeaves() {
        assertEquals(
                List.of("h", "ring", mm(3), mm(2.5)),
                said("hole-near-fold", StrapNoticeCases.simple(hole("h", "leg", From.END, 4.5))));
        assertEquals(
                List.of("h", "ring", mm(3), mm(0)),
                said("hole-near-fold", StrapNoticeCases.simple(hole("h", "tip", From.START, 1))));
        assertEquals(
                List.of("h", mm(7), mm(8), mm(6)),
                said("hole-near-edge", StrapNoticeCases.simple(hole("h", "leg", From.START, 7))));
        assertEquals(
                List.of("h", mm(7), mm(8), mm(6)),
                said("hole-near-edge", StrapNoticeCases.simple(hole("h", "tip", From.END, 7))));
        assertEquals(
                List.of("h", mm(10), mm(12), mm(6)),
                said("hole-near-edge", StrapNoticeCases.simple(hole("h", 6, "leg", From.MIDDLE, 0))));
        assertEquals(
                List.of("h", mm(4)), said("hole-breaks-out", StrapNoticeCases.simple(hole("h", "leg", From.START, 1))));
    }

    @Test
    void theFleshThatShowsIsNamedSectionBySection() {
        Outcome<?> outcome = work(new StrapLayout(), glued(StrapNoticeCases.flat(), 0.1));
        Notice notice = outcome.notices().stream()
                .filter(n -> n.kind().key().equals("flesh-shows"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("outer"), notice.args());
    }
}
