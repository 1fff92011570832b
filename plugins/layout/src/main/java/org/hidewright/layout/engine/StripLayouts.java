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
    private final List<Piece> pieces;
    private final double height;
    private final Form[] forms;

    /**
     * @throws IllegalArgumentException when a piece is too tall for the strip at every angle tried
     */
    public StripLayouts(List<Piece> pieces, double height) {
        this.pieces = List.copyOf(pieces);
        this.height = height;
        this.forms = Forms.of(pieces);
        for (int piece = 0; piece < forms.length; piece++) {
            if (!fits(forms[piece])) {
                throw new IllegalArgumentException(pieces.get(piece).name() + " is too tall for a strip of " + height
                        + " at every angle it may lie at.");
            }
        }
    }

    private boolean fits(Form form) {
        Turned turned = new Turned(form);
        int looks = form.listed.length > 0 ? form.listed.length : 360;
        for (int look = 0; look < looks; look++) {
            double angle =
                    form.listed.length > 0 ? form.listed[look].angle : form.turning.nearest(Math.toRadians(look));
            turned.turn(angle);
            if (turned.maxY - turned.minY <= height) {
                return true;
            }
        }
        return false;
    }

    /**
     * Searches until the budget is spent.
     *
     * @param budget its tries are places; with one worker and a budget of tries, the same seed finds the same layouts
     * @param better told each layout that is shorter than those before, from any thread, one at a time
     * @return how many places were tried by all
     */
    public long search(Budget budget, Consumer<Found> better) {
        Incumbent incumbent = new Incumbent(forms.length, (length, places) -> offer(length, places, better));
        ClosePairs pairs = new ClosePairs(forms);
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
    private boolean offer(double length, Places places, Consumer<Found> better) {
        Rectangle strip = new Rectangle(0, 0, length, height);
        List<Laid> laid = new ArrayList<>();
        double right = 0;
        for (int piece = 0; piece < forms.length; piece++) {
            Laid flush = Forms.flush(Forms.laid(piece, 0, forms[piece], places), pieces.get(piece), strip);
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
