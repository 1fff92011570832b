package org.hidewright.layout.engine;

import java.util.List;
import org.hidewright.layout.task.Laid;

/**
 * A layout on a strip that can be cut.
 *
 * @param length how much of the strip it takes
 * @param laid where each piece lies; all of them, in their order
 */
public record Found(double length, List<Laid> laid) {
    public Found {
        laid = List.copyOf(laid);
    }
}
