package org.hidewright.straps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Teardrop;

/** What cannot be made of a belt, and what would go wrong with one although its lengths are right. */
record BeltChecks(BeltLayout.Belt belt, BeltGeometry geometry, BeltRow row) {
    private static final NoticeKind TURN_BACK_TOO_SHORT = NoticeKind.stop("belt-turn-back-too-short");
    private static final NoticeKind SIZE_TOO_SMALL = NoticeKind.stop("belt-size-too-small");
    private static final NoticeKind THICKER = NoticeKind.stop("belt-turn-back-thicker");
    private static final NoticeKind SLOT_RUNS_OUT = NoticeKind.stop("belt-slot-runs-out");
    private static final NoticeKind HOLES_MEET = NoticeKind.stop("belt-holes-meet");
    private static final NoticeKind WORN_HOLE_OUTSIDE = NoticeKind.check("belt-worn-hole-outside-row");
    private static final NoticeKind SIZES_OUTSIDE = NoticeKind.check("belt-sizes-outside-row");
    private static final NoticeKind EVEN_HOLES = NoticeKind.note("belt-no-middle-hole");
    private static final NoticeKind HOLE_IN_TURN_BACK = NoticeKind.check("belt-hole-in-turn-back");
    private static final NoticeKind HOLES_CLOSE = NoticeKind.check("belt-holes-close");
    private static final NoticeKind TIP_TOO_SHORT = NoticeKind.check("belt-tip-misses-keeper");
    private static final NoticeKind TIP_LONG = NoticeKind.note("belt-tip-hangs-out");
    private static final NoticeKind SHAPE_REACHES_HOLE = NoticeKind.check("belt-tip-shape-reaches-hole");
    private static final NoticeKind SLOT_SHORT = NoticeKind.check("belt-slot-short");
    static final List<NoticeKind> KINDS = Stream.concat(
                    HardwareFit.KINDS.stream(),
                    Stream.of(
                            BendAllowance.WEB_TOO_THICK,
                            BendAllowance.SKIVE_TOO_THICK,
                            SectionReader.CONTACT_TOO_NEAR,
                            TURN_BACK_TOO_SHORT,
                            StrapChecks.RAMP_TOO_LONG,
                            SIZE_TOO_SMALL,
                            THICKER,
                            SLOT_RUNS_OUT,
                            StrapWidth.HOLES_TOO_WIDE,
                            HOLES_MEET,
                            StrapChecks.CARRIES_LOAD,
                            StrapChecks.FOLD_TOO_TIGHT,
                            StrapChecks.THICKNESS_STEP,
                            WORN_HOLE_OUTSIDE,
                            SIZES_OUTSIDE,
                            EVEN_HOLES,
                            HOLE_IN_TURN_BACK,
                            StrapWidth.HOLES_NEAR_EDGE,
                            HOLES_CLOSE,
                            TIP_TOO_SHORT,
                            TIP_LONG,
                            SHAPE_REACHES_HOLE,
                            SLOT_SHORT,
                            LeatherLeft.SLOT_NEAR_EDGE,
                            LeatherLeft.SLOT_PAST_FOLD))
            .toList();

    private static final double TIP_BEYOND_KEEPER_MM = 150;
    private static final double SAME_MM = 1e-9;

    /** Why there can be no such belt; the first reason met. */
    Optional<Notice> stop() {
        return Stream.<Supplier<Optional<Notice>>>of(
                        this::thicknesses, this::legs, this::ramp, this::across, this::along)
                .flatMap(check -> check.get().stream())
                .findFirst();
    }

    private Optional<Notice> thicknesses() {
        double thickness = belt.thickness().mm();
        if (geometry.turnedBackThicknessMm() > thickness) {
            return Optional.of(
                    THICKER.at("turn-back-thickness", belt.turnBackThickness().orElseThrow(), belt.thickness()));
        }
        if (belt.preparation() instanceof Preparation.Grooved grooved
                && grooved.web().mm() > thickness) {
            return Optional.of(BendAllowance.WEB_TOO_THICK.at("preparation", grooved.web(), belt.thickness()));
        }
        return geometry.foldThicknessMm() > thickness
                ? Optional.of(BendAllowance.SKIVE_TOO_THICK.at(
                        "preparation", Length.ofMm(geometry.foldThicknessMm()), belt.thickness()))
                : Optional.empty();
    }

