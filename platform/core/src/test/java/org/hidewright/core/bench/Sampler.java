package org.hidewright.core.bench;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Size;

/** A calculator that asks every kind of question and answers every kind of answer, for tests of the host. */
@Calculates(value = "sampler", version = 2)
public final class Sampler implements Calculator<Sampler.Asks, Sampler.Gives> {
    public static final Source HABIT = Source.of("habit", Source.Kind.COMMON_PRACTICE);
    public static final Source TABLE = Source.of("table", Source.Kind.FROM_MEMORY);
    public static final Formula DOUBLE = Formula.of("double", "L = 2 · t", HABIT);
    public static final NoticeKind THICK = NoticeKind.check("thick");
    public static final NoticeKind SHARP = NoticeKind.caution("sharp");
    public static final NoticeKind NO_WAY = NoticeKind.stop("no-way");

    public enum Tannage {
        VEGETABLE,
        CHROME,
        OIL_TANNED
    }

    public sealed interface Core permits RoundBar, FlatRing, OwnLayers {}

    public record RoundBar(
            @Asked(unit = "mm", min = "1 mm", max = "30 mm", example = "6 mm")
            Length diameter,

            @Asked(min = "1", max = "5", preset = "1") int turns)
            implements Core {}

    public record FlatRing(
            @Asked(unit = "mm", example = "20 mm") Length inside) implements Core {}

    public record OwnLayers(
            @Asked(min = "1", max = "6", example = "2") int layers) implements Core {}

    public record Layer(
            @RowId String id,

            @Asked(unit = "mm", min = "0.2 mm", max = "10 mm", usual = "1-4 mm", example = "2 mm")
            Length thickness,

            @Asked(preset = "no") boolean skived,
            @Asked Optional<String> note) {}

    public sealed interface Section permits Run, Bend {}

    public record Run(
            @RowId String id,
            @Asked(unit = "mm", example = "100 mm") Length length) implements Section {}

    public record Bend(
            @RowId String id,
            @Asked(unit = "deg", preset = "180 deg") Angle turn) implements Section {}

    public record Edge(
            @Asked(unit = "mm", min = "0", max = "3 mm", preset = "1 mm")
            Length bevel,

            @Asked(preset = "chrome") Tannage tannage) {}

    public record Asks(
            @Asked(unit = "mm", min = "0.4 mm", max = "12 mm", usual = "1-4 mm", example = "2 mm")
            Length thickness,

            @Asked(unit = "deg", min = "0 deg", max = "360 deg", preset = "180 deg")
            Angle turn,

            @Asked(unit = "dm²", max = "600 dm²", preset = "10 dm²")
            Area panel,

            @Asked(unit = "g", preset = "50 g") Mass weight,

            @Asked(unit = "g/cm³", min = "0.2", usual = "0.6-1.2", preset = "0.86")
            Density density,

            @Asked(unit = "mm", min = "1 mm", max = "2 m", preset = "105 x 148 mm")
            Size cover,

            @Asked(min = "1", max = "20", usual = "2-9", preset = "7")
            int holes,

            @Asked(unit = "%", min = "0 %", max = "100 %", usual = "0-90 %", preset = "35 %")
            double shrink,

            @Asked(preset = "vegetable") Tannage tannage,
            @Asked(preset = "no") boolean lined,
            @Asked(preset = "plain") String stamp,

            @Asked(unit = "mm", min = "0", max = "50 mm", preset = "3 mm; 4 mm")
            List<Length> marks,

            @Asked(preset = "1; 2") List<Integer> counts,
            @Asked(preset = "chrome; vegetable") List<Tannage> tannages,
            @Asked(unit = "mm", preset = "1 x 2 mm") List<Size> windows,
            @Asked(preset = "yes; no") List<Boolean> faces,
            @Asked(preset = "belly; bend") List<String> places,

            @Asked(preset = "{\"is\": \"round-bar\", \"round-bar\": {\"diameter\": \"6 mm\"}}")
            Core core,

            @Asked Edge edge,

            @Asked(preset = "[{\"id\": \"strap\", \"thickness\": \"3 mm\"}]")
            List<Layer> layers,

            @Asked(preset = "[{\"id\": \"b1\", \"bend\": {}}]")
            List<Section> sections,

            @Asked(unit = "mm") Optional<Length> glue) {}

    public record Row(
            @RowId String id,

            @Answered(unit = "mm", step = "0.1 mm", by = "double")
            Length at,

            @Answered Optional<Phrase> remark,
            @Answered double factor) {}

    public record Sums(
            @Answered(unit = "mm") Length sum, @Answered int many) {}

    public record Gives(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "double", lead = true)
            Length cut,

            @Answered(unit = "deg", step = "1 deg") Angle turn,
            @Answered(unit = "dm²", step = "0.01 dm²") Area panel,
            @Answered(unit = "g") Mass weight,
            @Answered(unit = "g/cm³") Density density,
            @Answered(unit = "mm") Size cover,
            @Answered int holes,
            @Answered(unit = "%") double shrink,
            @Answered Tannage tannage,
            @Answered boolean lined,
            @Answered(by = "table") String stamp,
            @Answered(unit = "mm") List<Length> marks,
            @Answered List<Tannage> tannages,
            @Answered(lead = true) Phrase said,
            @Answered Drawing sketch,
            @Answered Sums sums,
            @Answered List<Row> rows,
            @Answered(unit = "mm") Optional<Length> glue) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        if (asks.stamp().equals("refuse")) {
            return Outcome.refuse(NO_WAY.at("stamp", asks.stamp()));
        }
        Length cut = asks.thickness().times(2);
        working.step(DOUBLE, cut, "t", asks.thickness());
        List<Row> rows = asks.layers().stream()
                .map(layer ->
                        new Row(layer.id(), layer.thickness(), layer.note().map(note -> Phrase.of("noted", note)), 0.5))
                .toList();
        Length sum = asks.layers().stream().map(Layer::thickness).reduce(Length.ZERO, Length::plus);
        Drawing sketch = Drawing.builder()
                .line(Role.CUT, Point.of(0, 0), Point.of(10, 5))
                .label(Phrase.of("noted", asks.stamp()), Point.of(0, 5), Anchor.BOTTOM, 3)
                .dimension(Point.of(0, 0), Point.of(10, 0), -4, cut, 3)
                .build();
        Gives gives = new Gives(
                cut,
                asks.turn(),
                asks.panel(),
                asks.weight(),
                asks.density(),
                asks.cover(),
                asks.holes(),
                asks.shrink(),
                asks.tannage(),
                asks.lined(),
                asks.stamp(),
                asks.marks(),
                asks.tannages(),
                Phrase.of("said", cut, asks.tannage(), asks.holes(), Phrase.of("noted", asks.stamp()), asks.cover()),
                sketch,
                new Sums(sum, asks.layers().size()),
                rows,
                asks.glue());
        return asks.thickness().mm() > 5
                ? Outcome.of(gives, List.of(THICK.at("thickness", asks.thickness()), SHARP.with()))
                : Outcome.of(gives);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(DOUBLE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(THICK, SHARP, NO_WAY);
    }

    @Override
    public List<String> phrases() {
        return List.of("said", "noted");
    }

    @Override
    public List<Source> sources() {
        return List.of(TABLE);
    }
}
