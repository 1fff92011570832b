package org.hidewright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.layout.CuttingLayout.Placed;
import org.hidewright.layout.CuttingLayout.Places;
import org.hidewright.layout.engine.SheetLayouts;
import org.hidewright.layout.engine.SheetsFound;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;

/**
 * Searches for places of all pieces but those that are held where they lie. What is found is rounded to what can be read and
 * typed, checked as it is written down, and handed on if it is better than what stands there.
 */
final class LayoutSearch {
    /** Steps of a degree in which places are written down; half of one is far less than the room left between pieces that turn so. */
    private static final double STEPS_OF_A_DEGREE = 1e4;

    /** The share of a budget for pieces edge to edge, where there is such a search. */
    private static final double EDGE_TO_EDGE = 0.5;

    private final LayoutTask task;
    private final List<Placed> held = new ArrayList<>();
    private final List<Laid> heldLaid = new ArrayList<>();
    private final List<Placed> before;
    /** Numbers of the pieces that are searched for. */
    private final int[] open;

    LayoutSearch(LayoutTask task, Optional<Places> there) throws Refusal {
        this.task = task;
        this.before = there.map(Places::pieces).orElse(List.of());
        for (Placed placed : before) {
            if (placed.held()) {
                held.add(placed);
                heldLaid.add(task.laid(placed));
            }
        }
        task.check(heldLaid);
        this.open = IntStream.range(0, task.pieces().size())
                .filter(piece -> heldLaid.stream().noneMatch(laid -> laid.piece() == piece))
                .toArray();
    }

    void run(Budget budget, Consumer<Places> better) {
        if (open.length == 0) {
            return;
        }
        List<Piece> pieces = searched();
        Best best = new Best(standing(pieces), better);
        Optional<SheetLayouts> touching = touching();
        Budget rest = budget;
        if (touching.isPresent()) {
            long tried = touching.get()
                    .search(new BudgetPart(budget, 0, 0, EDGE_TO_EDGE), found -> best.offer(inMm(found, pieces)));
            long before = tried / budget.workers();
            if (budget.spent(before) >= 1) {
                // stopped meanwhile: another first layout would keep the maker waiting
                return;
            }
            rest = new BudgetPart(budget, before, EDGE_TO_EDGE, 1);
        }
        apart().search(rest, best::offer);
    }

    /** Hands on what is better than all before. */
    private final class Best {
        private final Consumer<Places> better;
        private Optional<SheetsFound> best;

        Best(Optional<SheetsFound> toBeat, Consumer<Places> better) {
            this.best = toBeat;
            this.better = better;
        }

        void offer(SheetsFound found) {
            if (best.isEmpty() || found.betterThan(best.get())) {
                written(found).ifPresent(places -> {
                    best = Optional.of(found);
                    better.accept(places);
                });
            }
        }
    }

    /** What was found in steps, judged as what is found in millimetres. */
    private SheetsFound inMm(SheetsFound found, List<Piece> pieces) {
        return SheetsFound.of(
                pieces,
                sheets(CutSheet::shrunk, CutPiece::grown),
                found.laid().stream().map(Steps::inMm).toList());
    }

    /**
     * What lays pieces on sheets.
     *
     * @param touching edge to edge, in {@link Steps}; empty where pieces or sheets are not such that whole numbers tell where they touch
     * @param apart with a little more room between them than the gap, at any angle at which they may lie
     */
    record Layouts(Optional<SheetLayouts> touching, SheetLayouts apart) {}

    /** What lays the pieces on the sheets as they are. */
    Layouts layouts() {
        return new Layouts(touching(), apart());
    }

    private Optional<SheetLayouts> touching() {
        List<Piece> pieces = tight();
        List<Sheet> sheets = sheets(CutSheet::tight, CutPiece::tight).stream()
                .map(new Same()::steps)
                .toList();
        return SheetLayouts.mayTouch(pieces, sheets) ? Optional.of(new SheetLayouts(pieces, sheets)) : Optional.empty();
    }

    private SheetLayouts apart() {
        return new SheetLayouts(searched(), sheets(CutSheet::shrunk, CutPiece::grown));
    }

    /**
     * What an attempt to lay all pieces came to.
     *
     * @param places of all; empty where none was found, or rounding spoilt it
     * @param tried how many places were tried, of the budget
     * @param hopeless whether the attempt came to its end by itself: a part has room nowhere
     */
    record Whole(Optional<Places> places, long tried, boolean hopeless) {}

    /** Searches until all pieces have a place: see {@link SheetLayouts#all}. */
    Whole whole(Layouts layouts, Budget budget, long attempt, long before, long most) {
        long tried = 0;
        if (layouts.touching().isPresent()) {
            SheetLayouts.Attempt ended = layouts.touching().get().of(tight()).all(budget, attempt, before, most / 2);
            Optional<Places> places =
                    ended.found().map(found -> inMm(found, searched())).flatMap(this::written);
            tried = ended.tried();
            if (places.isPresent()) {
                return new Whole(places, tried, false);
            }
        }
        // a first layout may take more than its half
        long rest = Math.max(most / 2, most - tried);
        SheetLayouts.Attempt ended = layouts.apart().of(searched()).all(budget, attempt, before + tried, rest);
        tried += ended.tried();
        boolean spent = ended.tried() >= rest || budget.spent(before + tried) >= 1;
        return new Whole(
                ended.found().flatMap(this::written), tried, ended.found().isEmpty() && !spent);
    }

