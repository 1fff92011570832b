package org.hidewright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
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
    /** Steps of a millimetre and of a degree in which places are written down; half of one is far less than the room left between pieces. */
    private static final double STEPS = 1e4;

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
        Optional<SheetsFound> toBeat = standing(pieces);
        layouts().search(budget, found -> {
            if (toBeat.isEmpty() || found.betterThan(toBeat.get())) {
                written(found).ifPresent(better);
            }
        });
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
    Whole whole(SheetLayouts layouts, Budget budget, long attempt, long before, long most) {
        SheetLayouts.Attempt ended = layouts.of(searched()).all(budget, attempt, before, most);
        boolean spent = ended.tried() >= most || budget.spent(before + ended.tried()) >= 1;
        return new Whole(
                ended.found().flatMap(this::written),
                ended.tried(),
                ended.found().isEmpty() && !spent);
    }

    /** What lays pieces on the sheets as they are. */
    SheetLayouts layouts() {
        return new SheetLayouts(searched(), sheets());
    }

    private List<Piece> searched() {
        return IntStream.of(open)
                .mapToObj(piece -> task.pieces().get(piece).grown())
                .toList();
    }

    /** The sheets with what is held as holes in them; one that is cut from already costs nothing more. */
    private List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        Map<Sheet, Sheet> same = new HashMap<>();
        for (int number = 0; number < task.sheets().size(); number++) {
            int sheet = number;
            Sheet shrunk = task.sheets().get(sheet).shrunk();
            List<Outline> holes = new ArrayList<>(shrunk.holes());
            heldLaid.stream()
                    .filter(laid -> laid.sheet() == sheet)
                    .forEach(laid -> holes.add(task.pieces()
                            .get(laid.piece())
                            .grown()
                            .outline()
                            .moved(laid.angle(), laid.dx(), laid.dy())));
            sheets.add(
                    holes.size() == shrunk.holes().size()
                            ? same.computeIfAbsent(shrunk, whole -> whole)
                            : new Sheet(shrunk.name(), shrunk.outline(), holes, shrunk.zones(), 0));
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
        return SheetsFound.of(pieces, sheets(), searched);
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
                Length.ofMm(rounded(drawn.dx())),
                Length.ofMm(rounded(drawn.dy())),
                Angle.ofRadians(rounded(degrees) * Math.PI / 180),
                false);
    }

    private static double rounded(double number) {
        return Math.rint(number * STEPS) / STEPS;
    }
}
