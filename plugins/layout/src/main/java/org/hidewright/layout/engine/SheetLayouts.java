package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Budget;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;

/**
 * Lays pieces on panels or hides so that all have room, on sheets that cost little, and much is left of the last one. Each layout that
 * is better than those before is handed over once the check has passed it.
 */
public final class SheetLayouts {
    private final List<Piece> pieces;
    private final List<Sheet> sheets;
    private final FullSize full;
    private final ClosePairs pairs;
    private final List<Ground> grounds;
    private SheetsFound best;

    public SheetLayouts(List<Piece> pieces, List<Sheet> sheets) {
        this.pieces = List.copyOf(pieces);
        this.sheets = List.copyOf(sheets);
        Form[] forms = Forms.of(pieces);
        double[] extents = java.util.Arrays.stream(forms)
                .mapToDouble(form -> form.extent)
                .sorted()
                .toArray();
        double middle = extents[extents.length / 2];
        double margin = java.util.Arrays.stream(forms)
                        .mapToDouble(form -> form.diameter)
                        .max()
                        .getAsDouble()
                / 2;
        Map<Sheet, Ground> made = new IdentityHashMap<>();
        this.grounds = sheets.stream()
                .map(sheet -> made.computeIfAbsent(sheet, each -> Barred.of(each, middle, margin)))
                .toList();
        this.full = new FullSize(this.pieces, this.sheets, grounds, forms);
        this.pairs = new ClosePairs(full.forms());
    }

    private SheetLayouts(List<Piece> pieces, SheetLayouts other) {
        this.pieces = List.copyOf(pieces);
        this.sheets = other.sheets;
        this.grounds = other.grounds;
        this.full = new FullSize(this.pieces, sheets, grounds, Forms.of(pieces));
        this.pairs = new ClosePairs(full.forms());
    }

    /** Whether pieces on these sheets can be searched for edge to edge: all corners lie on one grid, and pieces turn by quarters. */
    public static boolean mayTouch(List<Piece> pieces, List<Sheet> sheets) {
        return CornerGrid.of(pieces, sheets).exists();
    }

    /** The same sheets for more or fewer pieces of the same parts. */
    public SheetLayouts of(List<Piece> others) {
        return new SheetLayouts(others, this);
    }

    /**
     * Searches until the budget is spent, or nothing better can be hoped for.
     *
     * @param budget its tries are places; with one worker and a budget of tries, the same seed finds the same layouts
     * @param better told each layout that is better than those before, from any thread, one at a time
     * @return how many places were tried by all
     */
    public long search(Budget budget, Consumer<SheetsFound> better) {
        return run(budget, budget.seed(), budget::spent, better).stream()
                .mapToLong(SheetSearch::tries)
                .sum();
    }

    /**
     * What an attempt to lay all pieces came to.
     *
     * @param found a layout of all; empty where none was found
     * @param tried how many places the worker tried that tried most
     */
    public record Attempt(Optional<SheetsFound> found, long tried) {}

    /**
     * Searches until all pieces lie somewhere, and no further.
     *
     * @param attempt the number of the attempt: another one takes another way by chance
     * @param before how many places each worker has tried of the budget already
     * @param most how many places each worker tries now
     */
    public Attempt all(Budget budget, long attempt, long before, long most) {
        AtomicReference<SheetsFound> all = new AtomicReference<>();
        Halt halt = tried -> all.get() != null ? 1 : Math.max(tried / (double) most, budget.spent(before + tried));
        long tried = run(budget, budget.seed() + attempt, halt, found -> {
                    if (found.leftOver().isEmpty()) {
                        all.compareAndSet(null, found);
                    }
                })
                .stream()
                .mapToLong(SheetSearch::tries)
                .max()
                .orElse(0);
        return new Attempt(Optional.ofNullable(all.get()), tried);
    }

    private List<SheetSearch> run(Budget budget, long seed, Halt halt, Consumer<SheetsFound> better) {
        best = null;
        pairs.prepare(budget);
        SplittableRandom seeds = new SplittableRandom(seed);
        double[] areas = sheets.stream().mapToDouble(Sheet::area).toArray();
        double[] costs = sheets.stream().mapToDouble(Sheet::cost).toArray();
        BestWhole whole = new BestWhole();
        List<SheetSearch> searches = new ArrayList<>();
        for (int worker = 0; worker < budget.workers(); worker++) {
            searches.add(new SheetSearch(
                    full,
                    pairs,
                    grounds,
                    areas,
                    costs,
                    seeds.split(),
                    halt,
                    whole,
                    (sheet, places) -> told(sheet, places, better)));
        }
        budget.sideBySide(searches);
        return searches;
    }

    private synchronized void told(int[] sheet, Places places, Consumer<SheetsFound> better) {
        List<Laid> laid = new ArrayList<>();
        for (int piece = 0; piece < pieces.size(); piece++) {
            if (sheet[piece] >= 0) {
                laid.add(full.laid(piece, sheet[piece], places, piece));
            }
        }
        SheetsFound found = SheetsFound.of(pieces, sheets, laid);
        boolean gain = best == null || found.betterThan(best);
        if (gain && LayoutCheck.faults(pieces, sheets, laid, 0).isEmpty()) {
            best = found;
            better.accept(found);
        }
    }
}
