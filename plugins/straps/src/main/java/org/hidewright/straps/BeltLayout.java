package org.hidewright.straps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Teardrop;
import org.osgi.service.component.annotations.Component;

/** A belt by its measured size: length to cut, and the flat places of buckle turn, prong slot, holes and tip. */
@Calculates("belt")
@Component(service = Calculator.class)
public final class BeltLayout implements Calculator<BeltLayout.Belt, BeltLayout.Layout> {
    private static final Formula HOLE_SIZE = Formula.of("belt-hole-size", "S(i) = S + (i - m) · p", Origins.GEOMETRY);
    private static final Formula FLAT_HOLE = Formula.of("belt-flat-hole", "s = a + S - b - X", Origins.GEOMETRY);
    private static final Formula CUT = Formula.of("belt-cut-length", "L = s + c", Origins.GEOMETRY);

    private static final NoticeKind TURN_BACK_TOO_SHORT = NoticeKind.stop("belt-turn-back-too-short");
    private static final NoticeKind SIZE_TOO_SMALL = NoticeKind.stop("belt-size-too-small");
    private static final NoticeKind THICKER = NoticeKind.stop("belt-turn-back-thicker");
    private static final NoticeKind WORN_HOLE_OUTSIDE = NoticeKind.check("belt-worn-hole-outside-row");
    private static final NoticeKind SIZES_OUTSIDE = NoticeKind.check("belt-sizes-outside-row");
    private static final NoticeKind EVEN_HOLES = NoticeKind.note("belt-no-middle-hole");
    private static final NoticeKind TIP_TOO_SHORT = NoticeKind.check("belt-tip-misses-keeper");
    private static final NoticeKind TIP_LONG = NoticeKind.note("belt-tip-hangs-out");
    private static final NoticeKind SHAPE_REACHES_HOLE = NoticeKind.check("belt-tip-shape-reaches-hole");
    private static final NoticeKind SLOT_SHORT = NoticeKind.check("belt-slot-short");

    private static final double TIP_BEYOND_KEEPER_MM = 150;

    /** What is asked. Along the belt distances count from the centre of the buckle’s bar. */
    public record Belt(
            @Asked(unit = "mm", min = "50 mm", max = "3 m", usual = "600-1300 mm", preset = "900 mm")
            Length size,

            @Asked(preset = "frame-end") BeltMeasure datum,

            @Asked(unit = "mm", min = "2 mm", max = "200 mm", usual = "10-80 mm", preset = "38 mm")
            Length width,

            @Asked(unit = "mm", min = "0.5 mm", max = "20 mm", usual = "3-4.5 mm", preset = "3.5 mm")
            Length thickness,

            @Asked(unit = "mm", min = "2 mm", max = "200 mm", example = "39 mm")
            Optional<Length> buckleInsideWidth,

            @Asked(unit = "mm", min = "0.5 mm", max = "30 mm", usual = "3-8 mm", preset = "5 mm")
            Length barDiameter,

            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "15-60 mm", preset = "30 mm")
            Length frameLength,

            @Asked(min = "1", max = "60", usual = "5-7", preset = "5")
            int holes,

            @Asked(unit = "mm", min = "2 mm", max = "200 mm", usual = "20-30 mm", preset = "25 mm")
            Length spacing,

            @Asked(min = "1", max = "60", example = "3") Optional<Integer> wornHole,

            @Asked(unit = "mm", min = "0.5 mm", max = "50 mm", usual = "3-6 mm", preset = "4.5 mm")
            Length holeDiameter,

            @Asked(unit = "mm", min = "50 mm", max = "3 m", example = "850 mm")
            Optional<Length> shortestSize,

            @Asked(unit = "mm", min = "50 mm", max = "3 m", example = "950 mm")
            Optional<Length> longestSize,

            @Asked(unit = "mm", min = "0 mm", max = "1 m", usual = "75-125 mm", preset = "100 mm")
            Length tipBeyond,

            @Asked(preset = "point") BeltTip tip,

            @Asked(unit = "mm", min = "0 mm", max = "500 mm", usual = "10-60 mm", preset = "20 mm")
            Length tipLength,

