package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** Stretches cut where they cross, and put together again end to start. */
final class Pieces {
    /** Ends that are to meet are looked for this far; crossings are found to a hundredth of it. */
    private static final double NEAR_MM = 2e-5;
    /** So far where nothing meets nearer: beside the tip of a bend, where lines cross too flat to be told apart. */
    private static final double FAR_MM = 1e-3;
    /** A ring of less area than its length times this is no room. */
    private static final double NO_WIDTH_MM = 1e-4;
    /** So much may be left over when rings are closed. */
    private static final double OVER_MM = 0.05;

    private Pieces() {}

    /** All stretches, cut wherever two of them meet. */
    static List<Stretch> cut(List<Stretch> stretches) {
        return cutEach(stretches).stream().flatMap(List::stream).toList();
    }

    /** For each stretch its pieces, cut wherever it meets another. */
    static List<List<Stretch>> cutEach(List<Stretch> stretches) {
        List<TreeSet<Double>> cuts = new ArrayList<>();
        stretches.forEach(stretch -> cuts.add(new TreeSet<>()));
        for (int other = 1; other < stretches.size(); other++) {
            for (int one = 0; one < other; one++) {
                for (Crossing crossing : Crossings.of(stretches.get(one), stretches.get(other))) {
                    cuts.get(one).add(crossing.first());
                    cuts.get(other).add(crossing.second());
                }
            }
        }
        List<List<Stretch>> pieces = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            pieces.add(cut(stretches.get(i), cuts.get(i)));
        }
        return pieces;
    }

    private static List<Stretch> cut(Stretch stretch, TreeSet<Double> cuts) {
        List<Stretch> pieces = new ArrayList<>();
        double from = 0;
        for (double at : cuts) {
            if (!Stretch.within(10 * Crossings.SAME_MM, stretch.at(from), stretch.at(at))
                    && !Stretch.within(10 * Crossings.SAME_MM, stretch.at(1), stretch.at(at))) {
                pieces.add(stretch.part(from, at));
                from = at;
            }
        }
        pieces.add(from == 0 ? stretch : stretch.part(from, 1));
        return pieces;
    }

    /**
     * Outlines made of pieces; pieces that lead nowhere fall away: slivers left at shallow crossings, whose ends meet
     * nothing.
     */
    static List<Curve> rings(List<Stretch> pieces) {
        List<Curve> near = rings(pieces, NEAR_MM);
        double linked = near.stream().mapToDouble(Curve::length).sum();
        return lengthOf(pieces) - linked < OVER_MM ? near : rings(pieces, FAR_MM);
    }

    private static List<Curve> rings(List<Stretch> pieces, double reach) {
        List<Stretch> left = new ArrayList<>(pieces);
        while (left.removeIf(piece -> isLoose(piece, left, reach))) {
            // what hung on a piece that has gone may be loose now
        }
        List<Curve> rings = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Stretch> chain = new ArrayList<>(List.of(left.remove(0)));
            if (grow(chain, left, reach)) {
                rings.add(Curve.ofStretches(welded(chain, true), true));
            }
        }
        rings.removeIf(ring -> Math.abs(ring.area()) < NO_WIDTH_MM * ring.length());
        return rings;
    }

    private static boolean isLoose(Stretch piece, List<Stretch> pieces, double reach) {
        return pieces.stream().noneMatch(next -> Stretch.within(reach, next.start(), piece.end()))
                || pieces.stream().noneMatch(before -> Stretch.within(reach, before.end(), piece.start()));
    }

    /** Lines with two ends made of pieces, each as long as can be. */
    static List<Curve> lines(List<Stretch> pieces) {
        List<Stretch> left = new ArrayList<>(pieces);
        List<Curve> lines = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Stretch> chain = new ArrayList<>(List.of(left.remove(0)));
            boolean closed = grow(chain, left, NEAR_MM);
            if (lengthOf(chain) > OVER_MM) {
                lines.add(Curve.ofStretches(welded(chain, closed), closed));
            }
        }
        return lines;
    }

    /** Adds what follows until nothing does, or the chain has come back to its start. */
    private static boolean grow(List<Stretch> chain, List<Stretch> left, double reach) {
        while (true) {
            Stretch last = chain.get(chain.size() - 1);
            if (Stretch.within(reach, last.end(), chain.get(0).start()) && lengthOf(chain) > 10 * reach) {
                return true;
            }
            Optional<Stretch> next = takeStartingAt(last, left, reach);
            if (next.isEmpty()) {
                return false;
            }
            chain.add(next.get());
        }
    }

    private static double lengthOf(List<Stretch> chain) {
        return chain.stream().mapToDouble(Stretch::length).sum();
    }

    /** Of several that go on from here the leftmost, so that rings that only touch come apart. */
    private static Optional<Stretch> takeStartingAt(Stretch last, List<Stretch> left, double reach) {
        Optional<Stretch> next = left.stream()
                .filter(piece -> Stretch.within(reach, piece.start(), last.end()))
                .max(Comparator.comparingDouble(piece -> last.tangent(1).turnTo(piece.tangent(0))));
        next.ifPresent(left::remove);
        return next;
    }

    /** Lines and cubics moved by the millionths that separate them from the piece before. */
    private static List<Stretch> welded(List<Stretch> chain, boolean closed) {
        List<Stretch> welded = new ArrayList<>();
        for (int i = 0; i < chain.size(); i++) {
            Stretch piece = chain.get(i);
            Point start = i > 0 ? welded.get(i - 1).end() : piece.start();
            welded.add(between(piece, start, piece.end()));
        }
        if (closed) {
            int last = chain.size() - 1;
            welded.set(
                    last,
                    between(
                            welded.get(last),
                            welded.get(last).start(),
                            welded.get(0).start()));
        }
        return welded;
    }

    private static Stretch between(Stretch piece, Point start, Point end) {
        if (piece instanceof LineStretch) {
            return Stretch.of(Segment.line(start, end));
        }
        if (piece instanceof CubicStretch cubic) {
            return Stretch.of(
                    Segment.cubic(start, cubic.cubic().control1(), cubic.cubic().control2(), end));
        }
        return piece;
    }
}