    private Optional<Notice> legs() {
        double k = geometry.rule().k();
        double bar = belt.barDiameter().mm();
        double contact = belt.contact().mm();
        if (!geometry.parallel()
                && (!Teardrop.fits(bar, contact, geometry.foldThicknessMm(), k)
                        || !Teardrop.fits(bar, contact, geometry.foldBeforeMm(), k))) {
            return Optional.of(SectionReader.CONTACT_TOO_NEAR.at(
                    "contact",
                    SectionReader.THIS_TURN_BACK,
                    belt.contact(),
                    Length.ofMm(bar / 2 + k * geometry.foldThicknessMm())));
        }
        return geometry.tailMm() <= 0
                ? Optional.of(TURN_BACK_TOO_SHORT.at(
                        "turn-back-length",
                        belt.turnBackLength(),
                        belt.contact(),
                        BeltHabits.LEAST_TURN_BACK,
                        BeltHabits.MOST_TURN_BACK))
                : Optional.empty();
    }

    private Optional<Notice> ramp() {
        return belt.preparation() instanceof Preparation.Skived skived
                        && geometry.foldBeforeMm() < geometry.turnedBackThicknessMm()
                        && skived.ramp().mm() > geometry.tailMm() + SAME_MM
                ? Optional.of(StrapChecks.RAMP_TOO_LONG.at(
                        "preparation", skived.ramp(), SectionReader.THIS_TURN_BACK, Length.ofMm(geometry.tailMm())))
                : Optional.empty();
    }

    private Optional<Notice> across() {
        if (belt.holeDiameter().mm() >= belt.width().mm()) {
            return Optional.of(StrapWidth.HOLES_TOO_WIDE.at("hole-diameter", belt.holeDiameter(), belt.width()));
        }
        return belt.slotWidth().mm() >= belt.width().mm()
                ? Optional.of(StrapWidth.HOLES_TOO_WIDE.at("slot-width", belt.slotWidth(), belt.width()))
                : Optional.empty();
    }

    private PlacedPiece turn() {
        return geometry.folded(belt.contact().mm() + 1)
                .piece(BeltGeometry.BUCKLE)
                .orElseThrow();
    }

    /** The slot has to end in the turn-back, the first hole to begin beyond the turn and the slot. */
    private Optional<Notice> along() {
        FoldedStrap strap = geometry.folded(belt.contact().mm() + 1);
        PlacedPiece turn = strap.piece(BeltGeometry.BUCKLE).orElseThrow();
        double middle = BeltGeometry.middleMm(turn);
        double halfSlot = belt.slotLength().mm() / 2;
        if (halfSlot >= middle) {
            return Optional.of(SLOT_RUNS_OUT.at("slot-length", belt.slotLength(), Length.ofMm(2 * middle)));
        }
        if (belt.holes() > 1 && belt.spacing().mm() <= belt.holeDiameter().mm()) {
            return Optional.of(HOLES_MEET.at("spacing", belt.spacing(), belt.holeDiameter(), BeltHabits.SPACING));
        }
        double clear = Math.max(turn.flatEnd(), middle + halfSlot)
                + belt.holeDiameter().mm() / 2;
        double first = geometry.fromBarMm(row.smallestMm());
        return geometry.flatMm(strap, first) <= clear
                ? Optional.of(SIZE_TOO_SMALL.at(
                        "size",
                        Length.ofMm(row.smallestMm()),
                        Length.ofMm(first),
                        Length.ofMm(clear - turn.flatEnd()).plus(belt.contact())))
                : Optional.empty();
    }

