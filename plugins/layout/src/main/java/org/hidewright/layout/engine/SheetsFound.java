package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;

/**
 * A layout on sheets that can be cut.
 *
 * @param laid where each piece lies that is laid
 * @param leftOver the numbers of the pieces that found no room
 * @param cost of the sheets that are used
 * @param lastArea the area of the pieces on the sheet that carries least; the less, the more of it is left
 * @param lastRest what is left of that sheet in one piece
 * @param askew how far all pieces are off the direction that is asked for, in radians, each times its area
 */
public record SheetsFound(
        List<Laid> laid,
        List<Integer> leftOver,
        double leftOverArea,
        double cost,
        double lastArea,
        double lastRest,
        double askew) {
    /** A gain in what is left that is worth telling, as a share of what is laid there; and one in direction, as a share of it. */
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
        List<List<Outline>> lie = Stream.generate(() -> (List<Outline>) new ArrayList<Outline>())
                .limit(sheets.size())
                .toList();
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
                lie.get(sheet)
                        .add(pieces.get(piece)
                                .outline()
                                .moved(where[piece].angle(), where[piece].dx(), where[piece].dy()));
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
                laid,
                leftOver,
                leftOverArea,
                cost,
                last < 0 ? 0 : used[last],
                last < 0 ? 0 : InOnePiece.area(sheets.get(last), lie.get(last)),
                askew);
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
        double gain = lastRest - other.lastRest;
        double worth = LEAST_GAIN * lastArea;
        // what a digit of a sum takes from the rest is no loss
        return gain > worth || gain > -ROUNDING * worth && askew < other.askew * (1 - LEAST_GAIN);
    }
}
