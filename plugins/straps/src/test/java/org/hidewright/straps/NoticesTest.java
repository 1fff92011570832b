package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.deg;
import static org.hidewright.straps.Straps.flatFold;
import static org.hidewright.straps.Straps.glued;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.overlap;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What the calculators catch: each kind of notice is raised by one case and not by its mended neighbour. */
class NoticesTest {
    private record Case(String key, String place, Outcome<?> raised, Outcome<?> mended) {}

    private final List<Case> cases = new ArrayList<>();

    private static <Q extends Record, A extends Record> Outcome<A> work(Calculator<Q, A> calculator, Q questions) {
        return calculator.calculate(questions, Working.NONE);
    }

    private void strapCase(String key, String place, StrapLayout.Strap raises, StrapLayout.Strap mended) {
        cases.add(new Case(key, place, work(new StrapLayout(), raises), work(new StrapLayout(), mended)));
    }

    private static Section.Bend round(String id, String inner) {
        return bend(id, new Core.AroundBend(inner), 180, Face.GRAIN, DRY);
    }

    private static Section.Bend prepared(Preparation preparation) {
        return bend("fold", new Core.RoundBar(mm(6)), 180, Face.GRAIN, preparation);
    }

    private static StrapLayout.Strap simple(Feature... features) {
        return strap(3, List.of(straight("leg", 100), roundBar("ring", 6), straight("tip", 50)), features);
    }

    private static Feature slot(double length, double width, String section, From from, double distance) {
        return new Feature.Slot("s", mm(length), mm(width), section, from, mm(distance), Optional.empty());
    }

    private static StrapLayout.Strap fold(Section fold) {
        return strap(3, List.of(straight("leg", 100), fold, straight("tip", 50)));
    }

    private static StrapLayout.Strap flat(Feature... features) {
        return strap(
                2,
                List.of(straight("outer", 100), flatFold("fold", Face.GRAIN), overlap("inner", "outer", 60)),
                features);
    }

    private static StrapLayout.Strap wide(double width, double inside, boolean carriesLoad) {
        return new StrapLayout.Strap(
                mm(3),
                mm(width),
                List.of(straight("a", 100)),
                List.of(),
                Length.ZERO,
                Optional.of(mm(inside)),
                Optional.empty(),
                carriesLoad);
    }

