package org.hidewright.straps;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.FeaturePlaces.Pierced;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stack;
import org.hidewright.straps.geometry.Stretch;

/** What would go wrong with a strap at the bench although its lengths are right. */
final class StrapChecks {
    static final NoticeKind FOLD_TOO_TIGHT = NoticeKind.check("fold-too-tight");
    static final NoticeKind GROOVE_IN_GRAIN = NoticeKind.check("groove-in-grain");
    static final NoticeKind HOLE_IN_FOLD = NoticeKind.check("hole-in-fold");
    static final NoticeKind HOLE_NEAR_FOLD = NoticeKind.check("hole-near-fold");
    static final NoticeKind HOLE_BREAKS_OUT = NoticeKind.check("hole-breaks-out");
    static final NoticeKind HOLE_NEAR_EDGE = NoticeKind.check("hole-near-edge");
    static final NoticeKind PUNCHED_FLAT = NoticeKind.check("folded-place-punched-flat");
    static final NoticeKind LAYER_NOT_PIERCED = NoticeKind.note("layer-not-pierced");
    static final NoticeKind OVERLAP_APART = NoticeKind.check("overlap-apart");
    static final NoticeKind OVERLAP_BESIDE = NoticeKind.check("overlap-beside");
    static final NoticeKind LAYERS_IN_EACH_OTHER = NoticeKind.check("layers-in-each-other");
    static final NoticeKind THICKNESS_STEP = NoticeKind.check("thickness-step");
    static final NoticeKind NESTED_APART = NoticeKind.check("nested-bend-apart");
    static final NoticeKind FLESH_SHOWS = NoticeKind.note("flesh-shows");
    static final NoticeKind CARRIES_LOAD = NoticeKind.caution("strap-carries-load");
    static final NoticeKind RAMP_TOO_LONG = NoticeKind.stop("ramp-too-long");
    static final List<NoticeKind> KINDS = List.of(
            FOLD_TOO_TIGHT,
            GROOVE_IN_GRAIN,
            HOLE_IN_FOLD,
            HOLE_NEAR_FOLD,
            HOLE_BREAKS_OUT,
            HOLE_NEAR_EDGE,
            PUNCHED_FLAT,
            LAYER_NOT_PIERCED,
            OVERLAP_APART,
            OVERLAP_BESIDE,
            LAYERS_IN_EACH_OTHER,
            ThroughEachOther.THROUGH_EACH_OTHER,
            THICKNESS_STEP,
            NESTED_APART,
            FLESH_SHOWS,
            CARRIES_LOAD);

    /** Two holes this near lie on one another for any fitting. */
    private static final double MEETS_MM = 0.1;

    /** A step no deeper than this is one that no gauge finds and no hand feels. */
    static final double STEP_MM = 0.1;

    private final StrapLayout.Strap asked;
    private final List<ReadSection> sections;
    private final FoldedStrap strap;
    private final Stack stack;
    private final List<Notice> notices = new ArrayList<>();
    /** The sections of which it is told in words of their own that they have no room beside each other. */
    private final Set<Set<String>> withoutRoom = new HashSet<>();

    StrapChecks(StrapLayout.Strap asked, List<ReadSection> sections, FoldedStrap strap, Stack stack) {
        this.asked = asked;
        this.sections = sections;
        this.strap = strap;
        this.stack = stack;
    }

    List<Notice> all(List<Pierced> pierced, Skives skives) {
        if (asked.carriesLoad()) {
            notices.add(CARRIES_LOAD.at("carries-load"));
        }
        HardwareFit.check(asked.width(), asked.hardwareInsideWidth()).ifPresent(notices::add);
        sections.forEach(this::fold);
        sections.forEach(this::overlap);
        sections.forEach(this::nested);
        layersInEachOther();
        notices.addAll(new ThroughEachOther(strap)
                .notices((one, other) -> withoutRoom.contains(Set.of(one.id(), other.id()))));
        steps(skives, step -> "sections[" + step.sectionId() + "]", Skives.Sharp::sectionId)
                .forEach(notices::add);
        pierced.stream()
                .filter(place -> place.feature() instanceof Feature.Hole)
                .forEach(this::hole);
        notices.addAll(new LeatherLeft(asked, strap).all(pierced));
        holesThatMiss(pierced.stream()
                .filter(place -> place.feature() instanceof Feature.Hole)
                .toList());
        fleshShows();
        return notices;
    }

