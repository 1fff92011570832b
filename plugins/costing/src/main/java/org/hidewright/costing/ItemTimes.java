package org.hidewright.costing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Duration;
import org.hidewright.costing.ItemCost.HabitTimes;
import org.hidewright.costing.ItemCost.TimeLine;

/**
 * Hands-on time of one piece. What a step of the item says is taken; for a step that says nothing, a habit by what it is
 * done on. An item that has steps has sewing and setting in them; one that has none is sewn and set by habit. Cutting is a
 * step only where its id is {@code cut} or begins with it.
 */
final class ItemTimes {
    private static final String STEPS = "steps-told";
    private static final String CUTTING = "cutting-habit";
    private static final String STITCHING = "stitching-habit";
    private static final String SETTING = "setting-habit";
    private static final String OTHERS = "steps-habit";
    static final List<String> PHRASES = List.of(STEPS, CUTTING, STITCHING, SETTING, OTHERS);

    private static final String CUT = "cut";

    private final Item item;
    private final HabitTimes habit;
    private final Map<String, Seam> seams;
    private final Set<String> fittings;
    private Duration told = Duration.ZERO;
    private int toldSteps;
    private int cut;
    private int stitches;
    private int set;
    private int others;

    private ItemTimes(Item item, HabitTimes habit) {
        this.item = item;
        this.habit = habit;
        this.seams = item.seams().stream().collect(Collectors.toMap(Seam::id, Function.identity()));
        this.fittings = item.fittings().stream().map(Fitting::id).collect(Collectors.toSet());
    }

    static ItemTimes of(Item item, HabitTimes habit) {
        ItemTimes times = new ItemTimes(item, habit);
        item.operations().forEach(times::step);
        times.cutting();
        if (item.operations().isEmpty()) {
            SewnRow.of(item).forEach(row -> times.stitches += row.sewn());
            times.set += item.fittings().size();
        }
        return times;
    }

    private static boolean cuts(Operation step) {
        return step.id().equals(CUT) || step.id().startsWith(CUT + "-");
    }

    private void step(Operation step) {
        if (step.handsOn().isPresent()) {
            told = told.plus(step.handsOn().get());
            toldSteps++;
        } else if (cuts(step)) {
            cut += item.parts().stream()
                    .filter(part -> step.on().isEmpty() || step.on().contains(part.id()))
                    .mapToInt(Part::pieces)
                    .sum();
        } else if (!step.on().isEmpty() && seams.keySet().containsAll(step.on())) {
            step.on().forEach(id -> stitches += SewnRow.of(item, seams.get(id)).sewn());
        } else if (!step.on().isEmpty() && fittings.containsAll(step.on())) {
            set += step.on().size();
        } else {
            others++;
        }
    }

    /** Parts that no step is said to cut. */
    private void cutting() {
        Set<String> cutBySteps = new HashSet<>();
        for (Operation step : item.operations()) {
            if (cuts(step) && step.on().isEmpty()) {
                return;
            } else if (cuts(step)) {
                cutBySteps.addAll(step.on());
            }
        }
        cut += item.parts().stream()
                .filter(part -> !cutBySteps.contains(part.id()))
                .mapToInt(Part::pieces)
                .sum();
    }

    /** By habit, and so no better than the habit. */
    Duration estimated() {
        return habit.cutting()
                .times(cut)
                .plus(habit.stitch().times(stitches))
                .plus(habit.fitting().times(set))
                .plus(habit.step().times(others));
    }

    Duration together() {
        return told.plus(estimated());
    }

    List<TimeLine> lines() {
        List<TimeLine> lines = new ArrayList<>();
        line(lines, STEPS, toldSteps, told);
        line(lines, CUTTING, cut, habit.cutting().times(cut));
        line(lines, STITCHING, stitches, habit.stitch().times(stitches));
        line(lines, SETTING, set, habit.fitting().times(set));
        line(lines, OTHERS, others, habit.step().times(others));
        return List.copyOf(lines);
    }

    private static void line(List<TimeLine> lines, String work, int count, Duration time) {
        if (count > 0) {
            lines.add(new TimeLine(work, Phrase.of(work, count), time));
        }
    }
}
