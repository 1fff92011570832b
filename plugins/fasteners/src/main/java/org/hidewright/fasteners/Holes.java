package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** The holes of one fitting: how each is made, and how far it keeps from edges and from the next. */
final class Holes {
    static final Formula DRAWN = Formula.of("hole-drawn", "z = h - k", Origins.GEOMETRY);
    static final Formula EDGE = Formula.of("hole-edge", "e = max(m · h, D / 2, l)", Origins.EDGE_HABIT);
    static final Formula PITCH = Formula.of("hole-pitch", "p = max(3 · d, D)", Origins.RIVET_PITCH);
    static final List<Formula> FORMULAS = formulas();

    static final NoticeKind NO_PUNCH = NoticeKind.check("no-punch-fits");
    static final NoticeKind KERF_TOO_WIDE = NoticeKind.stop("kerf-too-wide");
    static final NoticeKind PUNCH_NUMBERS = NoticeKind.check("punch-numbers");
    static final List<NoticeKind> NOTICES = List.of(NO_PUNCH, KERF_TOO_WIDE, PUNCH_NUMBERS);

    private static final double PLAIN_DIAMETERS = 2;
    private static final double PULLED_DIAMETERS = 3;
    private static final double PULLED_LEAST_MM = 6;
    private static final double PITCH_DIAMETERS = 3;
    private static final int FEWEST_NUMBERS = 4;
    private static final int NUMBERS_FOR_A_GAP = 8;

    private final HoleMade made;
    private final boolean bearsLoad;
    private final Working working;
    private final List<Notice> notices;
    private final List<HoleRow> rows = new ArrayList<>();

    Holes(HoleMade made, Use use, Working working, List<Notice> notices) {
        this.made = made;
        this.bearsLoad = use.bearsLoad();
        this.working = working;
        this.notices = notices;
        if (lookLikeNumbers(punches())) {
            notices.add(PUNCH_NUMBERS.at("made"));
        }
    }

    private static List<Formula> formulas() {
        List<Formula> all = new ArrayList<>(ShankHole.FORMULAS);
        all.addAll(List.of(DRAWN, EDGE, PITCH));
        return List.copyOf(all);
    }

    List<Length> punches() {
        return made instanceof HoleMade.Punched punched ? punched.punches().orElse(List.of()) : List.of();
    }

    List<HoleRow> rows() {
        return List.copyOf(rows);
    }

    /**
     * Punches of 1, 2, 3, 4 … mm in a row are more likely the numbers stamped on them than what they cut. A full set has gaps: no
     * maker’s numbers run on for ever.
     */
    private static boolean lookLikeNumbers(List<Length> punches) {
        List<Length> sorted = punches.stream().sorted().distinct().toList();
        if (sorted.size() < FEWEST_NUMBERS
                || !sorted.stream().allMatch(punch -> Math.abs(punch.mm() - Math.rint(punch.mm())) < 1e-9)) {
            return false;
        }
        double missing = sorted.get(sorted.size() - 1).mm() - sorted.get(0).mm() + 1 - sorted.size();
        return Math.round(missing) <= sorted.size() / NUMBERS_FOR_A_GAP;
    }

    /**
     * Adds a hole.
     *
     * @param head what covers the hole: head, cap or flange
     * @return the notice that refuses, if the kerf is as wide as the hole
     */
    Optional<Notice> add(String id, ShankHole hole, Length head) {
        return add(id, hole, head, bearsLoad);
    }

    /** Adds a hole that a strap is held by whatever it bears. */
    Optional<Notice> addPulled(String id, ShankHole hole, Length head) {
        return add(id, hole, head, true);
    }

    private Optional<Notice> add(String id, ShankHole hole, Length head, boolean pulled) {
        hole.takeDown(working);
        Length cut = hole.wanted();
        if (made instanceof HoleMade.MachineCut machine) {
            if (machine.kerf().mm() >= hole.wanted().mm()) {
                return Optional.of(KERF_TOO_WIDE.at("made.machine-cut.kerf", machine.kerf(), hole.wanted()));
            }
            cut = hole.wanted().minus(machine.kerf());
            working.step(DRAWN, cut, "h", hole.wanted(), "k", machine.kerf());
        } else if (!punches().isEmpty()) {
            Optional<Length> punch = hole.nearest(punches());
            if (punch.isEmpty()) {
                notices.add(NO_PUNCH.at(
                        "made",
                        hole.shank(),
                        hole.least(),
                        hole.most(),
                        hole.nearestAtAll(punches()).orElseThrow()));
            }
            cut = punch.orElse(hole.wanted());
        }
        rows.add(new HoleRow(
                id, hole.wanted(), hole.least(), hole.most(), cut, fromEdge(hole, head, pulled), between(hole, head)));
        return Optional.empty();
    }

    private Length fromEdge(ShankHole hole, Length head, boolean pulled) {
        double diameters = pulled ? PULLED_DIAMETERS : PLAIN_DIAMETERS;
        Length least = Length.ofMm(pulled ? PULLED_LEAST_MM : 0);
        double edge = Math.max(Math.max(diameters * hole.wanted().mm(), head.mm() / 2), least.mm());
        Length fromEdge = Length.ofMm(edge);
        working.step(EDGE, fromEdge, "m", diameters, "h", hole.wanted(), "D", head, "l", least);
        return fromEdge;
    }

    private Length between(ShankHole hole, Length head) {
        Length between = Length.ofMm(Math.max(PITCH_DIAMETERS * hole.shank().mm(), head.mm()));
        working.step(PITCH, between, "d", hole.shank(), "D", head);
        return between;
    }
}
