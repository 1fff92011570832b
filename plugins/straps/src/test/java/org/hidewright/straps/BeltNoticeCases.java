package org.hidewright.straps;

import static org.hidewright.straps.Straps.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;

/** What belts are caught at, each beside its mended neighbour. */
final class BeltNoticeCases {
    private final List<NoticeCase> cases = new ArrayList<>();

    private BeltNoticeCases() {
        belts();
    }

    static List<NoticeCase> all() {
        return new BeltNoticeCases().cases;
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
        cases.add(new NoticeCase(key, null, worked(one), worked(other)));
    }

    private static Outcome<?> worked(Belts belt) {
        return new BeltLayout().calculate(belt.build(), Working.NONE);
    }
}
