package org.hidewright.straps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.FeaturePlaces.Pierced;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;

/**
 * How much leather slots leave beside them and holes between them. What keeps a hole from tearing out, two diameters from its
 * centre (common practice), is asked of a slot by its width as well; no rule for slots of its own was found.
 */
final class LeatherLeft {
    static final NoticeKind SLOT_BREAKS_OUT = NoticeKind.check("slot-breaks-out");
    static final NoticeKind SLOT_NEAR_EDGE = NoticeKind.check("slot-near-edge");
    static final NoticeKind SLOT_PAST_FOLD = NoticeKind.check("slot-past-fold");
    static final NoticeKind HOLES_NEAR_EACH_OTHER = NoticeKind.check("holes-near-each-other");
    static final List<NoticeKind> KINDS =
            List.of(SLOT_BREAKS_OUT, SLOT_NEAR_EDGE, SLOT_PAST_FOLD, HOLES_NEAR_EACH_OTHER);

    /** From the middle of a hole or slot to an edge of a strap that carries, at the least (common practice). */
    static final Length LOADED_EDGE = Length.ofMm(6);

    private static final double SAME_MM = 1e-9;

    private final StrapLayout.Strap asked;
    private final FoldedStrap strap;

    LeatherLeft(StrapLayout.Strap asked, FoldedStrap strap) {
        this.asked = asked;
        this.strap = strap;
    }

    /** From the middle to the edge, at the least. */
    static Length leastToEdge(Length across, boolean carriesLoad) {
        Length least = across.times(StrapWidth.EDGE_DIAMETERS);
        return carriesLoad && least.compareTo(LOADED_EDGE) < 0 ? LOADED_EDGE : least;
    }

    /** A slot on the middle of a strap of some width. */
    static Optional<Notice> besideSlot(String place, Length slotWidth, Length strapWidth, boolean carriesLoad) {
        Length least = leastToEdge(slotWidth, carriesLoad);
        Length toEdge = strapWidth.times(0.5);
        return toEdge.mm() < least.mm() - SAME_MM
                ? Optional.of(SLOT_NEAR_EDGE.at(
                        place, slotWidth, strapWidth.minus(slotWidth).times(0.5), toEdge, least, LOADED_EDGE))
                : Optional.empty();
    }

    /** A slot in a fold that reaches, along the flat strap, out of it on either side. */
    static Optional<Notice> pastFold(String place, PlacedPiece fold, double middleMm, Length slotLength) {
        double half = slotLength.mm() / 2;
        boolean past = middleMm - half < fold.flatStart() - SAME_MM || middleMm + half > fold.flatEnd() + SAME_MM;
        return past
                ? Optional.of(SLOT_PAST_FOLD.at(place, slotLength, Length.ofMm(fold.flatLength())))
                : Optional.empty();
    }

    List<Notice> all(List<Pierced> pierced) {
        List<Notice> notices = new ArrayList<>();
        pierced.forEach(place -> {
            if (place.feature() instanceof Feature.Slot slot) {
                slot(notices, place, slot);
            }
        });
        nearEachOther(notices, pierced);
        return notices;
    }

    private void slot(List<Notice> notices, Pierced place, Feature.Slot slot) {
        String at = FeaturePlaces.place(slot);
        double flat = place.flatMm();
        double half = slot.slotLength().mm() / 2;
        boolean out = flat < half
                || flat > strap.flatLength() - half
                || slot.slotWidth().compareTo(asked.width()) >= 0;
        if (out) {
            notices.add(SLOT_BREAKS_OUT.at(at, place.rowId()));
        } else {
            besideSlot(at, slot.slotWidth(), asked.width(), asked.carriesLoad()).ifPresent(notices::add);
        }
        if (!place.piece().straight()) {
            pastFold(at, place.piece(), flat, slot.slotLength()).ifPresent(notices::add);
        }
    }

    /** Holes in the order of the flat strap, each with the next. */
    private static void nearEachOther(List<Notice> notices, List<Pierced> pierced) {
        List<Pierced> holes = pierced.stream()
                .filter(place -> place.feature() instanceof Feature.Hole)
                .sorted(Comparator.comparingDouble(Pierced::flatMm))
                .toList();
        for (int i = 1; i < holes.size(); i++) {
            Pierced one = holes.get(i - 1);
            Pierced next = holes.get(i);
            double apart = next.flatMm() - one.flatMm();
            double least = StrapWidth.EDGE_DIAMETERS * Math.max(diameterMm(one), diameterMm(next));
            if (apart < least - SAME_MM) {
                notices.add(HOLES_NEAR_EACH_OTHER.at(
                        FeaturePlaces.place(next.feature()),
                        one.rowId(),
                        next.rowId(),
                        Length.ofMm(apart),
                        Length.ofMm(least)));
            }
        }
    }

    private static double diameterMm(Pierced place) {
        return ((Feature.Hole) place.feature()).diameter().mm();
    }
}