    private void sections() {
        strapCase("strap-no-sections", "sections", strap(3, List.of()), simple());
        strapCase(
                "strap-duplicate-id",
                "sections[a]",
                strap(3, List.of(straight("a", 10), straight("a", 20))),
                strap(3, List.of(straight("a", 10), straight("b", 20))));
        strapCase(
                "strap-unknown-section",
                "features[h]",
                simple(hole("h", "legg", From.START, 20)),
                simple(hole("h", "leg", From.START, 20)));
        strapCase("strap-not-a-bend", "sections[fold]", fold(round("fold", "leg")), simple());
        strapCase(
                "strap-bends-in-a-circle",
                "sections[one]",
                strap(3, List.of(straight("a", 30), round("one", "two"), straight("b", 30), round("two", "one"))),
                simple());
        strapCase(
                "strap-flat-bar-turn",
                "sections[fold]",
                fold(bend("fold", new Core.FlatBar(mm(3), mm(9), mm(1)), 150, Face.GRAIN, DRY)),
                fold(bend("fold", new Core.FlatBar(mm(3), mm(9), mm(1)), 270, Face.GRAIN, DRY)));
        strapCase(
                "strap-corner-too-large",
                "sections[fold]",
                fold(bend("fold", new Core.FlatBar(mm(3), mm(9), mm(1.6)), 180, Face.GRAIN, DRY)),
                fold(bend("fold", new Core.FlatBar(mm(3), mm(9), mm(1.5)), 180, Face.GRAIN, DRY)));
        strapCase(
                "strap-thicker-than-strap",
                "sections[a]",
                strap(3, List.of(straight("a", 30, 3.5, 0))),
                strap(3, List.of(straight("a", 30, 3, 0))));
        strapCase(
                "contact-too-near",
                "sections[fold]",
                fold(turnBack("fold", 6, 4, Face.GRAIN, DRY)),
                fold(turnBack("fold", 6, 6, Face.GRAIN, DRY)));
        strapCase(
                "ramp-too-long",
                "sections[tip]",
                strap(
                        3,
                        List.of(
                                straight("leg", 100),
                                prepared(new Preparation.Skived(mm(2), mm(20))),
                                straight("tip", 19))),
                strap(
                        3,
                        List.of(
                                straight("leg", 100),
                                prepared(new Preparation.Skived(mm(2), mm(20))),
                                straight("tip", 20))));
        strapCase(
                "fold-too-tight",
                "sections[fold]",
                fold(bend("fold", new Core.Radius(mm(0.7)), 180, Face.GRAIN, DRY)),
                fold(bend("fold", new Core.Radius(mm(0.75)), 180, Face.GRAIN, DRY)));
        strapCase(
                "fold-too-tight",
                "sections[fold]",
                fold(bend("fold", new Core.Radius(mm(0)), 180, Face.GRAIN, DRY)),
                fold(bend("fold", new Core.Radius(mm(0)), 180, Face.GRAIN, new Preparation.Grooved(mm(1)))));
        strapCase(
                "fold-too-tight",
                "sections[fold]",
                fold(bend("fold", new Core.Radius(mm(0)), 180, Face.GRAIN, DRY)),
                fold(bend("fold", new Core.Radius(mm(0)), 180, Face.FLESH, DRY)));
        strapCase(
                "groove-in-grain",
                "sections[fold]",
                fold(bend("fold", new Core.Radius(mm(3)), 180, Face.FLESH, new Preparation.Grooved(mm(1)))),
                fold(bend("fold", new Core.Radius(mm(3)), 180, Face.GRAIN, new Preparation.Grooved(mm(1)))));
        strapCase(
                "overlap-apart",
                "sections[inner]",
                strap(2, List.of(straight("outer", 100), roundBar("fold", 6), overlap("inner", "outer", 60))),
                flat());
        strapCase(
                "overlap-apart",
                "sections[inner]",
                strap(
                        2,
                        List.of(
                                straight("outer", 100),
                                bend("fold", new Core.Radius(mm(0)), 170, Face.FLESH, DRY),
                                overlap("inner", "outer", 60))),
                flat());
        strapCase(
                "overlap-beside",
                "sections[inner]",
                strap(2, List.of(straight("outer", 50), flatFold("fold", Face.FLESH), overlap("inner", "outer", 60))),
                flat());
        strapCase(
                "layers-in-each-other",
                "sections[fold]",
                strap(
                        3,
                        List.of(
                                straight("a", 40),
                                bend(
                                        "fold",
                                        new Core.Radius(mm(0)),
                                        180,
                                        Face.GRAIN,
                                        new Preparation.Skived(mm(1), mm(3))),
                                straight("b", 40))),
                strap(
                        3,
                        List.of(
                                straight("a", 40, 1, 0),
                                bend(
                                        "fold",
                                        new Core.Radius(mm(0)),
                                        180,
                                        Face.GRAIN,
                                        new Preparation.Skived(mm(1), mm(0))),
                                straight("b", 40, 1, 0))));
        strapCase(
                "thickness-step",
                "sections[b]",
                strap(3, List.of(straight("a", 40), straight("b", 40, 2, 0))),
                strap(3, List.of(straight("a", 40), straight("b", 40, 2, 8))));
        strapCase("nested-bend-apart", "sections[over]", doubled(40), doubled(45));
        strapCase(
                "flesh-shows",
                "",
                fold(bend("fold", new Core.Radius(mm(3)), 180, Face.FLESH, DRY)),
                strap(2, List.of(straight("outer", 60), flatFold("fold", Face.GRAIN), overlap("inner", "outer", 60))));
    }

    private static StrapLayout.Strap doubled(double back) {
        return strap(
                2,
                List.of(
                        straight("upper", 60),
                        round("over", "under"),
                        straight("back", 45),
                        flatFold("end", Face.GRAIN),
                        straight("inner-back", back),
                        bend("under", new Core.RoundBar(mm(6)), 180, Face.FLESH, DRY),
                        straight("inner", 60)));
    }

