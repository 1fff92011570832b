package org.hidewright.layout.engine;

import java.util.List;
import org.hidewright.layout.task.Laid;

/**
 * A layout on sheets that can be cut.
 *
 * @param laid where each piece lies that is laid
 * @param leftOver the numbers of the pieces that found no room
 * @param cost of the sheets that are used
 * @param lastArea the area of the pieces on the sheet that carries least; the less, the more of it is left
 */
public record SheetsFound(List<Laid> laid, List<Integer> leftOver, double leftOverArea, double cost, double lastArea) {
    public SheetsFound {
        laid = List.copyOf(laid);
        leftOver = List.copyOf(leftOver);
    }

    /** Whether it is better than another: less left over, then cheaper sheets, then more left of the last one. */
    public boolean betterThan(SheetsFound other) {
        if (leftOverArea != other.leftOverArea) {
            return leftOverArea < other.leftOverArea;
        }
        if (cost != other.cost) {
            return cost < other.cost;
        }
        return lastArea < other.lastArea;
    }
}