    /** What is to be mended or known although the belt can be made. */
    List<Notice> all() {
        List<Notice> notices = new ArrayList<>();
        if (belt.carriesLoad()) {
            notices.add(StrapChecks.CARRIES_LOAD.at("carries-load"));
        }
        HardwareFit.check(belt.width(), belt.buckleInsideWidth()).ifPresent(notices::add);
        if (geometry.rule().tight(Face.GRAIN, belt.barDiameter().mm() / 2, geometry.foldThicknessMm())) {
            notices.add(StrapChecks.FOLD_TOO_TIGHT.at(
                    "bar-diameter",
                    SectionReader.THIS_TURN_BACK,
                    belt.barDiameter().times(0.5),
                    Length.ofMm(geometry.foldThicknessMm())));
        }
        StrapChecks.steps(
                        geometry.skives(geometry.folded(belt.contact().mm() + 1)),
                        step -> belt.turnBackThickness().isPresent() ? "turn-back-thickness" : "preparation",
                        step -> SectionReader.THIS_TURN_BACK)
                .forEach(notices::add);
        row(notices);
        leatherLeft(notices);
        LeatherLeft.besideSlot("slot-width", belt.slotWidth(), belt.width(), belt.carriesLoad())
                .ifPresent(notices::add);
        PlacedPiece turn = turn();
        LeatherLeft.pastFold("slot-length", turn, BeltGeometry.middleMm(turn), belt.slotLength())
                .ifPresent(notices::add);
        belt.keeperFromBar().ifPresent(keeper -> keeper(notices, keeper));
        Length slot = leastSlot();
        if (belt.slotLength().mm() < slot.mm() - SAME_MM) {
            notices.add(SLOT_SHORT.at("slot-length", belt.slotLength(), slot));
        }
        return notices;
    }

    /** The prong’s base, at least as long as the bar is thick, and the thickness at either end (common practice). */
    private Length leastSlot() {
        return belt.prongBase().orElse(belt.barDiameter()).plus(Length.ofMm(2 * geometry.foldThicknessMm()));
    }

    private void row(List<Notice> notices) {
        Length smallest = Length.ofMm(row.smallestMm());
        Length largest = Length.ofMm(row.largestMm());
        if (!row.holdsWorn()) {
            notices.add(WORN_HOLE_OUTSIDE.at("worn-hole", row.worn(), row.count(), largest, belt.size()));
        } else if (belt.wornHole().isEmpty() && row.count() % 2 == 0) {
            notices.add(EVEN_HOLES.at("holes", row.count(), row.worn()));
        }
        belt.shortestSize()
                .filter(size -> size.mm() < smallest.mm() - SAME_MM)
                .ifPresent(size -> notices.add(SIZES_OUTSIDE.at("shortest-size", smallest, largest, size)));
        belt.longestSize()
                .filter(size -> size.mm() > largest.mm() + SAME_MM)
                .ifPresent(size -> notices.add(SIZES_OUTSIDE.at("longest-size", smallest, largest, size)));
        Length first = Length.ofMm(geometry.fromBarMm(row.smallestMm()));
        if (first.mm() - belt.holeDiameter().mm() / 2 < belt.turnBackLength().mm() - SAME_MM) {
            notices.add(HOLE_IN_TURN_BACK.at("turn-back-length", first, belt.turnBackLength()));
        }
    }

    /** At least two diameters of leather from a hole’s centre to the edges and to the next hole (common practice). */
    private void leatherLeft(List<Notice> notices) {
        Length least = belt.holeDiameter().times(StrapWidth.EDGE_DIAMETERS);
        Length toEdge = belt.width().times(0.5);
        if (toEdge.mm() < least.mm() - SAME_MM) {
            notices.add(StrapWidth.HOLES_NEAR_EDGE.at("hole-diameter", toEdge, least));
        }
        if (belt.holes() > 1 && belt.spacing().mm() < least.mm() - SAME_MM) {
            notices.add(HOLES_CLOSE.at("spacing", belt.spacing(), least));
        }
        if (belt.tipLength().mm() + belt.holeDiameter().mm() / 2
                > belt.tipBeyond().mm()) {
            notices.add(SHAPE_REACHES_HOLE.at("tip-length", belt.tipLength(), belt.tipBeyond()));
        }
    }

    /**
     * How far the tip reaches past the bar. Wherever the size is measured from, the pull of a closed belt holds the worn
     * hole where the prong rests, at the outer end of the frame; from there the tip has to pass the bar first.
     */
    private void keeper(List<Notice> notices, Length keeper) {
        double reach = belt.tipBeyond().mm()
                + Math.max(0, row.count() - row.worn()) * row.spacingMm()
                - belt.frameLength().mm();
        double past = keeper.mm() + belt.keeperWidth().mm() / 2;
        if (reach <= past) {
            notices.add(TIP_TOO_SHORT.at("tip-beyond", Length.ofMm(Math.max(0, reach)), Length.ofMm(past)));
        } else if (reach > past + TIP_BEYOND_KEEPER_MM) {
            notices.add(TIP_LONG.at("tip-beyond", Length.ofMm(reach - past)));
        }
    }
}
