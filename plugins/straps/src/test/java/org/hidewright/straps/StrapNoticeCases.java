package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.flatFold;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.overlap;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;

/** What straps of sections are caught at, each beside its mended neighbour. */
final class StrapNoticeCases {
    private final List<NoticeCase> cases = new ArrayList<>();

    private StrapNoticeCases() {
        sections();
        features();
        hardware();
    }

    static List<NoticeCase> all() {
        return new StrapNoticeCases().cases;
    }

    private void strapCase(String key, String place, StrapLayout.Strap raises, StrapLayout.Strap mended) {
        cases.add(new NoticeCase(key, place, Straps.work(raises), Straps.work(mended)));
    }

    static Section.Bend round(String id, String inner) {
        return bend(id, new Core.AroundBend(inner), 180, Face.GRAIN, DRY);
    }

    private static Section.Bend prepared(Preparation preparation) {
        return bend("fold", new Core.RoundBar(mm(6)), 180, Face.GRAIN, preparation);
    }

    static StrapLayout.Strap simple(Feature... features) {
        return strap(3, List.of(straight("leg", 100), roundBar("ring", 6), straight("tip", 50)), features);
    }

    private static Feature slot(double length, double width, String section, From from, double distance) {
        return new Feature.Slot("s", mm(length), mm(width), section, from, mm(distance), Optional.empty());
    }

    private static Section.TurnBack legs(Optional<Length> before, Optional<Length> after) {
        return new Section.TurnBack(
                "fold", mm(6), mm(12), Face.GRAIN, DRY, Optional.empty(), before, after, Optional.empty());
    }

    static StrapLayout.Strap fold(Section fold) {
        return strap(3, List.of(straight("leg", 100), fold, straight("tip", 50)));
    }

    static StrapLayout.Strap flat(Feature... features) {
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
        Preparation thick = new Preparation.Skived(mm(3.5), mm(5));
        Preparation thin = new Preparation.Skived(mm(3), mm(5));
        strapCase(
                "strap-thicker-than-strap",
                "sections[fold]",
                fold(turnBack("fold", 6, 12, Face.GRAIN, thick)),
                fold(turnBack("fold", 6, 12, Face.GRAIN, thin)));
        strapCase(
                "strap-thicker-than-strap",
                "sections[fold]",
                fold(legs(Optional.of(mm(3.5)), Optional.empty())),
                fold(legs(Optional.of(mm(3)), Optional.empty())));
        strapCase(
                "strap-thicker-than-strap",
                "sections[fold]",
                fold(legs(Optional.empty(), Optional.of(mm(3.5)))),
                fold(legs(Optional.empty(), Optional.of(mm(3)))));
        strapCase(
                "strap-thicker-than-strap",
                "sections[fold]",
                fold(prepared(new Preparation.Grooved(mm(3.5)))),
                fold(prepared(new Preparation.Grooved(mm(3)))));
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
        strapCase(
                "sections-through-each-other", // 2 mm of room between front and flap, half a millimetre pressed
                "sections[flap]",
                ThroughEachOtherTest.pouch(2.51),
                ThroughEachOtherTest.pouch(2.49));
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
        strapCase("strap-as-wide-as-hardware", "width", wide(20, 20, false), wide(20, 20.5, false));
        strapCase("strap-tight-in-hardware", "width", wide(20, 20.4, false), wide(20, 20.5, false));
        strapCase("strap-loose-in-hardware", "width", wide(20, 23.1, false), wide(20, 23, false));
    }
}
