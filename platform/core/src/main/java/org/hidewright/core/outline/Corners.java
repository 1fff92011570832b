package org.hidewright.core.outline;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.stream.Collectors;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;

/**
 * A closed line by as few corners as keep it within 0.02 mm, each at whole hundredths of a millimetre.
 *
 * <p>Of these 0.02 mm, {@link DrawingReader#NEAR_MM} are spent by the reading, 0.0071 (half the diagonal of a square of a
 * hundredth) by the rounding, and {@link #THINNED} by leaving places out.
 */
record Corners(List<Corner> corners) {
    /** In millimetres. */
    private static final double THINNED = 0.0105;
    /** Corners nearer to each other are one slip of the hand; in hundredths of a millimetre. */
    private static final double ONE = 2;

    /** In hundredths of a millimetre. */
    record Corner(long x, long y) {
        static Corner of(Point place) {
            return new Corner(Math.round(place.x() * 100), Math.round(place.y() * 100));
        }

        double distanceTo(Corner other) {
            return Math.hypot(other.x - x, other.y - y);
        }

        Point point() {
            return Point.of(x / 100.0, y / 100.0);
        }

        String text() {
            return number(x) + "," + number(y);
        }

        private static String number(long hundredths) {
            return hundredths == 0
                    ? "0"
                    : BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString();
        }
    }

    static Corners of(List<Point> places) {
        List<Corner> rounded = apart((places.size() < 3 ? places : thinned(places))
                .stream().map(Corner::of).toList());
        return new Corners(rounded.size() < 3 ? rounded : fromLowerLeft(rounded));
    }

    private static List<Corner> fromLowerLeft(List<Corner> corners) {
        int first = 0;
        for (int i = 1; i < corners.size(); i++) {
            Corner least = corners.get(first);
            first = corners.get(i).x + corners.get(i).y < least.x + least.y ? i : first;
        }
        List<Corner> ring = new ArrayList<>(corners);
        Collections.rotate(ring, -first);
        return ring;
    }

    /** Ramer, Douglas and Peucker: a stretch whose farthest place lies off too far is parted there. */
    private static List<Point> thinned(List<Point> places) {
        List<Point> ring = new ArrayList<>(places);
        // from a place that is a corner for certain: none lies farther from another one
        Collections.rotate(ring, -farthest(places, places.get(0)));
        ring.add(ring.get(0));
        BitSet kept = new BitSet();
        Deque<int[]> open = new ArrayDeque<>();
        int across = farthest(ring, ring.get(0));
        kept.set(0);
        kept.set(across);
        open.add(new int[] {0, across});
        open.add(new int[] {across, ring.size() - 1});
        while (!open.isEmpty()) {
            int[] stretch = open.remove();
            double most = THINNED;
            int at = -1;
            for (int i = stretch[0] + 1; i < stretch[1]; i++) {
                double off = off(ring.get(i), ring.get(stretch[0]), ring.get(stretch[1]));
                if (off > most) {
                    most = off;
                    at = i;
                }
            }
            if (at > 0) {
                kept.set(at);
                open.add(new int[] {stretch[0], at});
                open.add(new int[] {at, stretch[1]});
            }
        }
        return kept.stream().mapToObj(ring::get).toList();
    }

    private static int farthest(List<Point> places, Point from) {
        int farthest = 0;
        for (int i = 1; i < places.size(); i++) {
            farthest = places.get(i).distanceTo(from) > places.get(farthest).distanceTo(from) ? i : farthest;
        }
        return farthest;
    }

    /** How far a place lies off the straight stretch between two others. */
    private static double off(Point place, Point start, Point end) {
        double dx = end.x() - start.x();
        double dy = end.y() - start.y();
        double square = dx * dx + dy * dy;
        double along = square == 0 ? 0 : ((place.x() - start.x()) * dx + (place.y() - start.y()) * dy) / square;
        double share = Math.max(0, Math.min(1, along));
        return place.distanceTo(start.plus(share * dx, share * dy));
    }

    /** Without those that lie too near to the one before. */
    private static List<Corner> apart(List<Corner> corners) {
        List<Corner> kept = new ArrayList<>();
        for (Corner corner : corners) {
            if (kept.isEmpty() || corner.distanceTo(kept.get(kept.size() - 1)) >= ONE) {
                kept.add(corner);
            }
        }
        if (kept.size() > 1 && kept.get(0).distanceTo(kept.get(kept.size() - 1)) < ONE) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    /** Whether they go round anything. */
    boolean isOutline() {
        return corners.size() > 2;
    }

    long left() {
        return corners.stream().mapToLong(Corner::x).min().orElse(0);
    }

    long bottom() {
        return corners.stream().mapToLong(Corner::y).min().orElse(0);
    }

    /** Seen from another place. */
    Corners from(long left, long bottom) {
        return new Corners(corners.stream()
                .map(corner -> new Corner(corner.x - left, corner.y - bottom))
                .toList());
    }

    Curve curve() {
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            sides.add(Segment.line(
                    corners.get(i).point(),
                    corners.get((i + 1) % corners.size()).point()));
        }
        return Curve.closed(sides);
    }

    /** As it is typed into a project: {@code 0,0 1200,0 1300,700}. */
    String text() {
        return corners.stream().map(Corner::text).collect(Collectors.joining(" "));
    }
}
