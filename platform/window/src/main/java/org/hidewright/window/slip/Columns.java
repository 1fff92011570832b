package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.List;

/**
 * Where slips stand side by side: as many columns as fit, each slip in the order of the project in the column that ends
 * highest, so that none is far from its neighbours.
 */
public final class Columns {
    /**
     * A place on the board, in pixels.
     *
     * @param x from the left
     * @param y from the top
     */
    public record Spot(int x, int y) {}

    private Columns() {}

    /** How many columns of at least a width fit beside each other, with a gap round each; at least one. */
    public static int count(int width, int least, int gap) {
        return Math.max(1, (width - gap) / (least + gap));
    }

    /** How wide each of them is. */
    public static int width(int width, int count, int gap) {
        return Math.max(1, (width - gap) / count - gap);
    }

    /** Where each stands. */
    public static List<Spot> spots(List<Integer> heights, int count, int width, int gap) {
        int[] ends = new int[count];
        List<Spot> spots = new ArrayList<>();
        for (int height : heights) {
            int column = 0;
            for (int i = 1; i < count; i++) {
                if (ends[i] < ends[column]) {
                    column = i;
                }
            }
            spots.add(new Spot(gap + column * (width + gap), gap + ends[column]));
            ends[column] += height + gap;
        }
        return spots;
    }
}