    private void features() {
        strapCase(
                "feature-outside-section",
                "features[h]",
                simple(hole("h", "tip", From.START, 51)),
                simple(hole("h", "tip", From.START, 45)));
        strapCase(
                "feature-outside-section",
                "features[h]",
                simple(hole("h", "tip", From.START, -1)),
                simple(hole("h", "tip", From.START, 9)));
        strapCase(
                "feature-not-crossed",
                "features[h]",
                simple(hole("h", "leg", From.END, 60, "tip")),
                simple(hole("h", "leg", From.END, 40, "tip")));
        strapCase(
                "feature-not-straight",
                "features[h]",
                simple(hole("h", "leg", From.END, 40, "ring")),
                simple(hole("h", "leg", From.END, 40, "tip")));
        strapCase(
                "feature-not-straight",
                "features[h]",
                simple(hole("h", "leg", From.END, 40, "leg")),
                simple(hole("h", "leg", From.END, 40, "tip")));
        strapCase(
                "feature-duplicate-id",
                "features[h]",
                simple(hole("h", "leg", From.END, 40), hole("h", "leg", From.END, 30)),
                simple(hole("h", "leg", From.END, 40)));
        strapCase("stitch-row-without-length", "features[r]", simple(row(30)), simple(row(60)));
        strapCase(
                "hole-in-fold",
                "features[h]",
                simple(hole("h", "ring", From.MIDDLE, 0)),
                simple(hole("h", "leg", From.MIDDLE, 0)));
        strapCase(
                "hole-near-fold",
                "features[h]",
                simple(hole("h", "leg", From.END, 4.9)),
                simple(hole("h", "leg", From.END, 5.1)));
        strapCase(
                "hole-near-fold",
                "features[h]",
                simple(hole("h", "tip", From.START, 4.9)),
                simple(hole("h", "tip", From.START, 5.1)));
        strapCase(
                "hole-near-edge",
                "features[h]",
                simple(hole("h", "leg", From.START, 7.9)),
                simple(hole("h", "leg", From.START, 8)));
        strapCase(
                "hole-breaks-out",
                "features[h]",
                simple(hole("h", "leg", From.START, 1.9)),
                simple(hole("h", "leg", From.START, 2.1)));
        strapCase(
                "hole-breaks-out",
                "features[h]",
                simple(hole("h", "tip", From.END, 1.9)),
                simple(hole("h", "tip", From.END, 2.1)));
        strapCase(
                "hole-breaks-out",
                "features[h]",
                simple(hole("h", 20, "leg", From.MIDDLE, 0)),
                simple(hole("h", 19.9, "leg", From.MIDDLE, 0)));
        strapCase(
                "slot-breaks-out",
                "features[s]",
                simple(slot(10, 4, "leg", From.START, 4.9)),
                simple(slot(10, 4, "leg", From.START, 5.1)));
        strapCase(
                "slot-breaks-out",
                "features[s]",
                simple(slot(10, 4, "tip", From.END, 4.9)),
                simple(slot(10, 4, "tip", From.END, 5.1)));
        strapCase(
                "slot-breaks-out",
                "features[s]",
                simple(slot(10, 20, "leg", From.MIDDLE, 0)),
                simple(slot(10, 19.9, "leg", From.MIDDLE, 0)));
        strapCase(
                "slot-near-edge", // 20 mm wide: 10 mm are two widths of 5 mm
                "features[s]",
                simple(slot(10, 5.1, "leg", From.MIDDLE, 0)),
                simple(slot(10, 5, "leg", From.MIDDLE, 0)));
        strapCase(
                "slot-past-fold", // the fold round the ring takes π (3 + 0.6 · 3) = 15.08 mm
                "features[s]",
                simple(slot(15.1, 4, "ring", From.MIDDLE, 0)),
                simple(slot(15, 4, "ring", From.MIDDLE, 0)));
        strapCase(
                "slot-past-fold",
                "features[s]",
                simple(slot(14, 4, "ring", From.MIDDLE, 2)),
                simple(slot(14, 4, "ring", From.MIDDLE, 0)));
        strapCase(
                "slot-past-fold",
                "features[s]",
                simple(slot(14, 4, "ring", From.MIDDLE, -2)),
                simple(slot(14, 4, "ring", From.MIDDLE, 0)));
        strapCase(
                "holes-near-each-other", // two diameters of 4 mm; of the larger where they differ
                "features[b]",
                simple(hole("b", "leg", From.START, 47.9), hole("a", "leg", From.START, 40)),
                simple(hole("b", "leg", From.START, 48), hole("a", "leg", From.START, 40)));
        strapCase(
                "holes-near-each-other",
                "features[b]",
                simple(hole("a", "leg", From.START, 40), hole("b", 4.5, "leg", From.START, 48.9)),
                simple(hole("a", "leg", From.START, 40), hole("b", 4.5, "leg", From.START, 49)));
        strapCase(
                "folded-place-punched-flat",
                "features[lower]",
                flat(hole("upper", "outer", From.END, 20), hole("lower", "inner", From.START, 21.5)),
                flat(hole("upper", "outer", From.END, 20, "inner")));
        strapCase(
                "folded-place-punched-flat",
                "features[lower]",
                flat(hole("upper", "outer", From.END, 20), hole("lower", "inner", From.START, 20.2)),
                flat(hole("upper", "outer", From.END, 20), hole("lower", "inner", From.START, 20)));
        strapCase(
                "layer-not-pierced",
                "features[upper]",
                flat(hole("upper", "outer", From.END, 20)),
                flat(hole("upper", "outer", From.END, 20, "inner")));
        strapCase(
                "fitting-draws-together",
                "features[rivet]",
                simple(hole("rivet", "leg", From.END, 20, "tip")),
                simple(hole("rivet", "leg", From.END, 20)));
    }

