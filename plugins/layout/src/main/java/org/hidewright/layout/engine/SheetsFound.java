package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;

/**
 * A layout on sheets that can be cut.
 *
 * @param laid where each piece lies that is laid
 * @param leftOver the numbers of the pieces that found no room
 * @param cost of the sheets that are used
 * @param lastArea the area of the pieces on the sheet that carries least; the less, the more of it is left
 * @param lastReach how far to the right they reach; the less, the larger is what is left of it in one piece
 * @param askew how far all pieces are off the direction that is asked for, in radians, each times its area
 */
public record SheetsFound(
        List<Laid> laid,
        List<Integer> leftOver,
        double leftOverArea,
        double cost,
        double lastArea,
        double lastReach,
        double askew) {
    /** A gain in reach that is worth telling, as a share of it. */
    private static final double LEAST_GAIN = 1e-3;

    private static final double ROUNDING = 1e-3;

    public SheetsFound {
        laid = List.copyOf(laid);
        leftOver = List.copyOf(leftOver);
    }

    /** What a layout comes to. */
    public static SheetsFound of(List<Piece> pieces, List<Sheet> sheets, List<Laid> laid) {
        Laid[] where = new Laid[pieces.size()];
        laid.forEach(lies -> where[lies.piece()] = lies);
        double[] used = new double[sheets.size()];
        double[] reach = new double[sheets.size()];
        List<Integer> leftOver = new ArrayList<>();
        double leftOverArea = 0;
        double askew = 0;
        for (int piece = 0; piece < where.length; piece++) {
            double area = pieces.get(piece).outline().area();
            if (where[piece] == null) {
                leftOver.add(piece);
                leftOverArea += area;
            } else {
                int sheet = where[piece].sheet();
                double right = Forms.box(where[piece], pieces.get(piece))[2];
                reach[sheet] = used[sheet] == 0 ? right : Math.max(reach[sheet], right);
                used[sheet] += area;
                askew += area * pieces.get(piece).turning().askew(where[piece].angle());
            }
        }
        int last = -1;
        double cost = 0;
        for (int sheet :
                IntStream.range(0, used.length).filter(sheet -> used[sheet] > 0).toArray()) {
            cost += sheets.get(sheet).cost();
            last = last < 0 || used[sheet] < used[last] ? sheet : last;
        }
        return new SheetsFound(
                laid, leftOver, leftOverArea, cost, last < 0 ? 0 : used[last], last < 0 ? 0 : reach[last], askew);
    }

    /** Whether it is better than another: less left over, then cheaper sheets, then more left of the last one, in one piece, then less askew. */
    public boolean betterThan(SheetsFound other) {
        if (leftOverArea != other.leftOverArea) {
            return leftOverArea < other.leftOverArea;
        }
        if (cost != other.cost) {
            return cost < other.cost;
        }
        if (lastArea != other.lastArea) {
            return lastArea < other.lastArea;
        }
        double gain = other.lastReach - lastReach;
        double worth = LEAST_GAIN * Math.abs(other.lastReach);
        // what a digit of a sum adds to the reach is no loss
        return gain > worth || gain > -ROUNDING * worth && askew < other.askew * (1 - LEAST_GAIN);
    }
}
