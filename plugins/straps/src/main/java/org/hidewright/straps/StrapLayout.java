package org.hidewright.straps;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.Pile;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.PlacedStretch;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stack;
import org.hidewright.straps.geometry.Stretch;
import org.osgi.service.component.annotations.Component;

/**
 * A strap of straight runs and bends: its length to cut, and every hole, row, fold line and skive mapped from its place
 * on the folded strap to its place on the flat one.
 */
@Calculates("strap")
@Component(service = Calculator.class)
public final class StrapLayout implements Calculator<StrapLayout.Strap, StrapLayout.Layout> {
    private static final Formula CUT_LENGTH = Formula.of("cut-length", "L = S + B", Origins.GEOMETRY);
    private static final Formula FOLDED_PLACE = Formula.of("folded-place", "s = a + x · L / q", Origins.GEOMETRY);
    private static final Formula STACK_THICKNESS =
            Formula.of("stack-thickness", "T = M + (n - 1) · g", Origins.GEOMETRY);

    /** What is asked. */
    public record Strap(
            @Asked(unit = "mm", min = "0.2 mm", max = "20 mm", usual = "1-5 mm", example = "3 mm")
            Length thickness,

            @Asked(unit = "mm", min = "1 mm", max = "1 m", usual = "8-60 mm", example = "20 mm")
            Length width,

            @Asked(
                    example = "[{\"id\":\"leg\",\"straight\":{\"length\":\"200 mm\"}},"
                            + "{\"id\":\"buckle\",\"bend\":{\"core\":{\"round-bar\":{\"diameter\":\"4 mm\"}},"
                            + "\"turn\":\"180 deg\"}},"
                            + "{\"id\":\"tip\",\"straight\":{\"length\":\"50 mm\"}}]")
            List<Section> sections,

            @Asked(
                    preset = "[]",
                    example = "[{\"id\":\"rivet\",\"hole\":{\"diameter\":\"4 mm\",\"section\":\"leg\",\"from\":\"end\","
                            + "\"distance\":\"15 mm\",\"also-through\":\"tip\"}}]")
            List<Feature> features,

            @Asked(unit = "mm", min = "0 mm", max = "3 mm", usual = "0-0.3 mm", preset = "0 mm")
            Length glueGap,

            @Asked(unit = "mm", min = "1 mm", max = "1 m", example = "20.5 mm")
            Optional<Length> hardwareInsideWidth,

            @Asked(min = "0", max = "1", usual = "0.3-0.7", example = "0.55")
            Optional<Double> measuredNeutralLine,

            @Asked(preset = "false") boolean carriesLoad) {}

    /** What is answered; places are millimetres from the start of the flat strap, which lies grain up. */
    public record Layout(
            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length", lead = true)
            Length cutLength,

            @Answered(unit = "mm", step = "0.1 mm", by = "stack-thickness")
            Length stackThickness,

            @Answered List<FlatSection> sections,
            @Answered List<FlatFeature> features,
            @Answered List<FoldZone> folds,
            @Answered List<SkiveZone> skives,
            @Answered List<FlatStitchRow> stitchRows,
            @Answered Drawing flatView,
            @Answered Drawing foldedView) {}

    /** A section on the flat strap. */
    public record FlatSection(
            @RowId String id,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length start,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length end,

            @Answered(unit = "mm", step = "0.1 mm", by = "bend-allowance")
            Length length,

            @Answered(unit = "mm", step = "0.1 mm", by = "plane-geometry")
            Length thickness,

            @Answered(unit = "deg", step = "0.1 deg", by = "plane-geometry")
            Optional<Angle> turn,

            @Answered(unit = "mm", step = "0.01 mm", by = "plane-geometry")
            Optional<Length> insideRadius,

            @Answered(step = "0.01", by = "neutral-line-habit")
            Optional<Double> neutralLine,

            @Answered(by = "plane-geometry") Showing shows) {}

    /** What a place on the flat strap is. */
    enum FlatKind {
        HOLE,
        SLOT,
        FOLD_LINE,
        MARK
    }

