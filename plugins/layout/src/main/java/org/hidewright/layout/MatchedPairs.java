package org.hidewright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.layout.CuttingLayout.Cut;
import org.hidewright.layout.CuttingLayout.PairLaid;
import org.hidewright.layout.CuttingLayout.PartRule;
import org.hidewright.layout.CuttingLayout.Placed;

/**
 * Pieces that are seen together on one item: they should come from places beside each other, or mirrored about the backbone, where leather
 * is most alike. Which pieces become one item is free as long as they are cut alike, so of all pieces those nearest to each other are
 * numbered alike.
 */
final class MatchedPairs {
    /** On two sheets nothing matches; farther than any sheet is long. */
    private static final double NOT_TOGETHER = 1e9;

    /** Less is not worth another number. */
    private static final double LEAST_GAIN_MM = 0.01;

    /** Pieces of one item, by their ids. */
    private record Pair(String one, String other) {}

    private final List<Pair> pairs = new ArrayList<>();
    private final Map<String, CutPiece> pieces = new HashMap<>();
    private final Map<String, CutSheet> sheets = new HashMap<>();

    private MatchedPairs(List<CutPiece> pieces, List<CutSheet> sheets) {
        pieces.forEach(piece -> this.pieces.put(piece.id(), piece));
        sheets.forEach(sheet -> this.sheets.put(sheet.id(), sheet));
    }

    /** The pairs that rules ask for; what cannot be paired is told. */
    static MatchedPairs of(Cut cut, List<CutPiece> pieces, List<CutSheet> sheets, List<Notice> notices) {
        MatchedPairs matched = new MatchedPairs(pieces, sheets);
        Map<String, List<CutPiece>> byPart = new LinkedHashMap<>();
        pieces.forEach(piece -> byPart.computeIfAbsent(piece.part().id(), part -> new ArrayList<>())
                .add(piece));
        for (PartRule rule : cut.rules().orElse(List.of())) {
            if (rule.matches().isPresent() && byPart.containsKey(rule.id())) {
                matched.add(rule, byPart, notices);
            }
        }
        return matched;
    }

    private void add(PartRule rule, Map<String, List<CutPiece>> byPart, List<Notice> notices) {
        String other = rule.matches().orElseThrow().strip();
        List<CutPiece> ones = byPart.get(rule.id());
        List<CutPiece> others = byPart.getOrDefault(other, List.of());
        String place = "rules[" + rule.id() + "].matches";
        if (others.isEmpty()) {
            notices.add(LayoutNotices.NO_SUCH_PART.at(place, other, String.join(", ", byPart.keySet())));
        } else if (ones == others && ones.get(0).part().pieces() == 2) {
            IntStream.range(0, ones.size() / 2)
                    .forEach(pair -> pairs.add(new Pair(
                            ones.get(2 * pair).id(), ones.get(2 * pair + 1).id())));
        } else if (ones != others && ones.size() == others.size()) {
            IntStream.range(0, ones.size())
                    .forEach(pair -> pairs.add(
                            new Pair(ones.get(pair).id(), others.get(pair).id())));
        } else {
            notices.add(LayoutNotices.NO_PAIRS.at(place, rule.id(), other, each(ones), each(others)));
        }
    }

    private static int each(List<CutPiece> pieces) {
        Part part = pieces.get(0).part();
        return part.pieces();
    }

    /** How far two pieces lie from places that match. */
    private record Apart(double mm, boolean mirrored) {}

    private Apart apart(Placed one, Placed other) {
        if (!one.sheet().equals(other.sheet())) {
            return new Apart(NOT_TOGETHER, false);
        }
        Point from = Point.of(one.x().mm(), one.y().mm());
        Point to = Point.of(other.x().mm(), other.y().mm());
        CutSheet sheet = sheets.get(one.sheet());
        double beside = from.distanceTo(to);
        double mirrored = sheet.frame().mirrored(from, sheet.outline().bounds()).distanceTo(to);
        return mirrored < beside ? new Apart(mirrored, true) : new Apart(beside, false);
    }

    /** The same places with the pieces numbered so that pairs lie near to each other; what is held keeps its number. */
    List<Placed> numbered(List<Placed> layout) {
        Map<String, Placed> byId = new LinkedHashMap<>();
        layout.forEach(placed -> byId.put(placed.id(), placed));
        Map<List<Object>, List<Pair>> alike = new LinkedHashMap<>();
        for (Pair pair : pairs) {
            Placed one = byId.get(pair.one());
            Placed other = byId.get(pair.other());
            if (one != null && other != null && !one.held() && !other.held()) {
                // pieces cut from the same form the same way up can stand for each other
                alike.computeIfAbsent(
                                List.of(
                                        pieces.get(pair.one()).exact().outline(),
                                        pieces.get(pair.other()).exact().outline()),
                                form -> new ArrayList<>())
                        .add(pair);
            }
        }
        alike.values().forEach(group -> nearest(group, byId));
        return List.copyOf(byId.values());
    }

    /** Gives each first piece the nearest second that is left, the nearest of all first. */
    private void nearest(List<Pair> group, Map<String, Placed> byId) {
        record Meeting(Pair one, Pair other, double mm) {}
        List<Meeting> meetings = new ArrayList<>();
        for (Pair one : group) {
            for (Pair other : group) {
                meetings.add(new Meeting(
                        one,
                        other,
                        apart(byId.get(one.one()), byId.get(other.other())).mm()));
            }
        }
        meetings.sort(Comparator.comparingDouble(Meeting::mm));
        Set<Pair> taken = new HashSet<>();
        Map<Pair, Placed> second = new LinkedHashMap<>();
        for (Meeting meeting : meetings) {
            if (!second.containsKey(meeting.one()) && taken.add(meeting.other())) {
                second.put(meeting.one(), byId.get(meeting.other().other()));
            }
        }
        exchange(group, second, byId);
        second.forEach((pair, placed) -> byId.put(
                pair.other(),
                new Placed(pair.other(), placed.sheet(), placed.x(), placed.y(), placed.turned(), false)));
    }

    /** As long as two pairs lie nearer to each other when they exchange their seconds, they do. */
    private void exchange(List<Pair> group, Map<Pair, Placed> second, Map<String, Placed> byId) {
        boolean gained = true;
        while (gained) {
            gained = false;
            for (Pair one : group) {
                for (Pair other : group) {
                    Placed first = byId.get(one.one());
                    Placed last = byId.get(other.one());
                    Placed own = second.get(one);
                    Placed its = second.get(other);
                    double gain = apart(first, own).mm()
                            + apart(last, its).mm()
                            - apart(first, its).mm()
                            - apart(last, own).mm();
                    if (gain > LEAST_GAIN_MM) {
                        second.put(one, its);
                        second.put(other, own);
                        gained = true;
                    }
                }
            }
        }
    }

    /** How far the pieces of each pair lie apart; pairs of which one has no place are left out. */
    List<PairLaid> laid(List<Placed> layout) {
        Map<String, Placed> byId = new HashMap<>();
        layout.forEach(placed -> byId.put(placed.id(), placed));
        List<PairLaid> laid = new ArrayList<>();
        for (Pair pair : pairs) {
            Placed one = byId.get(pair.one());
            Placed other = byId.get(pair.other());
            if (one != null && other != null) {
                Apart apart = apart(one, other);
                laid.add(new PairLaid(
                        pair.one(),
                        pair.other(),
                        apart.mm() < NOT_TOGETHER ? Optional.of(Length.ofMm(apart.mm())) : Optional.empty(),
                        apart.mirrored()));
            }
        }
        return laid;
    }
}
