package org.hidewright.layout.open;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Budget;
import org.hidewright.layout.engine.Found;
import org.hidewright.layout.engine.StripLayouts;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Sheet;

/** A strip: judged by its density, the area of all pieces in percent of that of the strip they take. */
final class StripRun implements LayoutBenchmark.Run {
    /** How dense the best layout was from a time on. */
    record Mark(double seconds, double density) {}

    private final OpenInstance instance;
    private final LayoutBenchmark.Clock clock;
    private final double height;
    private final List<Mark> marks = new ArrayList<>();
    private Found best;

    StripRun(OpenInstance instance, LayoutBenchmark.Clock clock) {
        this.instance = instance;
        this.clock = clock;
        this.height = instance.stripHeight().orElseThrow();
    }

    @Override
    public long search(Budget budget) {
        return new StripLayouts(instance.pieces(), height).search(budget, this::better);
    }

    private synchronized void better(Found found) {
        best = found;
        marks.add(new Mark(clock.elapsed(), density()));
    }

    private double density() {
        return 100 * instance.area() / (height * best.length());
    }

    @Override
    public List<Laid> laid() {
        return best.laid();
    }

    @Override
    public List<Sheet> sheets() {
        return List.of(Sheet.plain("strip", Outline.rectangle(0, 0, best.length(), height)));
    }

    @Override
    public double first() {
        return marks.get(0).seconds();
    }

    @Override
    public String at(double seconds) {
        double density = marks.stream()
                .filter(mark -> mark.seconds() <= seconds)
                .mapToDouble(Mark::density)
                .max()
                .orElse(0);
        return String.format(Locale.ROOT, "%.2f", density);
    }

    @Override
    public void tell(ObjectNode result) {
        result.put("density", density());
        result.put("length", best.length());
        result.put("height", height);
        result.put("placed pieces", best.laid().size());
        result.put("firstSeconds", marks.get(0).seconds());
        result.put("firstDensity", marks.get(0).density());
        ArrayNode curve = result.putArray("curve");
        for (Mark mark : marks) {
            curve.addObject().put("seconds", mark.seconds()).put("density", mark.density());
        }
    }
}