            @Asked(unit = "mm", min = "2 mm", max = "1 m", usual = "60-90 mm", preset = "75 mm")
            Length turnBackLength,

            @Asked(unit = "mm", min = "0.2 mm", max = "20 mm", example = "2 mm")
            Optional<Length> turnBackThickness,

            @Asked(unit = "mm", min = "1 mm", max = "200 mm", usual = "8-40 mm", preset = "15 mm")
            Length contact,

            @Asked(unit = "mm", min = "1 mm", max = "200 mm", usual = "20-35 mm", preset = "25 mm")
            Length slotLength,

            @Asked(unit = "mm", min = "0.5 mm", max = "50 mm", usual = "4-7 mm", preset = "5 mm")
            Length slotWidth,

            @Asked(unit = "mm", min = "0 mm", max = "50 mm", example = "8 mm")
            Optional<Length> prongBase,

            @Asked(unit = "mm", min = "0 mm", max = "500 mm", example = "45 mm")
            Optional<Length> keeperFromBar,

            @Asked(unit = "mm", min = "1 mm", max = "100 mm", usual = "10-15 mm", preset = "12 mm")
            Length keeperWidth,

            @Asked(min = "0", max = "1", usual = "0.3-0.7", example = "0.55")
            Optional<Double> measuredNeutralLine) {}

    /** What is answered; flat places count from the turned-back end and from the tip. */
    public record Layout(
            @Answered(unit = "mm", step = "1 mm", round = Rounding.UP, by = "belt-cut-length", lead = true)
            Length cutLength,

            @Answered(unit = "mm", step = "0.5 mm", by = "belt-flat-hole")
            Length wornHolePlace,

            @Answered(unit = "mm", step = "0.5 mm", by = "belt-hole-size")
            Length smallestSize,

            @Answered(unit = "mm", step = "0.5 mm", by = "belt-hole-size")
            Length largestSize,

            @Answered List<BeltHole> holes,

            @Answered(unit = "mm", step = "0.5 mm", by = "teardrop-leg")
            Length slotCentre,

            @Answered(unit = "mm", step = "0.5 mm", by = "teardrop-leg")
            Length slotStart,

            @Answered(unit = "mm", step = "0.5 mm", by = "teardrop-leg")
            Length slotEnd,

            @Answered(unit = "mm", step = "0.5 mm", by = "teardrop-leg")
            Length turnStart,

            @Answered(unit = "mm", step = "0.5 mm", by = "teardrop-leg")
            Length turnEnd,

            @Answered(unit = "mm", step = "0.5 mm", by = "belt-cut-length")
            Length tipStart,

            @Answered(step = "0.01", by = "neutral-line-habit")
            double neutralLine,

            @Answered Drawing sizePicture,
            @Answered Drawing flatView) {}

    /** One hole of the row, the one nearest the buckle first. */
    public record BeltHole(
            @RowId String id,

            @Answered(unit = "mm", step = "0.5 mm", by = "belt-hole-size")
            Length size,

            @Answered(unit = "mm", step = "0.5 mm", by = "belt-flat-hole")
            Length fromTurnBackEnd,

            @Answered(unit = "mm", step = "0.5 mm", by = "belt-flat-hole")
            Length fromTip,

            @Answered(by = "belt-hole-size") boolean worn) {}

    @Override
    public Outcome<Layout> calculate(Belt belt, Working working) {
        BeltGeometry geometry = new BeltGeometry(belt);
        int worn = wornHole(belt);
        double spacing = belt.spacing().mm();
        double smallest = belt.size().mm() + (1 - worn) * spacing;
        double largest = belt.size().mm() + (belt.holes() - worn) * spacing;
        Optional<Notice> stop = impossible(belt, geometry, smallest);
        if (stop.isPresent()) {
            return Outcome.refuse(stop.get());
        }
        double tip = geometry.fromBarMm(largest) + belt.tipBeyond().mm();
        FoldedStrap strap = geometry.folded(tip);
        double cut = strap.flatLength();
        List<BeltHole> holes = new ArrayList<>();
        for (int i = 1; i <= belt.holes(); i++) {
            double size = belt.size().mm() + (i - worn) * spacing;
            double flat = geometry.flatMm(strap, geometry.fromBarMm(size));
            holes.add(new BeltHole(
                    "hole-" + i, Length.ofMm(size), Length.ofMm(flat), Length.ofMm(cut - flat), i == worn));
        }
        PlacedPiece turn = strap.piece(BeltGeometry.BUCKLE).orElseThrow();
        Length slot = Length.ofMm(turn.flatAt(turn.piece().middleOutsideMm()));
        Length wornPlace = Length.ofMm(
                geometry.flatMm(strap, geometry.fromBarMm(belt.size().mm())));
        explain(working, belt, geometry, turn, worn, wornPlace, Length.ofMm(cut));
        Layout layout = new Layout(
                Length.ofMm(cut),
                wornPlace,
                Length.ofMm(smallest),
                Length.ofMm(largest),
                holes,
                slot,
                slot.minus(belt.slotLength().times(0.5)),
                slot.plus(belt.slotLength().times(0.5)),
                Length.ofMm(turn.flatStart()),
                Length.ofMm(turn.flatEnd()),
                Length.ofMm(cut).minus(belt.tipLength()),
                geometry.rule().k(),
                new BeltSizePicture(belt, geometry).drawing(),
                new BeltFlatView(belt, holes, turn, slot.mm(), cut).drawing());
        return Outcome.of(layout, notices(belt, worn, smallest, largest));
    }

    /** The hole the size is measured to: the one asked, else the middle one, of an even row the one before it. */
    private static int wornHole(Belt belt) {
        return belt.wornHole().orElse((belt.holes() + 1) / 2);
    }

    private static Optional<Notice> impossible(Belt belt, BeltGeometry geometry, double smallest) {
        double k = geometry.rule().k();
        if (geometry.turnedBackThicknessMm() > belt.thickness().mm()) {
            return Optional.of(
                    THICKER.at("turn-back-thickness", belt.turnBackThickness().orElseThrow(), belt.thickness()));
        }
        if (!Teardrop.fits(
                        belt.barDiameter().mm(),
                        belt.contact().mm(),
                        belt.thickness().mm(),
                        k)
                || !Teardrop.fits(belt.barDiameter().mm(), belt.contact().mm(), geometry.turnedBackThicknessMm(), k)) {
            return Optional.of(SectionReader.CONTACT_TOO_NEAR.at(
                    "contact",
                    SectionReader.THIS_TURN_BACK,
                    belt.contact(),
                    Length.ofMm(
                            belt.barDiameter().mm() / 2 + k * belt.thickness().mm())));
        }
        if (belt.turnBackLength().mm() <= belt.contact().mm()) {
            return Optional.of(TURN_BACK_TOO_SHORT.at("turn-back-length", belt.turnBackLength(), belt.contact()));
        }
        return geometry.fromBarMm(smallest) <= belt.contact().mm()
                ? Optional.of(SIZE_TOO_SMALL.at("size", Length.ofMm(smallest), belt.contact()))
                : Optional.empty();
    }

    private static void explain(
            Working working,
            Belt belt,
            BeltGeometry geometry,
            PlacedPiece turn,
            int worn,
            Length wornPlace,
            Length cut) {
        geometry.rule().explain(working, belt.thickness().mm());
        Source neutral = geometry.rule().measured() ? Origins.NEUTRAL_MEASURED : Origins.NEUTRAL_HABIT;
        List.of("neutral-line", "cut-length", "worn-hole-place").forEach(answer -> working.source(answer, neutral));
        Length thin = Length.ofMm(geometry.turnedBackThicknessMm());
        TeardropWorking.write(working, geometry.turnBack().leg(thin.mm()), belt.contact(), thin);
        TeardropWorking.write(
                working, geometry.turnBack().leg(belt.thickness().mm()), belt.contact(), belt.thickness());
        working.step(HOLE_SIZE, belt.size(), "S", belt.size(), "i", worn, "m", worn, "p", belt.spacing());
        working.step(
                FLAT_HOLE,
                wornPlace,
                "a",
                Length.ofMm(turn.flatEnd()),
                "S",
                belt.size(),
                "b",
                Length.ofMm(geometry.behindBarMm()),
                "X",
                belt.contact());
        working.step(CUT, cut, "s", cut.minus(belt.tipBeyond()), "c", belt.tipBeyond());
    }

    private static List<Notice> notices(Belt belt, int worn, double smallest, double largest) {
        List<Notice> notices = new ArrayList<>();
        HardwareFit.check(belt.width(), belt.buckleInsideWidth()).ifPresent(notices::add);
        if (worn > belt.holes()) {
            notices.add(WORN_HOLE_OUTSIDE.at("worn-hole", worn, belt.holes(), Length.ofMm(largest), belt.size()));
        } else if (belt.wornHole().isEmpty() && belt.holes() % 2 == 0) {
            notices.add(EVEN_HOLES.at("holes", belt.holes(), worn));
        }
        boolean tooShort =
                belt.shortestSize().isPresent() && belt.shortestSize().get().mm() < smallest - 1e-9;
        boolean tooLong =
                belt.longestSize().isPresent() && belt.longestSize().get().mm() > largest + 1e-9;
        if (tooShort || tooLong) {
            notices.add(SIZES_OUTSIDE.at(
                    "holes",
                    Length.ofMm(smallest),
                    Length.ofMm(largest),
                    tooShort ? belt.shortestSize().get() : belt.longestSize().get()));
        }
        tip(belt, worn, notices);
        belt.prongBase().ifPresent(base -> {
            Length needed = base.plus(belt.thickness().times(2));
            if (belt.slotLength().mm() < needed.mm() - 1e-9) {
                notices.add(SLOT_SHORT.at("slot-length", belt.slotLength(), needed));
            }
        });
        return notices;
    }

    /** Worn, the tip reaches past the bar as far as it reaches past its hole. */
    private static void tip(Belt belt, int worn, List<Notice> notices) {
        double beyond = belt.tipBeyond().mm();
        if (belt.tipLength().mm() + belt.holeDiameter().mm() / 2 > beyond) {
            notices.add(SHAPE_REACHES_HOLE.at("tip-length", belt.tipLength(), belt.tipBeyond()));
        }
        belt.keeperFromBar().ifPresent(keeper -> {
            double reach =
                    beyond + Math.max(0, belt.holes() - worn) * belt.spacing().mm();
            double past = keeper.mm() + belt.keeperWidth().mm() / 2;
            if (reach <= past) {
                notices.add(TIP_TOO_SHORT.at("tip-beyond", Length.ofMm(reach), Length.ofMm(past)));
            } else if (reach > past + TIP_BEYOND_KEEPER_MM) {
                notices.add(TIP_LONG.at("tip-beyond", Length.ofMm(reach - past)));
            }
        });
    }

    @Override
    public List<Formula> formulas() {
        return Stream.concat(
                        Stream.of(Formulas.NEUTRAL_DRY, HOLE_SIZE, FLAT_HOLE, CUT), TeardropWorking.FORMULAS.stream())
                .toList();
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.concat(
                        HardwareFit.KINDS.stream(),
                        Stream.of(
                                SectionReader.CONTACT_TOO_NEAR,
                                TURN_BACK_TOO_SHORT,
                                SIZE_TOO_SMALL,
                                THICKER,
                                WORN_HOLE_OUTSIDE,
                                SIZES_OUTSIDE,
                                EVEN_HOLES,
                                TIP_TOO_SHORT,
                                TIP_LONG,
                                SHAPE_REACHES_HOLE,
                                SLOT_SHORT))
                .toList();
    }

    @Override
    public List<String> phrases() {
        return List.of(SectionReader.THIS_TURN_BACK.key());
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.GEOMETRY,
                Origins.BELT_HABITS,
                Origins.HARDWARE_EASE,
                Origins.NEUTRAL_HABIT,
                Origins.NEUTRAL_MEASURED);
    }
}