    /** A hole, slot or line on one layer of the flat strap. */
    public record FlatFeature(
            @RowId String id,
            @Answered(by = "plane-geometry") FlatKind what,
            @Answered(by = "plane-geometry") String section,
            @Answered(by = "plane-geometry") int layer,

            @Answered(unit = "mm", step = "0.1 mm", by = "folded-place")
            Length fromStart,

            @Answered(unit = "mm", step = "0.1 mm", by = "folded-place")
            Length fromOtherEnd,

            @Answered(by = "plane-geometry") Face markOn,

            @Answered(unit = "mm", step = "0.1 mm", by = "plane-geometry")
            Optional<Length> across,

            @Answered(unit = "mm", step = "0.1 mm", by = "plane-geometry")
            Optional<Length> lengthwise) {}

    /** Where a bend begins, has its middle and ends on the flat strap, what is done to it and how much leather is left. */
    public record FoldZone(
            @RowId String id,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length start,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length middle,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length end,

            @Answered(by = "plane-geometry") Prepared prepared,

            @Answered(unit = "mm", step = "0.1 mm", by = "plane-geometry")
            Length left,

            @Answered(by = "plane-geometry") Face markOn) {}

    /** A zone thinned from the flesh side. */
    public record SkiveZone(
            @RowId String id,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length rampStart,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length fullStart,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length fullEnd,

            @Answered(unit = "mm", step = "0.1 mm", by = "cut-length")
            Length rampEnd,

            @Answered(unit = "mm", step = "0.1 mm", by = "plane-geometry")
            Length thicknessLeft,

            @Answered(by = "plane-geometry") Face markOn) {}

    /** A stitch row on one layer of the flat strap. */
    public record FlatStitchRow(
            @RowId String id,
            @Answered(by = "plane-geometry") String section,
            @Answered(by = "plane-geometry") int layer,

            @Answered(unit = "mm", step = "0.1 mm", by = "folded-place")
            Length start,

            @Answered(unit = "mm", step = "0.1 mm", by = "folded-place")
            Length end,

            @Answered(unit = "mm", step = "0.1 mm", by = "folded-place")
            Length fromOtherEnd,

            @Answered(unit = "mm", step = "0.1 mm", by = "stitch-margin")
            Length margin,

            @Answered(by = "plane-geometry") Face markOn) {}

    @Override
    public Outcome<Layout> calculate(Strap asked, Working working) {
        SectionReader reader = new SectionReader(asked);
        List<ReadSection> sections = reader.read();
        List<Notice> stops = new ArrayList<>(reader.stops());
        if (stops.isEmpty()) {
            overlapsOnSections(asked, stops);
        }
        if (!stops.isEmpty()) {
            return Outcome.refuse(stops);
        }
        FoldedStrap strap =
                new FoldedStrap(sections.stream().map(ReadSection::piece).toList());
        Map<String, Double> ramps = new HashMap<>();
        sections.forEach(section -> ramps.put(section.id(), section.rampMm()));
        Skives skives = new Skives(strap, asked.thickness().mm(), piece -> ramps.get(piece.id()));
        StrapChecks.rampWithoutRoom(strap, skives).ifPresent(stops::add);
        FeaturePlaces places = new FeaturePlaces(strap, asked.features());
        stops.addAll(places.stops());
        if (!stops.isEmpty()) {
            return Outcome.refuse(stops);
        }
        Stack stack = new Stack(strap, asked.glueGap().mm());
        Fittings fittings = new Fittings(stack, places);
        new StrapWorking(working, asked, sections, strap).write(places.pierced(), fittings.thickest());
        StrapAnswers answers = new StrapAnswers(asked, sections, strap, skives, stack, places);
        List<Notice> notices =
                new ArrayList<>(new StrapChecks(asked, sections, strap, stack).all(places.pierced(), skives));
        fittings.layersApart().forEach(notices::add);
        return Outcome.of(answers.layout(), notices);
    }

    private static void overlapsOnSections(Strap asked, List<Notice> stops) {
        List<String> runs = asked.sections().stream()
                .filter(section -> section instanceof Section.Straight || section instanceof Section.Overlap)
                .map(Section::id)
                .toList();
        for (Section section : asked.sections()) {
            if (section instanceof Section.Overlap overlap) {
                List<String> others =
                        runs.stream().filter(id -> !id.equals(overlap.id())).toList();
                if (!others.contains(overlap.on())) {
                    stops.add(SectionReader.unknown(place(section), overlap.on(), others));
                }
            }
        }
    }

