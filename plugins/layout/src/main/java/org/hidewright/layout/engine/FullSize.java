package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;

/**
 * What becomes of parts that were separated: where all corners lie on a grid, the search works with parts a little smaller than they are,
 * so that some lie edge to edge, and here they get their full size again, each on a place of the grid near by, where they touch but do
 * not overlap. Where there is no grid they stay as they are.
 */
final class FullSize {
    /** By so much of the grid's step each edge lies further in while parts are searched a place: less than lets places be mistaken. */
    private static final double SMALLER = 0.1;

    /** And by no more than so much of the longer side of a sheet: a search tells finer places apart. */
    private static final double MOST_SMALLER = 2e-4;

    /** So many moves for each part until it is given up to find them places. */
    private static final int MOVES = 12;

    private static final ClosePairs NO_PAIRS = new ClosePairs(new Form[0]);

    private final List<Piece> pieces;
    private final List<Sheet> sheets;
    private final List<Ground> grounds;
    private final CornerGrid grid;
    private final Form[] search;
    private final Form[] close;

    FullSize(List<Piece> pieces, List<Sheet> sheets, List<Ground> grounds, Form[] forms) {
        this.pieces = pieces;
        this.sheets = sheets;
        this.grounds = grounds;
        this.grid = CornerGrid.of(pieces, sheets);
        this.search = smaller(forms, Math.min(SMALLER * grid.step(), MOST_SMALLER * grid.widest()));
        this.close = smaller(forms, grid.hair());
    }

    private static Form[] smaller(Form[] forms, double by) {
        if (by == 0) {
            return forms;
        }
        Map<Form, Form> made = new IdentityHashMap<>();
        Form[] smaller = new Form[forms.length];
        for (int form = 0; form < forms.length; form++) {
            smaller[form] = made.computeIfAbsent(forms[form], each -> each.smaller(by));
        }
        return smaller;
    }

    /** The forms to search with. */
    Form[] forms() {
        return search;
    }

    Ground ground(int sheet) {
        return grounds.get(sheet);
    }

    /** Whether parts may lie edge to edge. */
    boolean touching() {
        return grid.exists();
    }

    /** A place as the piece gets it. */
    Laid laid(int part, int sheet, Places places, int at) {
        Laid lies = Forms.laid(part, sheet, search[part], places, at);
        return grid.exists() ? grid.nearest(lies) : Forms.flush(lies, pieces.get(part), grounds.get(sheet));
    }

    /**
     * The parts of a crowd on a sheet, none overlapping another one.
     *
     * @param parts the numbers of the parts of the crowd
     * @return empty where they have no room at their full size
     */
    Optional<Stack> stack(int sheet, List<Integer> parts, Places places, SplittableRandom random) {
        double area = 0;
        for (Integer part : parts) {
            area += search[part].area;
        }
        Stack stack = new Stack(parts, places, area);
        return grid.exists() ? onTheGrid(sheet, stack, random) : Optional.of(stack);
    }

    /** What is left of a sheet in one piece. */
    double inOnePiece(int sheet, Stack stack) {
        List<Outline> lie = new ArrayList<>();
        for (int index = 0; index < stack.parts().size(); index++) {
            int part = stack.parts().get(index);
            Laid laid = laid(part, sheet, stack.places(), index);
            lie.add(pieces.get(part).outline().moved(laid.angle(), laid.dx(), laid.dy()));
        }
        return InOnePiece.area(sheets.get(sheet), lie);
    }

    private Optional<Stack> onTheGrid(int sheet, Stack stack, SplittableRandom random) {
        Form[] forms = stack.parts().stream().map(part -> close[part]).toArray(Form[]::new);
        Crowd crowd = new Crowd(grounds.get(sheet), forms, NO_PAIRS);
        double[] fromX = new double[crowd.parts];
        double[] fromY = new double[crowd.parts];
        for (int index = 0; index < crowd.parts; index++) {
            double angle = stack.places().angle[index];
            Form form = forms[index];
            double offX = Turning.cos(angle) * form.referenceX - Turning.sin(angle) * form.referenceY;
            double offY = Turning.sin(angle) * form.referenceX + Turning.cos(angle) * form.referenceY;
            fromX[index] = grid.nearest(stack.places().x[index] - offX) + offX;
            fromY[index] = grid.nearest(stack.places().y[index] - offY) + offY;
            crowd.lay(index, angle, fromX[index], fromY[index]);
        }
        crowd.measureAll();
        for (int move = 0; move < MOVES * crowd.parts; move++) {
            int troubled = anyTroubled(crowd, random);
            if (troubled < 0) {
                break;
            }
            moveAbout(crowd, troubled, fromX[troubled], fromY[troubled], random);
            crowd.reweigh();
        }
        if (anyTroubled(crowd, random) >= 0) {
            return Optional.empty();
        }
        Places places = crowd.places();
        List<Laid> laid = new ArrayList<>();
        for (int index = 0; index < crowd.parts; index++) {
            laid.add(laid(stack.parts().get(index), sheet, places, index));
        }
        return LayoutCheck.faults(pieces, sheets, laid, 0).isEmpty()
                ? Optional.of(new Stack(stack.parts(), places, stack.area()))
                : Optional.empty();
    }

    private static int anyTroubled(Crowd crowd, SplittableRandom random) {
        int from = crowd.parts == 0 ? 0 : random.nextInt(crowd.parts);
        for (int index = 0; index < crowd.parts; index++) {
            int part = (from + index) % crowd.parts;
            if (crowd.troubled(part)) {
                return part;
            }
        }
        return -1;
    }

    /** To that of the places of the grid next to where it came from that costs least. */
    private void moveAbout(Crowd crowd, int part, double fromX, double fromY, SplittableRandom random) {
        double least = Double.POSITIVE_INFINITY;
        double x = fromX;
        double y = fromY;
        int first = random.nextInt(9);
        for (int step = 0; step < 9; step++) {
            int at = (first + step) % 9;
            double toX = fromX + (at % 3 - 1) * grid.step();
            double toY = fromY + (at / 3 - 1) * grid.step();
            double cost = crowd.cost(part, crowd.turned[part], toX, toY, least);
            if (cost < least) {
                least = cost;
                x = toX;
                y = toY;
            }
        }
        crowd.put(part, crowd.turned[part], x, y);
        crowd.measure(part);
    }
}
