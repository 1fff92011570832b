package org.hidewright.layout;

import java.util.Optional;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.layout.CuttingLayout.Places;
import org.hidewright.layout.LayoutSearch.Layouts;
import org.hidewright.layout.LayoutSearch.Whole;
import org.hidewright.layout.PiecesFromLeather.Stock;

/**
 * Searches for as many whole pieces as the leather gives: first by halves between what was found and what cannot be, then one more, with
 * more effort each time that fails.
 */
final class MostPieces {
    /** Places tried in a first attempt; an attempt that fails doubles them. */
    private static final long FIRST_EFFORT = 20_000;

    private final Stock stock;
    private final int atMost;
    /** Made once for all attempts: what is known of hides takes its time. */
    private Layouts layouts;

    private int found;
    private long tried;
    private long attempt;

    MostPieces(Stock stock) throws Refusal {
        this.stock = stock;
        WholePieces pieces = new WholePieces(stock);
        this.atMost = pieces.atMost();
        this.found = standing(pieces);
    }

    /** How many lie there that can be cut. */
    private static int standing(WholePieces pieces) {
        try {
            return pieces.whole();
        } catch (Refusal cannotBeCut) {
            return 0;
        }
    }

    void search(Budget budget, Consumer<Places> better) throws Refusal {
        int tooMany = atMost + 1;
        long effort = FIRST_EFFORT;
        while (found < atMost && budget.spent(tried) < 1) {
            boolean halving = tooMany > found + 1;
            int wanted = halving ? Math.min(2 * found + 1, (found + tooMany) / 2) : found + 1;
            Whole whole = attempt(wanted, effort, budget);
            if (whole.places().isPresent()) {
                found = wanted;
                better.accept(whole.places().get());
            } else if (whole.hopeless()) {
                return;
            } else if (halving) {
                tooMany = wanted;
            } else {
                effort *= 2;
            }
        }
    }

    private Whole attempt(int wanted, long effort, Budget budget) throws Refusal {
        LayoutTask task = LayoutTask.of(stock.cut(wanted, Optional.empty()));
        LayoutSearch search = new LayoutSearch(task, Optional.empty());
        layouts = layouts == null ? search.layouts() : layouts;
        Whole whole = search.whole(layouts, budget, attempt++, tried, effort);
        tried += whole.tried();
        return whole;
    }
}