    static String place(Section section) {
        return "sections[" + section.id() + "]";
    }

    @Override
    public List<Formula> formulas() {
        return Stream.of(Formulas.FOLDS, TeardropWorking.FORMULAS, List.of(CUT_LENGTH, FOLDED_PLACE, STACK_THICKNESS))
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.of(
                        SectionReader.KINDS,
                        List.of(StrapChecks.RAMP_TOO_LONG),
                        FeaturePlaces.KINDS,
                        StrapChecks.KINDS,
                        LeatherLeft.KINDS,
                        List.of(Fittings.LAYERS_APART),
                        HardwareFit.KINDS)
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<String> phrases() {
        return Stream.concat(FoldedView.PHRASES.stream(), ThroughEachOther.PHRASES.stream())
                .toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.GEOMETRY,
                Origins.NEUTRAL_HABIT,
                Origins.NEUTRAL_MEASURED,
                Origins.TIGHT_FOLD,
                Origins.EDGE_HABIT,
                Origins.STITCH_MARGIN,
                Origins.HARDWARE_EASE,
                Origins.LOAD_HABIT);
    }

    /** Writes down how a strap was worked out. */
    private record StrapWorking(Working working, Strap asked, List<ReadSection> sections, FoldedStrap strap) {
        void write(List<FeaturePlaces.Pierced> pierced, Pile thickest) {
            sections.forEach(this::section);
            double bends = strap.pieces().stream()
                    .filter(piece -> !piece.straight())
                    .mapToDouble(PlacedPiece::flatLength)
                    .sum();
            working.step(
                    CUT_LENGTH,
                    Length.ofMm(strap.flatLength()),
                    "S",
                    Length.ofMm(strap.flatLength() - bends),
                    "B",
                    Length.ofMm(bends));
            pierced.forEach(this::place);
            working.step(
                    STACK_THICKNESS,
                    Length.ofMm(thickest.thicknessMm()),
                    "M",
                    Length.ofMm(thickest.leatherMm()),
                    "n",
                    thickest.layers(),
                    "g",
                    asked.glueGap());
            creditCutLength();
        }

        /** A folded strap is cut no better than its weakest neutral line: a habit before what was measured. */
        private void creditCutLength() {
            List<FoldRule> rules = sections.stream()
                    .flatMap(section -> section.fold().stream())
                    .map(ReadSection.Fold::rule)
                    .toList();
            if (!rules.isEmpty()) {
                boolean measured = rules.stream().allMatch(FoldRule::measured);
                working.source("cut-length", measured ? Origins.NEUTRAL_MEASURED : Origins.NEUTRAL_HABIT);
            }
        }

        private void section(ReadSection section) {
            section.fold().ifPresent(fold -> {
                fold.rule().explain(working, fold.thicknessMm());
                PlacedPiece piece = strap.piece(section.id()).orElseThrow();
                if (piece.piece() instanceof Piece.TurnBack turnBack) {
                    legs(turnBack);
                    return;
                }
                for (PlacedStretch placed : piece.stretches()) {
                    if (placed.stretch() instanceof Stretch.Arc arc) {
                        working.step(
                                Formulas.ALLOWANCE,
                                Length.ofMm(arc.flatMm()),
                                "θ",
                                Angle.ofRadians(arc.turnRad()),
                                "r",
                                Length.ofMm(arc.insideRadiusMm()),
                                "k",
                                arc.k(),
                                "t",
                                Length.ofMm(arc.thicknessMm()));
                    }
                }
            });
        }

        private void legs(Piece.TurnBack turnBack) {
            Length contact = Length.ofMm(turnBack.contactMm());
            TeardropWorking.write(working, turnBack.leg(turnBack.before()), contact, Length.ofMm(turnBack.before()));
            TeardropWorking.write(working, turnBack.leg(turnBack.after()), contact, Length.ofMm(turnBack.after()));
        }

        private void place(FeaturePlaces.Pierced place) {
            working.step(
                    FOLDED_PLACE,
                    Length.ofMm(place.flatMm()),
                    "a",
                    Length.ofMm(place.piece().flatStart()),
                    "x",
                    Length.ofMm(place.alongMm()),
                    "L",
                    Length.ofMm(place.piece().flatLength()),
                    "q",
                    Length.ofMm(place.piece().outsideLength()));
        }
    }
}
