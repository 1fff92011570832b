package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Budget;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;

/**
 * Lays pieces on a strip of a given height so that little of its length is taken. Each layout that is better than those
 * before is handed over once the check has passed it; the search goes on until its budget is spent.
 */
public final class StripLayouts {
    private static final double ONE_DEGREE = Math.toRadians(1);

    private final List<Piece> pieces;
    private final double height;

    /**
     * @throws IllegalArgumentException when a piece is too tall for the strip at every angle tried
     */
    public StripLayouts(List<Piece> pieces, double height) {
        this.pieces = List.copyOf(pieces);
        this.height = height;
        for (Piece piece : pieces) {
            if (!fits(piece)) {
                throw new IllegalArgumentException(
                        piece.name() + " is too tall for a strip of " + height + " at every angle it may lie at.");
            }
        }
    }

    private boolean fits(Piece piece) {
        return piece.turning().spread(ONE_DEGREE).anyMatch(angle -> {
            double[] box = Forms.box(new Laid(0, 0, angle, 0, 0), piece);
            return box[3] - box[1] <= height;
        });
    }

    /**
     * Searches until the budget is spent.
     *
     * @param budget its tries are places; with one worker and a budget of tries, the same seed finds the same layouts
     * @param better told each layout that is shorter than those before, from any thread, one at a time
     * @return how many places were tried by all
     */
    public long search(Budget budget, Consumer<Found> better) {
        Form[] forms = Forms.of(pieces, budget);
        Incumbent incumbent = new Incumbent(forms.length, (length, places) -> offer(forms, length, places, better));
        ClosePairs pairs = new ClosePairs(forms);
        pairs.prepare(budget);
        SplittableRandom seeds = new SplittableRandom(budget.seed());
        List<StripSearch> searches = new ArrayList<>();
        for (int worker = 0; worker < budget.workers(); worker++) {
            Rectangle strip = Rectangle.strip(height);
            searches.add(
                    new StripSearch(new Crowd(strip, forms, pairs), strip, seeds.split(), budget::spent, incumbent));
        }
        budget.sideBySide(searches);
        return searches.stream().mapToLong(StripSearch::tries).sum();
    }

    /** Hands over a layout if the check passes it; the engine's own word is not taken for it. */
    private boolean offer(Form[] forms, double length, Places places, Consumer<Found> better) {
        Rectangle strip = new Rectangle(0, 0, length, height);
        List<Laid> laid = new ArrayList<>();
        double right = 0;
        for (int piece = 0; piece < forms.length; piece++) {
            Laid flush = Forms.flush(Forms.laid(piece, 0, forms[piece], places, piece), pieces.get(piece), strip);
            laid.add(flush);
            right = Math.max(right, Forms.box(flush, pieces.get(piece))[2]);
        }
        Sheet sheet = Sheet.plain("strip", Outline.rectangle(0, 0, right, height));
        if (!LayoutCheck.faults(pieces, List.of(sheet), laid, 0).isEmpty()) {
            return false;
        }
        better.accept(new Found(right, laid));
        return true;
    }
}
