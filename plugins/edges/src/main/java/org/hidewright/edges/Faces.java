package org.hidewright.edges;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Units;

/** The faces of all parts that are dyed or sealed at the bench. */
public record Faces(
        @Asked(unit = "dm²", min = "0.01 dm²", max = "10000 dm²", usual = "0.5-100 dm²", example = "6 dm²")
        Area area,

        @Asked(min = "1", max = "2", preset = "1") int sides,

        @Asked(min = "0", max = "10", usual = "0-3", preset = "2")
        int dyeCoats,

        @Asked(min = "0", max = "10", usual = "0-3", preset = "1")
        int sealerCoats) {

    /** Dyed and buffed flat, before anything is sewn; sealed when the piece is together. */
    List<Task> tasks() {
        List<Task> tasks = new ArrayList<>();
        for (int coat = 1; coat <= dyeCoats; coat++) {
            tasks.add(Task.coat(Stage.BEFORE_GLUE_UP, Work.DYE, coat));
        }
        if (dyeCoats > 0) {
            tasks.add(Task.of(Stage.BEFORE_GLUE_UP, Work.BUFF));
        }
        for (int coat = 1; coat <= sealerCoats; coat++) {
            tasks.add(Task.coat(Stage.AFTER_STITCHING, Work.SEAL, coat));
        }
        return tasks;
    }

    Area together() {
        return area.times(sides);
    }

    Duration habitual(Task task) {
        return EdgePlan.HANDLING.plus(over(task.work().perSquareMetre()));
    }

    /** All its tasks. */
    Duration habitual() {
        return EdgePlan.HANDLING.times(tasks().size()).plus(over(perSquareMetre()));
    }

    private Duration over(double perSquareMetre) {
        return Duration.of(together().in(Units.M2) * perSquareMetre, Units.MINUTE);
    }

    double perSquareMetre() {
        return tasks().stream()
                .mapToDouble(task -> task.work().perSquareMetre())
                .sum();
    }
}
