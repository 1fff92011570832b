package org.hidewright.edges;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;

/** What is done to one edge. */
final class EdgePlan {
    /** Taking a part up, the tool, and laying both down. */
    static final Duration HANDLING = Duration.of(1, Units.MINUTE);

    private final Edge edge;
    private final Optional<Length> bevel;
    private final Ladder ladder;
    private final List<Task> tasks;

    EdgePlan(Edge edge, List<Grit> grits) {
        this.edge = edge;
        this.bevel =
                edge.beveled() && !edge.isTurned() && !edge.isBuried() ? Bevel.of(edge.thickness()) : Optional.empty();
        this.ladder = Ladder.between(edge.coarsest(), edge.finish().finest(), grits);
        this.tasks = edge.isBuried() ? List.of() : needed();
    }

    private List<Task> needed() {
        List<Task> tasks = new ArrayList<>();
        Stage stage = edge.stage();
        if (edge.cutBy() == CutBy.LASER) {
            tasks.add(Task.of(Stage.BEFORE_GLUE_UP, Work.CLEAN_CHAR));
        }
        if (edge.isTurned()) {
            tasks.add(Task.of(stage, Work.SKIVE_TURN));
            tasks.add(Task.of(stage, Work.CEMENT_TURN));
            tasks.add(Task.of(stage, Work.FOLD_TURN));
            return List.copyOf(tasks);
        }
        if (edge.lies() == EdgePlace.SEWN_TOGETHER) {
            tasks.add(Task.of(stage, Work.SAND_FLUSH));
        }
        bevel.ifPresent(width -> tasks.add(Task.of(stage, Work.BEVEL)));
        ladder.grits().forEach(grit -> tasks.add(Task.sand(stage, grit)));
        coats(tasks, stage, Work.DYE, edge.finish().dyed());
        if (edge.finish() instanceof EdgeFinish.Burnished burnished) {
            coats(tasks, stage, Work.BURNISH, burnished.coats());
            if (burnished.waxed()) {
                tasks.add(Task.of(stage, Work.WAX));
            }
        } else if (edge.finish() instanceof EdgeFinish.Painted painted) {
            coats(tasks, stage, Work.PAINT, painted.coats());
            coats(tasks, stage, Work.SAND_PAINT, painted.coats() - 1);
        }
        return List.copyOf(tasks);
    }

    private static void coats(List<Task> tasks, Stage stage, Work work, int coats) {
        for (int coat = 1; coat <= coats; coat++) {
            tasks.add(Task.coat(stage, work, coat));
        }
    }

    Edge edge() {
        return edge;
    }

    Optional<Length> bevel() {
        return bevel;
    }

    Ladder ladder() {
        return ladder;
    }

    List<Task> tasks() {
        return tasks;
    }

    boolean isSanded() {
        return tasks.stream().anyMatch(task -> task.work() == Work.SAND);
    }

    /** By habit, before anybody’s own pace. */
    Duration habitual(Task task) {
        return HANDLING.plus(along(task.work().perMetre(), task.work().perMetreAndMm()));
    }

    /** All its tasks. */
    Duration habitual() {
        return HANDLING.times(tasks.size()).plus(along(perMetre(), perMetreAndMm()));
    }

    private Duration along(double perMetre, double perMetreAndMm) {
        double minutes = edge.together().in(Units.M)
                * (perMetre + perMetreAndMm * edge.thickness().mm());
        return Duration.of(minutes, Units.MINUTE);
    }

    double perMetre() {
        return tasks.stream().mapToDouble(task -> task.work().perMetre()).sum();
    }

    double perMetreAndMm() {
        return tasks.stream().mapToDouble(task -> task.work().perMetreAndMm()).sum();
    }
}
