package org.hidewright.stitching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Point;

/**
 * The fewest blows that make all holes of a line with straight irons, so that no prong stands too far from its hole, and so
 * from the line: an iron whose pitch is not that of the holes does not pass either.
 *
 * <p>An iron of n prongs makes n holes from one hole to the n-th; it stands with its middle over the middle of those two,
 * along the line through them. But for the first blow its first prong stands in the last hole made, so that the pitch
 * carries on; a single prong makes the next hole alone. On a closed line the last blow may end in the first hole.
 */
final class Strikes {
    /**
     * A blow.
     *
     * @param from mark of the first prong, from 0
     * @param off millimetres from its hole to the prong that is farthest from its own
     */
    record Blow(int prongs, int from, double off) {
        int to() {
            return from + prongs - 1;
        }
    }

    private final Marks marks;
    private final double pitch;
    private final List<Integer> irons;
    private final double most;

    /** @param irons how many prongs each has */
    Strikes(Marks marks, double pitchMm, List<Integer> irons, double mostOffMm) {
        this.marks = marks;
        this.pitch = pitchMm;
        this.irons =
                irons.stream().distinct().sorted(Collections.reverseOrder()).toList();
        this.most = mostOffMm;
    }

    /** The blows in order; empty where no choice of irons keeps to the line. Of plans alike the one with larger irons first. */
    Optional<List<Blow>> fewest() {
        int last = marks.line().isClosed() ? marks.count() : marks.count() - 1;
        int[] blows = new int[last + 1]; // from the last hole made to the end
        Blow[] next = new Blow[last + 1];
        for (int made = last; made >= 0; made--) {
            blows[made] = isDone(made) ? 0 : Integer.MAX_VALUE;
            if (!isDone(made)) {
                for (int prongs : irons) {
                    take(prongs == 1 ? made + 1 : made, prongs, made, blows, next);
                }
            }
        }
        return first(blows, next);
    }

    private boolean isDone(int made) {
        return made >= marks.count() - 1;
    }

    private void take(int from, int prongs, int made, int[] blows, Blow[] next) {
        int to = from + prongs - 1;
        if (to < blows.length && blows[to] < Integer.MAX_VALUE && blows[to] + 1 < blows[made]) {
            double off = off(from, prongs);
            if (off <= most) {
                blows[made] = blows[to] + 1;
                next[made] = new Blow(prongs, from, off);
            }
        }
    }

    private Optional<List<Blow>> first(int[] blows, Blow[] next) {
        Blow begin = null;
        int fewest = Integer.MAX_VALUE;
        for (int prongs : irons) {
            int to = prongs - 1;
            if (to < blows.length && blows[to] < Integer.MAX_VALUE && blows[to] + 1 < fewest) {
                double off = off(0, prongs);
                if (off <= most) {
                    fewest = blows[to] + 1;
                    begin = new Blow(prongs, 0, off);
                }
            }
        }
        if (begin == null) {
            return Optional.empty();
        }
        List<Blow> plan = new ArrayList<>();
        for (Blow blow = begin; blow != null; blow = blow.to() < next.length ? next[blow.to()] : null) {
            plan.add(blow);
        }
        return Optional.of(List.copyOf(plan));
    }

    /** How far the farthest of its prongs stands from its hole. */
    double off(int from, int prongs) {
        List<Point> places = prongs(from, prongs);
        double off = 0;
        for (int i = 0; i < prongs; i++) {
            off = Math.max(off, places.get(i).distanceTo(marks.point((from + i) % marks.count())));
        }
        return off;
    }

    /** Where the prongs stand. */
    List<Point> prongs(int from, int prongs) {
        Point start = marks.point(from % marks.count());
        Point end = marks.point((from + prongs - 1) % marks.count());
        double direction = prongs == 1 ? 0 : start.directionTo(end);
        Point middle = Point.of((start.x() + end.x()) / 2, (start.y() + end.y()) / 2);
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < prongs; i++) {
            places.add(middle.towards(direction, (i - (prongs - 1) / 2.0) * pitch));
        }
        return places;
    }
}
