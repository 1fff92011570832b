package org.hidewright.documents.dxf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.drawing.Point;
import org.hidewright.core.outline.DrawnLine;

/** Lines of one layer whose ends meet, each put to the next; a file in this format may have an outline in single stretches. */
final class Chains {
    private static final double NEAR = DrawnLine.JOINED_MM;

    /** A square as wide as ends may lie apart. */
    private record Cell(String layer, long x, long y) {}

    private final List<DrawnLine> lines;
    private final boolean[] used;
    /** In each square the lines that end there. */
    private final Map<Cell, List<Integer>> ends = new HashMap<>();

    private Chains(List<DrawnLine> lines) {
        this.lines = lines;
        this.used = new boolean[lines.size()];
    }

    /** Closed lines as they are, and of the others the chains they make; each where its first line stood. */
    static List<DrawnLine> of(List<DrawnLine> lines) {
        return new Chains(lines).chained();
    }

    private List<DrawnLine> chained() {
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).closed()) {
                List<Point> places = lines.get(i).places();
                ends.computeIfAbsent(cell(lines.get(i), places.get(0), 0, 0), none -> new ArrayList<>())
                        .add(i);
                ends.computeIfAbsent(cell(lines.get(i), places.get(places.size() - 1), 0, 0), none -> new ArrayList<>())
                        .add(i);
            }
        }
        List<DrawnLine> chains = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).closed()) {
                chains.add(lines.get(i));
            } else if (!used[i]) {
                chains.add(chain(i));
            }
        }
        return chains;
    }

    private static Cell cell(DrawnLine line, Point place, int right, int up) {
        return new Cell(
                line.names().get(0),
                (long) Math.floor(place.x() / NEAR) + right,
                (long) Math.floor(place.y() / NEAR) + up);
    }

    private DrawnLine chain(int first) {
        used[first] = true;
        DrawnLine line = lines.get(first);
        List<Point> places = new ArrayList<>(line.places());
        extend(line, places);
        if (places.get(0).distanceTo(places.get(places.size() - 1)) > NEAR) {
            Collections.reverse(places);
            extend(line, places);
        }
        return new DrawnLine(line.entity(), line.at(), line.names(), places, false);
    }

    /** Goes on at the last place until nothing follows or the first is reached. */
    private void extend(DrawnLine line, List<Point> places) {
        Point last = places.get(places.size() - 1);
        int next = next(line, last);
        while (next >= 0 && (places.size() < 3 || places.get(0).distanceTo(last) > NEAR)) {
            used[next] = true;
            List<Point> more = new ArrayList<>(lines.get(next).places());
            if (more.get(0).distanceTo(last) > more.get(more.size() - 1).distanceTo(last)) {
                Collections.reverse(more);
            }
            places.addAll(more.subList(1, more.size()));
            last = places.get(places.size() - 1);
            next = next(line, last);
        }
    }

    /** The first line of the layer that is not used yet and ends at a place, or -1. */
    private int next(DrawnLine line, Point place) {
        int next = -1;
        for (int right = -1; right <= 1; right++) {
            for (int up = -1; up <= 1; up++) {
                for (int end : ends.getOrDefault(cell(line, place, right, up), List.of())) {
                    List<Point> places = lines.get(end).places();
                    double apart = Math.min(
                            places.get(0).distanceTo(place),
                            places.get(places.size() - 1).distanceTo(place));
                    next = !used[end] && apart <= NEAR && (next < 0 || end < next) ? end : next;
                }
            }
        }
        return next;
    }
}
