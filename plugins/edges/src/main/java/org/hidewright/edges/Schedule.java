package org.hidewright.edges;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hidewright.api.measure.Duration;

/** The steps of a whole piece: what its edges and faces need, each kind of work done to all of them in one go. */
final class Schedule {
    private final List<EdgePlan> edges;
    private final Optional<Faces> faces;
    private final DyeKind dye;
    private final Room room;
    private final List<Bottle> bottles;
    private final double pace;
    private final List<Step> steps;

    /** @param pace what a maker takes for what is usually done in 1 */
    Schedule(List<EdgePlan> edges, Optional<Faces> faces, DyeKind dye, Room room, List<Bottle> bottles, double pace) {
        this.edges = edges;
        this.faces = faces;
        this.dye = dye;
        this.room = room;
        this.bottles = bottles;
        this.pace = pace;
        this.steps = steps();
    }

    private List<Step> steps() {
        TreeSet<Task> tasks = new TreeSet<>(Task.ORDER);
        edges.forEach(edge -> tasks.addAll(edge.tasks()));
        faces.ifPresent(all -> tasks.addAll(all.tasks()));
        if (meetsGlue()) {
            tasks.add(Task.of(Stage.GLUE_AND_STITCH, Work.CHECK_MARGINS));
            tasks.add(Task.of(Stage.GLUE_AND_STITCH, Work.GLUE_AND_STITCH));
        }
        Map<String, Integer> coats = new TreeMap<>();
        tasks.forEach(task -> coats.merge(key(task), task.coat(), Math::max));
        List<Step> all = new ArrayList<>();
        for (Task task : tasks) {
            all.add(step(task, coats.get(key(task))));
        }
        return List.copyOf(all);
    }

    private boolean meetsGlue() {
        return edges.stream().anyMatch(edge -> edge.edge().lies().besideGlue());
    }

    private static String key(Task task) {
        return task.stage() + " " + task.work();
    }

    private Step step(Task task, int coats) {
        List<EdgePlan> on =
                edges.stream().filter(edge -> edge.tasks().contains(task)).toList();
        boolean onFaces = faces.filter(all -> all.tasks().contains(task)).isPresent();
        Duration handsOn = on.stream().map(edge -> edge.habitual(task)).reduce(Duration.ZERO, Duration::plus);
        if (onFaces) {
            handsOn = handsOn.plus(faces.orElseThrow().habitual(task));
        }
        return new Step(task, on, onFaces, coats, handsOn.times(pace), wait(task, task.coat() == coats));
    }

    private Wait wait(Task task, boolean last) {
        Optional<Coat> coat = switch (task.work()) {
            case DYE -> Optional.of(dye.coat());
            case PAINT -> Optional.of(Coat.EDGE_PAINT);
            case SEAL -> Optional.of(Coat.TOP_COAT);
            case CEMENT_TURN -> Optional.of(Coat.SOLVENT_CEMENT);
            default -> Optional.empty();
        };
        return coat.map(found -> room.of(last ? found.last() : found.between())
                        .notUnder(Bottle.waiting(found.liquid(), bottles)))
                .orElse(Wait.NONE);
    }

    List<Step> all() {
        return steps;
    }

    boolean has(Work work) {
        return steps.stream().anyMatch(step -> step.is(work));
    }

    Duration handsOn(EdgePlan edge) {
        return edge.habitual().times(pace);
    }

    Duration handsOn() {
        return steps.stream().map(Step::handsOn).reduce(Duration.ZERO, Duration::plus);
    }

    /** One after the other, as the steps are. */
    Wait waits() {
        return steps.stream().map(Step::drying).reduce(Wait.NONE, Wait::plus);
    }
}
