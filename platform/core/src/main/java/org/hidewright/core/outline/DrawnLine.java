package org.hidewright.core.outline;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.core.json.Place;

/**
 * A line of a drawing, in millimetres and with y running up.
 *
 * @param entity what the file calls it, so that it is found there: {@code path "belly"}
 * @param at where in the file it begins
 * @param names what it and the groups round it are called, the nearest first
 * @param places along the line, the first one not again at the end of a closed one
 * @param closed whether it ends where it begins
 */
public record DrawnLine(String entity, Place at, List<String> names, List<Point> places, boolean closed) {
    /** Ends that are no farther apart are one, in millimetres. */
    public static final double JOINED_MM = 0.01;

    /** A line whose ends lie on each other is closed, whatever the file says. */
    public DrawnLine {
        names = List.copyOf(names);
        boolean meets = places.size() > 2 && places.get(0).distanceTo(places.get(places.size() - 1)) <= JOINED_MM;
        places = List.copyOf(meets ? places.subList(0, places.size() - 1) : places);
        closed = closed || meets;
    }

    /** Square millimetres inside, whichever way round it runs; 0 of an open line. */
    double area() {
        double twice = 0;
        for (int i = 0; closed && i < places.size(); i++) {
            Point one = places.get(i);
            Point next = places.get((i + 1) % places.size());
            twice += (one.x() - places.get(0).x()) * (next.y() - places.get(0).y())
                    - (next.x() - places.get(0).x()) * (one.y() - places.get(0).y());
        }
        return Math.abs(twice) / 2;
    }

    /** Millimetres from its first place to its last. */
    double length() {
        double length = 0;
        for (int i = 1; i < places.size(); i++) {
            length += places.get(i - 1).distanceTo(places.get(i));
        }
        return length;
    }

    /** How far its ends lie apart, in millimetres. */
    double gap() {
        return places.get(0).distanceTo(places.get(places.size() - 1));
    }
}