    private static Feature row(double to) {
        return new Feature.StitchRow(
                "r", "leg", From.START, mm(30), "leg", From.START, mm(to), mm(3), Optional.empty());
    }

    private void hardware() {
        strapCase("strap-carries-load", "carries-load", wide(20, 21, true), wide(20, 21, false));
        strapCase("strap-wider-than-hardware", "width", wide(20.1, 20, false), wide(20, 20, false));
        width("strap-wider-than-hardware", 0, 25.1, List.of(), 1, 25, List.of());
        strapCase("strap-as-wide-as-hardware", "width", wide(20, 20, false), wide(20, 20.5, false));
        strapCase("strap-tight-in-hardware", "width", wide(20, 20.4, false), wide(20, 20.5, false));
        strapCase("strap-loose-in-hardware", "width", wide(20, 23.1, false), wide(20, 23, false));
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
        cases.add(new Case(
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
        cases.add(new Case("bend-no-corner", "turn", legs(180, 20), legs(179, 2000)));
        cases.add(new Case("bend-no-corner", "turn", legs(180, Optional.empty()), outcomeWithoutLegs(180)));
        cases.add(new Case("bend-one-leg", "leg-b", legs(90, Optional.empty()), legs(90, 6)));
        cases.add(new Case("bend-legs-too-short", "leg-a", legs(90, 5.9), legs(90, 6)));
        cases.add(new Case("bend-legs-too-short", "leg-a", legs(120, 10.3), legs(120, 10.4)));
        cases.add(
                new Case("strip-legs-longer-than-strip", "strip-length", strip(50, 50, 3, 0.2), strip(42, 43, 3, 0.2)));
        cases.add(new Case("neutral-line-outside-leather", "", strip(43, 48, 3, 0.1), strip(42, 43, 3, 0.1)));
        cases.add(new Case("neutral-line-outside-leather", "", strip(40, 40, 3, 0.1), strip(42, 43, 3, 0.1)));
        cases.add(new Case("neutral-line-unusual", "", strip(43, 45, 3, 0.1), strip(42, 43.5, 3, 0.1)));
        cases.add(new Case("neutral-line-unusual", "", strip(41, 42, 3, 0.1), strip(42, 43.5, 3, 0.1)));
        cases.add(new Case(
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
        cases.add(new Case(
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
        cases.add(new Case(
                key,
                null,
                work(new WrapLength(), new WrapLength.Wrap(raises, mm(3), 0.5)),
                work(new WrapLength(), new WrapLength.Wrap(mended, mm(3), 0.5))));
    }

    private void bars(String key, double centres, TwoBars.BarRun run) {
        cases.add(new Case(
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
        cases.add(new Case(
                key,
                null,
                work(new KeeperLength(), Keepers.keeper(layers, ease, radius)),
                work(new KeeperLength(), Keepers.keeper(mended, mendedEase, mendedRadius))));
    }

    private void belts() {
        belt(
                "strap-as-wide-as-hardware",
                belt -> belt.buckle = Optional.of(mm(38)),
                belt -> belt.buckle = Optional.of(mm(39)));
        belt(
                "strap-tight-in-hardware",
                belt -> belt.buckle = Optional.of(mm(38.2)),
                belt -> belt.buckle = Optional.of(mm(39)));
        belt(
                "strap-loose-in-hardware",
                belt -> belt.buckle = Optional.of(mm(45)),
                belt -> belt.buckle = Optional.of(mm(39)));
        belt("contact-too-near", belt -> belt.contact = 3, belt -> belt.contact = 8);
        belt("belt-turn-back-too-short", belt -> belt.turnBack = 15, belt -> belt.turnBack = 16);
        belt("belt-size-too-small", belt -> belt.size = 97, belt -> belt.size = 98);
        belt(
                "belt-size-too-small",
                belt -> {
                    belt.size = 104;
                    belt.slot = 60;
                },
                belt -> {
                    belt.size = 104;
                    belt.slot = 40;
                });
        belt(
                "belt-turn-back-thicker",
                belt -> belt.turnBackThickness = Optional.of(mm(3.6)),
                belt -> belt.turnBackThickness = Optional.of(mm(3.5)));
        belt(
                "belt-worn-hole-outside-row",
                belt -> belt.wornHole = Optional.of(6),
                belt -> belt.wornHole = Optional.of(5));
        belt(
                "belt-sizes-outside-row",
                belt -> belt.shortest = Optional.of(mm(849)),
                belt -> belt.shortest = Optional.of(mm(850)));
        belt(
                "belt-sizes-outside-row",
                belt -> belt.longest = Optional.of(mm(951)),
                belt -> belt.longest = Optional.of(mm(950)));
        belt("belt-no-middle-hole", belt -> belt.holes = 6, belt -> {
            belt.holes = 6;
            belt.wornHole = Optional.of(3);
        });
        belt(
                "belt-tip-misses-keeper",
                belt -> belt.keeper = Optional.of(mm(114)),
                belt -> belt.keeper = Optional.of(mm(113)));
        belt(
                "belt-tip-hangs-out",
                belt -> {
                    belt.keeper = Optional.of(mm(45));
                    belt.tipBeyond = 182;
                },
                belt -> {
                    belt.keeper = Optional.of(mm(45));
                    belt.tipBeyond = 181;
                });
        belt("belt-tip-shape-reaches-hole", belt -> belt.tipLength = 98, belt -> belt.tipLength = 97);
        belt("belt-slot-short", belt -> belt.slot = 11.9, belt -> belt.slot = 12);
        belt("slot-near-edge", belt -> belt.slotWidth = 9.6, belt -> belt.slotWidth = 9.5);
        belt(
                "slot-near-edge", // 6 mm to the edge where it carries
                belt -> {
                    belt.load = true;
                    belt.width = 11.9;
                    belt.slotWidth = 2;
                },
                belt -> {
                    belt.load = true;
                    belt.width = 12;
                    belt.slotWidth = 2;
                });
        belt("slot-past-fold", belt -> belt.slot = 60, belt -> belt.slot = 25);
        belt("belt-slot-runs-out", belt -> belt.slot = 166, belt -> belt.slot = 164);
        belt("belt-holes-meet", belt -> belt.spacing = 4.5, belt -> belt.spacing = 4.6);
        belt("belt-holes-close", belt -> belt.spacing = 8.9, belt -> belt.spacing = 9);
        belt("holes-near-edge", belt -> belt.width = 17.9, belt -> belt.width = 18);
        belt("width-all-holes", belt -> belt.hole = 38, belt -> belt.hole = 37.9);
        belt("width-all-holes", belt -> belt.slotWidth = 38, belt -> belt.slotWidth = 37.9);
        belt("belt-hole-in-turn-back", belt -> belt.size = 157, belt -> belt.size = 157.3);
        belt("fold-too-tight", belt -> belt.bar = 1.7, belt -> belt.bar = 1.8);
        belt("strap-carries-load", belt -> belt.load = true, belt -> belt.load = false);
        belt("bend-web-too-thick", belt -> belt.preparation = grooved(3.6), belt -> belt.preparation = grooved(3.5));
        belt(
                "bend-skive-too-thick",
                belt -> belt.preparation = skived(3.6, 10),
                belt -> belt.preparation = skived(3.5, 10));
        belt("ramp-too-long", belt -> belt.preparation = skived(2, 61), belt -> belt.preparation = skived(2, 60));
        belt(
                "belt-slot-short",
                belt -> belt.prongBase = Optional.of(mm(18.1)),
                belt -> belt.prongBase = Optional.of(mm(18)));
    }

    private static Preparation grooved(double web) {
        return new Preparation.Grooved(mm(web));
    }

    private static Preparation skived(double left, double ramp) {
        return new Preparation.Skived(mm(left), mm(ramp));
    }

    private void belt(String key, Consumer<Belts> spoilt, Consumer<Belts> mended) {
        Belts one = new Belts();
        spoilt.accept(one);
        Belts other = new Belts();
        mended.accept(other);
        cases.add(new Case(key, null, work(new BeltLayout(), one.build()), work(new BeltLayout(), other.build())));
    }

    private void strips() {
        Outcome<?> plain = strips(400, 38, Optional.empty(), 1, 40);
        cases.add(new Case(
                "strips-none",
                "panel",
                strips(42, 38, Optional.empty(), 1, 40),
                strips(43, 38, Optional.empty(), 1, 40)));
        cases.add(new Case("strips-lap-too-long", "join-lap", strips(400, 38, Optional.of(mm(1200)), 1, 1000), plain));
        cases.add(new Case(
                "strips-too-short",
                "cut-length",
                strips(400, 38, Optional.of(mm(1001)), 1, 40),
                strips(400, 38, Optional.of(mm(1000)), 1, 40)));
        cases.add(new Case(
                "strips-not-enough",
                "straps",
                strips(400, 38, Optional.of(mm(600)), 11, 40),
                strips(400, 38, Optional.of(mm(600)), 10, 40)));
        cases.add(new Case("strips-direction", "", plain, null));
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
        sections();
        features();
        hardware();
        bends();
        wraps();
        keepers();
        belts();
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
        AllCalculators.list().forEach(calculator -> calculator.notices().forEach(kind -> listed.add(kind.key())));
        TreeSet<String> raised = new TreeSet<>();
        cases.forEach(one -> one.raised()
                .notices()
                .forEach(notice -> raised.add(notice.kind().key())));
        assertEquals(listed, raised);
    }

    @Test
    void anUnknownSectionIsToldWithTheNearestRightOne() {
        Outcome<?> outcome = work(new StrapLayout(), simple(hole("h", "legg", From.START, 20)));
        assertEquals(List.of("legg", "leg"), outcome.notices().get(0).args());
        outcome = work(new StrapLayout(), simple(hole("h", "something-else", From.START, 20)));
        assertEquals(
                List.of("something-else", "leg, ring, tip"),
                outcome.notices().get(0).args());
        outcome = work(new StrapLayout(), simple(hole("h", "leg", From.START, 20, "tipp")));
        assertEquals(List.of("tipp", "tip"), outcome.notices().get(0).args());
        outcome = work(new StrapLayout(), fold(round("fold", "fould")));
        assertEquals(List.of("fould", "fold"), outcome.notices().get(0).args());
        outcome = work(
                new StrapLayout(),
                strap(2, List.of(straight("outer", 100), flatFold("fold", Face.GRAIN), overlap("inner", "fold", 60))));
        assertEquals(List.of("fold", "outer"), outcome.notices().get(0).args());
    }

    @Test
    void theFleshThatShowsIsNamedSectionBySection() {
        Outcome<?> outcome = work(new StrapLayout(), glued(flat(), 0.1));
        Notice notice = outcome.notices().stream()
                .filter(n -> n.kind().key().equals("flesh-shows"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("outer"), notice.args());
    }
}
