package org.hidewright.core.outline;

import org.hidewright.api.drawing.Box;
import org.hidewright.api.geometry.Region;

/**
 * An outline as it is put in: in millimetres from the lower left corner of the hide, y running up.
 *
 * @param kind as a flaw begins, {@code hole} or {@code region belly}; of the hide itself empty
 * @param line as it was drawn
 * @param corners as they are typed, {@code 0,0 1200,0 1300,700}
 * @param region what is inside
 */
public record Outlined(String kind, DrawnLine line, String corners, Region region) {
    /** The smallest upright box round it. */
    public Box bounds() {
        return region.bounds();
    }

    /** As it is put in: what it is, and its corners. */
    public String text() {
        return kind.isEmpty() ? corners : kind + " " + corners;
    }
}
