package org.hidewright.command.kit;

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
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;

/** A calculator with a group, variants, rows and choices, for tests of the commands; its numbers mean nothing. */
@Calculates("kit-strap")
public final class Strap implements Calculator<Strap.Asks, Strap.Gives> {
    private static final Source HABIT = Source.of("habit", Source.Kind.COMMON_PRACTICE);
    private static final Formula TWICE = Formula.of("twice", "L = 2 · t", HABIT);
    private static final NoticeKind THICK = NoticeKind.check("thick");
    private static final NoticeKind NO_WAY = NoticeKind.stop("no-way");

    public enum Tannage {
        VEGETABLE,
        CHROME
    }

    public sealed interface Core permits RoundBar, FlatRing {}

    public record RoundBar(
            @Asked(unit = "mm", example = "6 mm") Length diameter,
            @Asked(preset = "1") int turns) implements Core {}

    public record FlatRing(
            @Asked(unit = "mm", example = "20 mm") Length inside) implements Core {}

    public sealed interface End permits Blunt, Folded {}

    public record Blunt(@Asked(unit = "mm", preset = "0 mm") Length allowance) implements End {}

    public record Folded(
            @Asked(unit = "mm", example = "10 mm") Length over) implements End {}

    public record Edge(
            @Asked(unit = "mm", example = "1 mm") Length bevel,
            @Asked(preset = "yes") boolean burnished) {}

    public sealed interface Section permits Run, Bend {}

    public record Run(
            @RowId String id,
            @Asked(unit = "mm", example = "40 mm") Length length) implements Section {}

    public record Bend(
            @RowId String id,
            @Asked(unit = "deg", preset = "180 deg") Angle turn) implements Section {}

    public record Asks(
            @Asked(unit = "mm", min = "0.5 mm", max = "12 mm", usual = "1-4 mm", example = "2 mm")
            Length thickness,

            @Asked(preset = "vegetable") Tannage tannage,
            @Asked Core core,
            @Asked Edge edge,
            @Asked List<Section> sections,
            @Asked(preset = "\"blunt\"") End end,

            @Asked(preset = "{\"folded\": {\"over\": \"12 mm\"}}")
            End start,

            @Asked(preset = "[{\"id\": \"a\", \"bend\": {}}]", example = "[{\"bend\": {}}]")
            List<Section> keeper,

            @Asked(example = "[{\"run\": {\"length\": \"5 mm\"}}]")
            Optional<List<Section>> lining,

            @Asked(unit = "mm", preset = "3 mm; 4 mm") List<Length> marks,
            @Asked Optional<String> note) {}

    public record Row(
            @RowId String id,
            @Answered(unit = "mm", step = "0.1 mm") Length at) {}

    public record Gives(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "twice", lead = true)
            Length cut,

            @Answered Phrase said,
            @Answered List<Row> rows) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        if (asks.note().filter(note -> note.equals("refuse")).isPresent()) {
            return Outcome.refuse(NO_WAY.at("note"));
        }
        Length cut = asks.thickness().times(2);
        working.step(TWICE, cut, "t", asks.thickness());
        List<Row> rows = asks.sections().stream()
                .map(section -> section instanceof Run run
                        ? new Row(run.id(), run.length())
                        : new Row(((Bend) section).id(), cut))
                .toList();
        Gives gives = new Gives(cut, Phrase.of(asks.core() instanceof RoundBar ? "round" : "flat"), rows);
        return asks.thickness().mm() > 5
                ? Outcome.of(gives, List.of(THICK.at("thickness", asks.thickness())))
                : Outcome.of(gives);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(TWICE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(THICK, NO_WAY);
    }

    @Override
    public List<String> phrases() {
        return List.of("round", "flat");
    }
}
