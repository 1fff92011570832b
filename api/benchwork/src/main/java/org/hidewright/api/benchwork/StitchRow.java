package org.hidewright.api.benchwork;

import java.util.List;
import java.util.Objects;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.OnPart;

/** A row of stitches on a piece, for seams to name and for other pieces to be pierced alike. */
public final class StitchRow {
    private final OnPart on;
    private final Curve line;
    private final List<Point> holes;

    StitchRow(OnPart on, Curve line, List<Point> holes) {
        this.on = Objects.requireNonNull(on, "on");
        this.line = Objects.requireNonNull(line, "line");
        this.holes = List.copyOf(holes);
    }

    /** Its part and its id there. */
    public OnPart on() {
        return on;
    }

    /** Where it runs. */
    public Curve line() {
        return line;
    }

    /** In order along the line. */
    public List<Point> holes() {
        return holes;
    }

    @Override
    public String toString() {
        return on + ", " + holes.size() + " holes";
    }
}