    /** Thickness that jumps; named after the section, or after what stands for it. */
    static Stream<Notice> steps(
            Skives skives, Function<Skives.Sharp, String> place, Function<Skives.Sharp, Object> name) {
        return skives.steps().stream()
                .filter(step -> step.thickerMm() - step.thinnerMm() > STEP_MM)
                .map(step -> THICKNESS_STEP.at(
                        place.apply(step),
                        name.apply(step),
                        Length.ofMm(step.thinnerMm()),
                        Length.ofMm(step.thickerMm()),
                        Length.ofMm(Skives.RAMP_TO_RISE * (step.thickerMm() - step.thinnerMm()))));
    }

    /** A ramp that finds no room in the section it runs into. */
    static Optional<Notice> rampWithoutRoom(FoldedStrap strap, Skives skives) {
        for (PlacedPiece piece : strap.pieces()) {
            double ramps = skives.rampsInto(piece.id());
            double room = piece.straight() ? piece.flatLength() : 0;
            if (ramps > room + 1e-9) {
                return Optional.of(RAMP_TOO_LONG.at(
                        "sections[" + piece.id() + "]", Length.ofMm(ramps), piece.id(), Length.ofMm(room)));
            }
        }
        return Optional.empty();
    }

    private void fold(ReadSection section) {
        section.fold().ifPresent(fold -> {
            if (fold.rule().tight(fold.outside(), fold.insideRadiusMm(), fold.thicknessMm())) {
                notices.add(FOLD_TOO_TIGHT.at(
                        StrapLayout.place(section.asked()),
                        section.id(),
                        Length.ofMm(fold.insideRadiusMm()),
                        Length.ofMm(fold.thicknessMm())));
            }
            if (fold.rule().webMm() > 0 && fold.outside() == Face.FLESH) {
                notices.add(GROOVE_IN_GRAIN.at(StrapLayout.place(section.asked()), section.id()));
            }
        });
    }

    private PlacedPiece placed(String id) {
        return strap.piece(id).orElseThrow();
    }

    private void overlap(ReadSection section) {
        if (!(section.asked() instanceof Section.Overlap overlap)) {
            return;
        }
        PlacedPiece upper = placed(overlap.id());
        PlacedPiece under = placed(overlap.on());
        OptionalDouble gap = Stack.gapMm(under, upper);
        boolean lies = gap.isPresent()
                && Math.abs(gap.getAsDouble()) <= asked.glueGap().mm() + Stack.PRESSED_MM;
        if (!lies && !ThroughEachOther.go(under, upper)) {
            notices.add(OVERLAP_APART.at(
                    StrapLayout.place(overlap),
                    overlap.id(),
                    overlap.on(),
                    Length.ofMm(Math.abs(gap.orElse(under.start().distanceTo(upper.start()))))));
        }
        double one = under.start().along(upper.start());
        double other = under.start().along(upper.end());
        double beyond = Math.max(-Math.min(one, other), Math.max(one, other) - under.outsideLength());
        if (beyond > Stack.PRESSED_MM) {
            notices.add(OVERLAP_BESIDE.at(StrapLayout.place(overlap), overlap.id(), overlap.on(), Length.ofMm(beyond)));
        }
    }

    /** A bend that goes round another must have its centre where the other has it. */
    private void nested(ReadSection section) {
        if (!(section.asked() instanceof Section.Bend bend) || !(bend.core() instanceof Core.AroundBend around)) {
            return;
        }
        var outer = placed(bend.id()).stretches().get(0);
        var outerArc = (Stretch.Arc) outer.stretch();
        double apart = placed(around.bend()).stretches().stream()
                .filter(inner -> inner.stretch() instanceof Stretch.Arc)
                .mapToDouble(inner -> ((Stretch.Arc) inner.stretch())
                        .centre(inner.start())
                        .distanceTo(outerArc.centre(outer.start())))
                .min()
                .orElse(0);
        if (apart
                > Math.max(Stack.PRESSED_MM, outerArc.thicknessMm())
                        + asked.glueGap().mm()) {
            withoutRoom.add(Set.of(bend.id(), around.bend()));
            notices.add(NESTED_APART.at(StrapLayout.place(bend), bend.id(), around.bend(), Length.ofMm(apart)));
        }
    }

    /** How deep two legs of one fold would lie in each other: flesh to flesh, or with the flesh outside grain to grain. */
    private static double deepMm(PlacedPiece before, PlacedPiece after, Face outside) {
        double beside = before.start().beside(after.start());
        return outside == Face.GRAIN ? before.thickness() + after.thickness() + beside : -beside;
    }

    private static Length leastRamp(PlacedPiece before, PlacedPiece fold, PlacedPiece after) {
        double rise = Math.max(before.thickness() - fold.thickness(), after.thickness() - fold.thicknessAtEnd());
        return Length.ofMm(Skives.RAMP_TO_RISE * rise);
    }

