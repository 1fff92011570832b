package org.hidewright.layout.open;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Budget;
import org.hidewright.layout.engine.SheetLayouts;
import org.hidewright.layout.engine.SheetsFound;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;

/** Hides or panels: judged by what is left over, then by the sheets used and their density. */
final class SheetsRun implements LayoutBenchmark.Run {
    private record Mark(double seconds, SheetsFound found) {}

    private final OpenInstance instance;
    private final LayoutBenchmark.Clock clock;
    private final List<Mark> marks = new ArrayList<>();
    private SheetsFound best;

    SheetsRun(OpenInstance instance, LayoutBenchmark.Clock clock) {
        this.instance = instance;
        this.clock = clock;
    }

    @Override
    public long search(Budget budget) {
        return new SheetLayouts(instance.pieces(), instance.sheets()).search(budget, this::better);
    }

    private synchronized void better(SheetsFound found) {
        best = found;
        marks.add(new Mark(clock.elapsed(), found));
    }

    @Override
    public List<Laid> laid() {
        return best.laid();
    }

    @Override
    public List<Sheet> sheets() {
        return instance.sheets();
    }

    private static long used(SheetsFound found) {
        return found.laid().stream().mapToInt(Laid::sheet).distinct().count();
    }

    @Override
    public double first() {
        return marks.get(0).seconds();
    }

    @Override
    public String at(double seconds) {
        return marks.stream()
                .filter(mark -> mark.seconds() <= seconds)
                .reduce((before, after) -> after)
                .map(mark -> used(mark.found()) + "/" + mark.found().leftOver().size())
                .orElse("–");
    }

    @Override
    public void tell(ObjectNode result) {
        result.put("sheetsUsed", used(best));
        result.put("cost", best.cost());
        double area = best.laid().stream()
                .mapToInt(Laid::sheet)
                .distinct()
                .mapToDouble(sheet -> instance.sheets().get(sheet).area())
                .sum();
        result.put("density", 100 * (instance.area() - best.leftOverArea()) / area);
        result.put("placed pieces", best.laid().size());
        result.put("leftOverArea", best.leftOverArea());
        ArrayNode left = result.putArray("leftOver");
        best.leftOver().stream()
                .map(piece -> instance.pieces().get(piece))
                .map(Piece::name)
                .forEach(left::add);
        ArrayNode curve = result.putArray("curve");
        for (Mark mark : marks) {
            curve.addObject()
                    .put("seconds", mark.seconds())
                    .put("sheets", used(mark.found()))
                    .put("leftOver", mark.found().leftOver().size())
                    .put("lastArea", mark.found().lastArea());
        }
    }
}
