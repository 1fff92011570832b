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
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stretch;
import org.osgi.service.component.annotations.Component;

/** A belt by its measured size: length to cut, and the flat places of buckle turn, prong slot, holes and tip. */
@Calculates("belt")
@Component(service = Calculator.class)
public final class BeltLayout implements Calculator<BeltLayout.Belt, BeltLayout.Layout> {
    private static final Formula HOLE_SIZE = Formula.of("belt-hole-size", "S(i) = S + (i - m) · p", Origins.GEOMETRY);
    private static final Formula FLAT_HOLE = Formula.of("belt-flat-hole", "s = a + S - b - X", Origins.GEOMETRY);
    private static final Formula CUT = Formula.of("belt-cut-length", "L = s + c", Origins.GEOMETRY);

    private static final Formula FOLD_TO_TIP =
            Formula.of("belt-fold-to-tip", "A = d / 2 + t + f + c", Origins.GEOMETRY);

    /** What is asked. Along the belt distances count from the centre of the buckle’s bar. */
    public record Belt(
            @Asked(unit = "mm", min = "50 mm", max = "3 m", usual = "600-1300 mm", example = "900 mm")
            Length size,

            @Asked(example = "frame-end") BeltMeasure datum,

            @Asked(unit = "mm", min = "2 mm", max = "200 mm", usual = "10-80 mm", example = "38 mm")
            Length width,

            @Asked(unit = "mm", min = "0.5 mm", max = "20 mm", usual = "3-4.5 mm", example = "3.5 mm")
            Length thickness,

            @Asked(unit = "mm", min = "2 mm", max = "200 mm", example = "39 mm")
            Optional<Length> buckleInsideWidth,

            @Asked(
                    unit = "mm",
                    min = "0.5 mm",
                    max = "30 mm",
                    usual = "3-8 mm",
                    example = "5 mm",
                    picture = "belt-buckle#bar")
            Length barDiameter,

            @Asked(
                    unit = "mm",
                    min = "0 mm",
                    max = "200 mm",
                    usual = "15-60 mm",
                    example = "30 mm",
                    picture = "belt-buckle#frame")
            Length frameLength,

            @Asked(min = "1", max = "60", usual = "5-7", preset = "5")
            int holes,

            @Asked(
                    unit = "mm",
                    min = "2 mm",
                    max = "200 mm",
                    usual = "20-30 mm",
                    preset = "25 mm",
                    picture = "belt#spacing")
            Length spacing,

            @Asked(min = "1", max = "60", example = "3") Optional<Integer> wornHole,

            @Asked(unit = "mm", min = "0.5 mm", max = "50 mm", usual = "3-6 mm", example = "4.5 mm")
            Length holeDiameter,

            @Asked(unit = "mm", min = "50 mm", max = "3 m", example = "850 mm")
            Optional<Length> shortestSize,

            @Asked(unit = "mm", min = "50 mm", max = "3 m", example = "950 mm")
            Optional<Length> longestSize,

            @Asked(unit = "mm", min = "0 mm", max = "1 m", usual = "75-125 mm", preset = "100 mm", picture = "belt#tip")
            Length tipBeyond,

            @Asked(preset = "point") BeltTip tip,

            @Asked(unit = "mm", min = "0 mm", max = "500 mm", usual = "10-60 mm", preset = "20 mm")
            Length tipLength,

            @Asked(
                    unit = "mm",
                    min = "2 mm",
                    max = "1 m",
                    usual = "60-90 mm",
                    preset = "75 mm",
                    picture = "belt-buckle#turn-back")
            Length turnBackLength,

            @Asked(unit = "mm", min = "0.2 mm", max = "20 mm", example = "2 mm")
            Optional<Length> turnBackThickness,

            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "8-40 mm", example = "15 mm")
            Length contact,

            @Asked(preset = "{\"none\":{}}", example = "{\"skived\":{\"thickness-left\":\"2 mm\",\"ramp\":\"10 mm\"}}")
            Preparation preparation,

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
            Optional<Double> measuredNeutralLine,

