package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.PartShape;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Edge;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.core.wording.ItemNames;

/** What links can take from an item: the rows of {@link org.hidewright.api.item.ItemFact}. */
public final class ItemFacts {
    private static final String ALL = "all";
    private static final String EDGES = "edges.";

    private final Item item;
    private final List<Values> rows = new ArrayList<>();
    private final List<Function<ItemNames, String>> called = new ArrayList<>();
    private final Map<String, Double> lengthOfKind = new LinkedHashMap<>();
    private double areaOfAll;
    private double cutOfAll;
    private int piecesOfAll;

    private ItemFacts(Item item) {
        this.item = item;
    }

    /** The rows of an item: parts with what is on them, seams, fittings, kinds of edge, all together. */
    public static List<Values> rows(Item item) {
        return List.copyOf(of(item).rows);
    }

    /** What each of the rows is called. */
    public static List<String> names(Item item, ItemNames names) {
        return of(item).called.stream().map(name -> name.apply(names)).toList();
    }

    /** What the row with an id is called; empty where the item has none. */
    public static Optional<String> name(Item item, String id, ItemNames names) {
        ItemFacts facts = of(item);
        for (int i = 0; i < facts.rows.size(); i++) {
            if (facts.rows.get(i).rowId().equals(id)) {
                return Optional.of(facts.called.get(i).apply(names));
            }
        }
        return Optional.empty();
    }

    private static ItemFacts of(Item item) {
        ItemFacts facts = new ItemFacts(item);
        item.parts().forEach(facts::part);
        item.seams().forEach(facts::seam);
        item.fittings().forEach(facts::fitting);
        facts.lengthOfKind.forEach((kind, length) ->
                facts.row(EDGES + kind, names -> names.edges(kind)).length(length));
        double seconds = 0;
        for (Operation operation : item.operations()) {
            Duration time = operation.handsOn().orElse(Duration.ofSeconds(0));
            seconds += time.seconds();
            facts.row(operation.id(), names -> names.step(operation)).handsOn(time);
        }
        facts.row(ALL, ItemNames::all)
                .area(facts.areaOfAll)
                .cut(facts.cutOfAll)
                .count(facts.piecesOfAll)
                .handsOn(Duration.ofSeconds(seconds));
        return facts;
    }

    /** The rows of an answer that has columns: of a table, a group or an item. */
    public static List<Values> rowsOf(Object answer) {
        if (answer instanceof Item item) {
            return rows(item);
        }
        return answer instanceof List<?> list
                ? list.stream().map(Values.class::cast).toList()
                : List.of((Values) answer);
    }

    private void part(Part part) {
        Region finished = PartShape.finished(part);
        double cut = PartShape.cutArea(part);
        double area = finished.area();
        areaOfAll += area * part.pieces();
        cutOfAll += cut * part.pieces();
        piecesOfAll += part.pieces();
        row(part.id(), names -> names.part(part))
                .length(finished.outline().length())
                .area(area)
                .cut(cut)
                .count(part.pieces())
                .stack(part.thickness());
        Curve outline = Curve.of(part.outline());
        for (Edge edge : part.edges()) {
            double length = length(outline, edge);
            lengthOfKind.merge(edge.kind(), length * part.pieces(), Double::sum);
            on(part, edge.id()).length(length).stack(part.thickness());
        }
        for (StitchLine line : part.stitchLines()) {
            on(part, line.id()).length(Curve.of(line.line()).length()).count(line.holes());
        }
        for (Fold fold : part.folds()) {
            on(part, fold.id()).length(Curve.of(fold.line()).length()).stack(part.thickness());
        }
    }

    static double length(Curve outline, Edge edge) {
        double round = outline.length();
        return edge.to() > edge.from() ? Math.min(edge.to(), round) - edge.from() : round - edge.from() + edge.to();
    }

    private void seam(Seam seam) {
        StitchLine seen = item.stitchLine(seam.lines().get(0)).orElseThrow();
        row(seam.id(), names -> names.seam(seam))
                .length(Curve.of(seen.line()).length())
                .count(seen.holes())
                .stack(stack(seam.lines()));
    }

    private void fitting(Fitting fitting) {
        Row row = row(fitting.id(), names -> names.fitting(fitting));
        if (!fitting.holes().isEmpty()) { // what leather alone holds goes through no hole and no stack
            row.count(fitting.holes().size()).stack(stack(fitting.holes()));
        }
    }

    private OptionalDouble stack(List<OnPart> through) {
        double stack = 0;
        for (OnPart on : through) {
            OptionalDouble thickness = item.part(on.part()).orElseThrow().thickness();
            if (thickness.isEmpty()) {
                return OptionalDouble.empty();
            }
            stack += thickness.getAsDouble();
        }
        return OptionalDouble.of(stack);
    }

    private Row on(Part part, String id) {
        return row(new OnPart(part.id(), id).toString(), names -> names.on(part, id));
    }

    private Row row(String id, Function<ItemNames, String> name) {
        called.add(name);
        rows.add(Values.row(id, Map.of())); // of an operation that takes no time, nothing more is known
        return new Row(rows.size() - 1, id);
    }

    /** Fills the row it stands for, one fact after the other. */
    private final class Row {
        private final int at;
        private final String id;
        private final Map<String, Object> facts = new LinkedHashMap<>();

        private Row(int at, String id) {
            this.at = at;
            this.id = id;
        }

        private Row with(String key, Object value) {
            facts.put(key, value);
            rows.set(at, Values.row(id, facts));
            return this;
        }

        Row length(double mm) {
            return with("length", Length.ofMm(mm));
        }

        Row area(double mm2) {
            return with("area", Area.ofMm2(mm2));
        }

        Row cut(double mm2) {
            return with("cut", Area.ofMm2(mm2));
        }

        Row count(int count) {
            return with("count", count);
        }

        Row count(List<Point> holes) {
            return holes.isEmpty() ? this : count(holes.size());
        }

        Row handsOn(Duration time) {
            return time.seconds() > 0 ? with("hands-on", time) : this;
        }

        Row stack(OptionalDouble mm) {
            return mm.isPresent() ? with("stack", Length.ofMm(mm.getAsDouble())) : this;
        }
    }
}