    /** A thinned fold whose legs are left thick cannot close: the legs would have to lie in each other. */
    private void layersInEachOther() {
        for (int i = 0; i + 2 < sections.size(); i++) {
            PlacedPiece before = placed(sections.get(i).id());
            PlacedPiece after = placed(sections.get(i + 2).id());
            if (placed(sections.get(i + 1).id()).straight() || !before.straight() || !after.straight()) {
                continue;
            }
            boolean back = Math.cos(before.start().heading() - after.start().heading()) < 0;
            double deep = deepMm(
                    before, after, sections.get(i + 1).fold().orElseThrow().outside());
            if (back && Stack.gapMm(before, after).isPresent() && deep > Stack.PRESSED_MM) {
                withoutRoom.add(Set.of(before.id(), after.id()));
                notices.add(LAYERS_IN_EACH_OTHER.at(
                        "sections[" + sections.get(i + 1).id() + "]",
                        before.id(),
                        after.id(),
                        sections.get(i + 1).id(),
                        Length.ofMm(deep),
                        leastRamp(before, placed(sections.get(i + 1).id()), after)));
            }
        }
    }

    private void hole(Pierced place) {
        double radius = ((Feature.Hole) place.feature()).diameter().mm() / 2;
        String at = FeaturePlaces.place(place.feature());
        double flat = place.flatMm();
        if (flat < radius
                || flat > strap.flatLength() - radius
                || 2 * radius >= asked.width().mm()) {
            notices.add(HOLE_BREAKS_OUT.at(at, place.rowId(), Length.ofMm(2 * radius)));
        } else {
            nearEdge(place, radius, at);
        }
        if (!place.piece().straight()) {
            notices.add(HOLE_IN_FOLD.at(at, place.rowId(), place.piece().id()));
            return;
        }
        double least = place.piece().thickness();
        for (PlacedPiece bend : strap.pieces()) {
            double left = Math.max(bend.flatStart() - flat, flat - bend.flatEnd()) - radius;
            if (!bend.straight() && left < least - 1e-9) {
                notices.add(HOLE_NEAR_FOLD.at(
                        at, place.rowId(), bend.id(), Length.ofMm(least), Length.ofMm(Math.max(0, left))));
                return;
            }
        }
    }

    /** Holes stand on the middle of the strap; the nearest edge is a side or an end. */
    private void nearEdge(Pierced place, double radius, String at) {
        double flat = place.flatMm();
        double toEdge = Math.min(asked.width().mm() / 2, Math.min(flat, strap.flatLength() - flat));
        Length least = LeatherLeft.leastToEdge(Length.ofMm(2 * radius), asked.carriesLoad());
        if (toEdge < least.mm() - 1e-9) {
            notices.add(HOLE_NEAR_EDGE.at(at, place.rowId(), Length.ofMm(toEdge), least, LeatherLeft.LOADED_EDGE));
        }
    }

    private void holesThatMiss(List<Pierced> holes) {
        for (Pierced hole : holes) {
            if (!hole.piece().straight()) {
                continue;
            }
            for (Stack.Layer layer : stack.touching(hole.piece(), hole.alongMm())) {
                if (layer.piece() != hole.piece()) {
                    layerUnder(hole, layer, holes);
                }
            }
        }
    }

    private void layerUnder(Pierced hole, Stack.Layer layer, List<Pierced> holes) {
        boolean pierced = false;
        for (Pierced other : holes) {
            if (other.piece() != layer.piece()) {
                continue;
            }
            double miss = Math.abs(other.alongMm() - layer.alongMm());
            double reach = (diameter(hole) + diameter(other)) / 2;
            pierced |= miss < reach;
            boolean once = holes.indexOf(hole) < holes.indexOf(other);
            if (once && hole.feature() != other.feature() && miss > MEETS_MM && miss < reach) {
                notices.add(PUNCHED_FLAT.at(
                        FeaturePlaces.place(other.feature()), hole.rowId(), other.rowId(), Length.ofMm(miss)));
            }
        }
        if (!pierced && !hole.mate()) {
            notices.add(LAYER_NOT_PIERCED.at(
                    FeaturePlaces.place(hole.feature()),
                    hole.rowId(),
                    layer.piece().id()));
        }
    }

    private static double diameter(Pierced hole) {
        return ((Feature.Hole) hole.feature()).diameter().mm();
    }

    private void fleshShows() {
        boolean folded = sections.stream().anyMatch(section -> section.fold().isPresent());
        List<String> showing = sections.stream()
                .filter(section -> Showing.of(section, sections, strap, stack).flesh())
                .map(ReadSection::id)
                .toList();
        if (folded && !showing.isEmpty()) {
            notices.add(FLESH_SHOWS.with(String.join(", ", showing)));
        }
    }
}