            @Asked(preset = "false") boolean carriesLoad) {}

    /** What is answered; flat places count from the turned-back end and from the tip. */
    public record Layout(
            @Answered(unit = "mm", step = "0.1 mm", by = "belt-cut-length", lead = true)
            Length cutLength,

            @Answered(unit = "mm", step = "0.1 mm", by = "belt-fold-to-tip")
            Length foldToTip,

            @Answered(unit = "mm", step = "0.1 mm", by = "belt-flat-hole")
            Length wornHolePlace,

            @Answered(unit = "mm", step = "0.1 mm", by = "belt-hole-size")
            Length smallestSize,

            @Answered(unit = "mm", step = "0.1 mm", by = "belt-hole-size")
            Length largestSize,

            @Answered List<BeltHole> holes,

            @Answered(unit = "mm", step = "0.1 mm", by = "teardrop-leg")
            Length slotCentre,

            @Answered(unit = "mm", step = "0.1 mm", by = "teardrop-leg")
            Length slotStart,

            @Answered(unit = "mm", step = "0.1 mm", by = "teardrop-leg")
            Length slotEnd,

            @Answered(unit = "mm", step = "0.1 mm", by = "teardrop-leg")
            Length turnStart,

            @Answered(unit = "mm", step = "0.1 mm", by = "teardrop-leg")
            Length turnEnd,

            @Answered(unit = "mm", step = "0.1 mm", by = "belt-cut-length")
            Length tipStart,

            @Answered(step = "0.01", by = "neutral-line-habit")
            double neutralLine,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "net-width")
            Length netWidth,

            @Answered(step = "0.01", round = Rounding.DOWN, by = "net-width")
            double netWidthFactor,

            @Answered(unit = "mm", step = "0.1 mm", by = "teardrop-leg")
            Optional<Length> skiveStart,

            @Answered(unit = "mm", step = "0.1 mm", by = "teardrop-leg")
            Optional<Length> skiveEnd,

            @Answered Drawing sizePicture,
            @Answered Drawing flatView) {}

    /** One hole of the row, the one nearest the buckle first. */
    public record BeltHole(
            @RowId String id,

            @Answered(unit = "mm", step = "0.1 mm", by = "belt-hole-size")
            Length size,

            @Answered(unit = "mm", step = "0.1 mm", by = "belt-flat-hole")
            Length fromTurnBackEnd,

            @Answered(unit = "mm", step = "0.1 mm", by = "belt-flat-hole")
            Length fromTip,

            @Answered(by = "belt-hole-size") boolean worn) {}

    @Override
    public Outcome<Layout> calculate(Belt belt, Working working) {
        BeltGeometry geometry = new BeltGeometry(belt);
        BeltRow row = BeltRow.of(belt);
        BeltChecks checks = new BeltChecks(belt, geometry, row);
        Optional<Notice> stop = checks.stop();
        if (stop.isPresent()) {
            return Outcome.refuse(stop.get());
        }
        double tip = geometry.fromBarMm(row.largestMm()) + belt.tipBeyond().mm();
        FoldedStrap strap = geometry.folded(tip);
        double cut = strap.flatLength();
        List<BeltHole> holes = new ArrayList<>();
        for (int i = 1; i <= row.count(); i++) {
            double flat = geometry.flatMm(strap, geometry.fromBarMm(row.sizeMm(i)));
            holes.add(new BeltHole(
                    "hole-" + i,
                    Length.ofMm(row.sizeMm(i)),
                    Length.ofMm(flat),
                    Length.ofMm(cut - flat),
                    i == row.worn()));
        }
        PlacedPiece turn = strap.piece(BeltGeometry.BUCKLE).orElseThrow();
        Length slot = Length.ofMm(BeltGeometry.middleMm(turn));
        Length wornPlace = Length.ofMm(geometry.flatMm(strap, geometry.fromBarMm(row.sizeMm())));
        Length shape = belt.tip() == BeltTip.SQUARE ? Length.ZERO : belt.tipLength();
        List<Skives.Zone> skives = geometry.skives(strap).zones();
        Layout layout = new Layout(
                Length.ofMm(cut),
                Length.ofMm(geometry.outsideOfFoldMm() + tip),
                wornPlace,
                Length.ofMm(row.smallestMm()),
                Length.ofMm(row.largestMm()),
                holes,
                slot,
                slot.minus(belt.slotLength().times(0.5)),
                slot.plus(belt.slotLength().times(0.5)),
                Length.ofMm(turn.flatStart()),
                Length.ofMm(turn.flatEnd()),
                Length.ofMm(cut).minus(shape),
                geometry.rule().k(),
                belt.width().minus(belt.holeDiameter()),
                1 - belt.holeDiameter().mm() / belt.width().mm(),
                skives.stream().findFirst().map(Skives.Zone::rampStart).map(Length::ofMm),
                skives.stream()
                        .reduce((first, last) -> last)
                        .map(Skives.Zone::rampEnd)
                        .map(Length::ofMm),
                new BeltSizePicture(belt, geometry, row).drawing(),
                new BeltFlatView(belt, holes, turn, slot.mm(), cut).drawing());
        explain(working, belt, geometry, row, turn, layout);
        return Outcome.of(layout, checks.all());
    }

    private static void explain(
            Working working, Belt belt, BeltGeometry geometry, BeltRow row, PlacedPiece turn, Layout layout) {
        geometry.rule().explain(working, geometry.foldThicknessMm());
        Source neutral = geometry.rule().measured() ? Origins.NEUTRAL_MEASURED : Origins.NEUTRAL_HABIT;
        List.of("neutral-line", "cut-length", "worn-hole-place").forEach(answer -> working.source(answer, neutral));
        BeltHabits.credit(belt, working);
        Length thin = Length.ofMm(geometry.foldBeforeMm());
        Length fold = Length.ofMm(geometry.foldThicknessMm());
        for (Length thickness : List.of(thin, fold)) {
            if (geometry.parallel()) {
                quarterTurn(working, belt, geometry, thickness);
            } else {
                TeardropWorking.write(working, geometry.turnBack().leg(thickness.mm()), belt.contact(), thickness);
            }
        }
        for (int i : new int[] {1, row.worn(), row.count()}) {
            working.step(
                    HOLE_SIZE,
                    Length.ofMm(row.sizeMm(i)),
                    "S",
                    belt.size(),
                    "i",
                    i,
                    "m",
                    row.worn(),
                    "p",
                    belt.spacing());
        }
        working.step(
                FLAT_HOLE,
                layout.wornHolePlace(),
                "a",
                Length.ofMm(turn.flatEnd()),
                "S",
                belt.size(),
                "b",
                Length.ofMm(geometry.behindBarMm()),
                "X",
                belt.contact());
        working.step(CUT, layout.cutLength(), "s", layout.cutLength().minus(belt.tipBeyond()), "c", belt.tipBeyond());
        working.step(
                FOLD_TO_TIP,
                layout.foldToTip(),
                "d",
                belt.barDiameter(),
                "t",
                fold,
                "f",
                Length.ofMm(geometry.fromBarMm(row.largestMm())),
                "c",
                belt.tipBeyond());
        working.step(StrapWidth.NET, layout.netWidthFactor(), "w", belt.width(), "D", belt.holeDiameter());
    }

    /** Parallel legs: each half of the turn is a quarter of a circle. */
    private static void quarterTurn(Working working, Belt belt, BeltGeometry geometry, Length thickness) {
        Stretch.Arc arc = geometry.quarter(thickness.mm());
        working.step(
                Formulas.ALLOWANCE,
                Length.ofMm(arc.flatMm()),
                "θ",
                Angle.ofRadians(arc.turnRad()),
                "r",
                belt.barDiameter().times(0.5),
                "k",
                arc.k(),
                "t",
                thickness);
    }

    @Override
    public List<Formula> formulas() {
        return Stream.of(
                        Formulas.FOLDS,
                        TeardropWorking.FORMULAS,
                        List.of(HOLE_SIZE, FLAT_HOLE, CUT, FOLD_TO_TIP, StrapWidth.NET))
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<NoticeKind> notices() {
        return BeltChecks.KINDS;
    }

    @Override
    public List<String> phrases() {
        return Stream.of(List.of(SectionReader.THIS_TURN_BACK.key()), BeltSizePicture.PHRASES, BeltFlatView.PHRASES)
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.GEOMETRY,
                Origins.BELT_HABITS,
                Origins.HARDWARE_EASE,
                Origins.EDGE_HABIT,
                Origins.TIGHT_FOLD,
                Origins.LOAD_HABIT,
                Origins.NEUTRAL_HABIT,
                Origins.NEUTRAL_MEASURED);
    }
}