    private List<Piece> searched() {
        return IntStream.of(open)
                .mapToObj(piece -> task.pieces().get(piece).grown())
                .toList();
    }

    /** In {@link Steps}; those of one outline share it again. */
    private List<Piece> tight() {
        Same same = new Same();
        return IntStream.of(open)
                .mapToObj(piece -> same.steps(task.pieces().get(piece).tight()))
                .toList();
    }

    /** Makes of the same outline and of the same sheet the same in steps: what is the same has one form in a search. */
    private static final class Same {
        private final Map<Outline, Piece> pieces = new IdentityHashMap<>();
        private final Map<Sheet, Sheet> sheets = new IdentityHashMap<>();

        Piece steps(Piece piece) {
            Piece made = pieces.computeIfAbsent(piece.outline(), outline -> Steps.of(piece));
            return new Piece(piece.name(), made.outline(), piece.turning(), piece.avoids(), made.inner());
        }

        Sheet steps(Sheet sheet) {
            return sheets.computeIfAbsent(sheet, Steps::of);
        }
    }

    /** The sheets with what is held as holes in them; one that is cut from already costs nothing more. */
    private List<Sheet> sheets(Function<CutSheet, Sheet> made, Function<CutPiece, Piece> held) {
        List<Sheet> sheets = new ArrayList<>();
        Map<Sheet, Sheet> same = new HashMap<>();
        for (int number = 0; number < task.sheets().size(); number++) {
            int sheet = number;
            Sheet whole = made.apply(task.sheets().get(sheet));
            List<Outline> holes = new ArrayList<>(whole.holes());
            heldLaid.stream()
                    .filter(laid -> laid.sheet() == sheet)
                    .forEach(laid -> holes.add(held.apply(task.pieces().get(laid.piece()))
                            .outline()
                            .moved(laid.angle(), laid.dx(), laid.dy())));
            sheets.add(
                    holes.size() == whole.holes().size()
                            ? same.computeIfAbsent(whole, each -> each)
                            : new Sheet(whole.name(), whole.outline(), holes, whole.zones(), 0));
        }
        return sheets;
    }

    /** What stands there, counted as what is found; empty where nothing does, or it cannot be cut. */
    private Optional<SheetsFound> standing(List<Piece> pieces) {
        try {
            List<Laid> laid = new ArrayList<>();
            for (Placed placed : before) {
                laid.add(task.laid(placed));
            }
            task.check(laid);
            return laid.isEmpty() ? Optional.empty() : Optional.of(counted(laid, pieces));
        } catch (Refusal cannotBeCut) {
            return Optional.empty();
        }
    }

    private SheetsFound counted(List<Laid> laid, List<Piece> pieces) {
        List<Laid> searched = new ArrayList<>();
        for (int index = 0; index < open.length; index++) {
            int piece = open[index];
            int number = index;
            laid.stream()
                    .filter(lies -> lies.piece() == piece)
                    .findFirst()
                    .ifPresent(
                            lies -> searched.add(new Laid(number, lies.sheet(), lies.angle(), lies.dx(), lies.dy())));
        }
        return SheetsFound.of(pieces, sheets(CutSheet::shrunk, CutPiece::grown), searched);
    }

    /** What was found as it is written down; empty where nothing is laid, or rounding spoils it. */
    private Optional<Places> written(SheetsFound found) {
        if (found.laid().isEmpty()) {
            return Optional.empty();
        }
        List<Placed> placed = new ArrayList<>(held);
        try {
            List<Laid> written = new ArrayList<>(heldLaid);
            for (Laid laid : found.laid()) {
                Placed place = placed(laid);
                placed.add(place);
                written.add(task.laid(place));
            }
            task.check(written);
        } catch (Refusal lostByRounding) {
            return Optional.empty();
        }
        return Optional.of(new Places(task.pairs().numbered(placed)));
    }

    private Placed placed(Laid found) {
        CutSheet sheet = task.sheets().get(found.sheet());
        Laid drawn = sheet.frame().drawn(found);
        double degrees = Math.toDegrees(Math.IEEEremainder(drawn.angle(), 2 * Math.PI));
        return new Placed(
                task.pieces().get(open[found.piece()]).id(),
                sheet.id(),
                Length.ofMm(rounded(drawn.dx(), Steps.IN_A_MM)),
                Length.ofMm(rounded(drawn.dy(), Steps.IN_A_MM)),
                Angle.ofRadians(rounded(degrees, STEPS_OF_A_DEGREE) * Math.PI / 180),
                false);
    }

    private static double rounded(double number, double steps) {
        return Math.rint(number * steps) / steps;
    }
}
