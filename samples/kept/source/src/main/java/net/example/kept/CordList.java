package net.example.kept;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Money;
import org.osgi.service.component.annotations.Component;

/** How much cord a set of things takes: every kind of question and answer that the contract had when this was built. */
@Component(service = Calculator.class)
@Calculates("kept-cord")
public final class CordList implements Calculator<CordList.Asking, CordList.Told> {
    /** How often the cord goes there. */
    public enum Way {
        SINGLE,
        DOUBLE
    }

    /** How an end is made. */
    public sealed interface End {
        /** Cut and sealed. */
        record Plain() implements End {}

        /** Wound round a core. */
        record Wound(
                @Asked(unit = "mm", min = "1 mm", max = "40 mm", usual = "3-20 mm", example = "8 mm") Length core,
                @Asked(min = "1", max = "20", preset = "3") int turns) implements End {}
    }

    /** A thing on a cord. */
    public record Thing(
            @RowId String id,
            @Asked(unit = "mm", min = "20 mm", max = "3 m", usual = "100-900 mm", example = "250 mm") Length length,
            @Asked(min = "1", max = "99", preset = "1") int count) {}

    /** The cord; its keys are columns of the table that this bundle brings. */
    public record Cord(
            @Asked(unit = "mm", min = "0.5 mm", max = "12 mm", usual = "1-5 mm", example = "2 mm") Length diameter,
            @Asked(unit = "g/cm3", min = "0.1 g/cm3", max = "3 g/cm3", usual = "0.8-1.5 g/cm3", example = "1.4 g/cm3")
            Density density) {}

    /** What is asked. */
    public record Asking(
            @Asked Cord cord,
            @Asked(preset = "single") Way way,
            @Asked(preset = "{\"plain\":{}}") End end,
            @Asked(min = "0 %", max = "100 %", usual = "0-20 %", preset = "10 %") double waste,
            @Asked(preset = "no") boolean waxed,
            @Asked(min = "0", example = "0.40 EUR") Optional<Money> pricePerMetre,
            @Asked(example = "2026-03-01") Optional<LocalDate> bought,
            @Asked(example = "red") Optional<String> colour,
            @Asked(preset = "[{\"id\":\"hand-lens\",\"length\":\"600 mm\"},{\"id\":\"jars\",\"length\":\"250 mm\",\"count\":3}]")
            List<Thing> things) {}

    /** What one thing takes. */
    public record Line(
            @RowId String id,
            @Answered(unit = "mm", step = "1 mm", round = Rounding.UP, by = "cord-each") Length each,
            @Answered(unit = "mm", step = "1 mm", round = Rounding.UP, by = "cord-each") Length together) {}

    /** What is answered. */
    public record Told(
            @Answered(unit = "mm", step = "1 mm", round = Rounding.UP, by = "cord-all", lead = true) Length cord,
            @Answered(unit = "mm2", by = "cord-section") Area section,
            @Answered(unit = "g", step = "0.1 g", by = "cord-mass") Mass mass,
            @Answered(by = "cord-all") int pieces,
            @Answered Phrase made,
            @Answered(by = "cord-price") Optional<Money> price,
            @Answered List<Line> lines) {}

    private static final Source CIRCLE = Source.of("circle", Source.Kind.DEFINITION);
    private static final Source HABIT = Source.of("spare", Source.Kind.COMMON_PRACTICE);

    static final Formula EACH = Formula.of("cord-each", "e = n · l + 2 · π · (D + d) · k", CIRCLE);
    static final Formula ALL = Formula.of("cord-all", "L = S · (1 + w)", HABIT);
    static final Formula SECTION = Formula.of("cord-section", "A = π · d^2 / 4", CIRCLE);
    static final Formula MASS = Formula.of("cord-mass", "M = A · L · ρ", CIRCLE);
    static final Formula PRICE = Formula.of("cord-price", "P = p · L", CIRCLE);

    static final NoticeKind NOTHING = NoticeKind.stop("nothing");
    static final NoticeKind TIGHT_CORE = NoticeKind.stop("tight-core");
    static final NoticeKind LITTLE_WASTE = NoticeKind.check("little-waste");
    static final NoticeKind SHORT = NoticeKind.note("short-piece");
    static final NoticeKind HOT_WAX = NoticeKind.caution("hot-wax");

    @Override
    public List<Formula> formulas() {
        return List.of(EACH, ALL, SECTION, MASS, PRICE);
    }

    @Override
    public List<Source> sources() {
        return List.of(CIRCLE, HABIT);
    }

    @Override
    public List<String> phrases() {
        return List.of("made");
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NOTHING, TIGHT_CORE, LITTLE_WASTE, SHORT, HOT_WAX);
    }

    @Override
    public Outcome<Told> calculate(Asking asked, Working working) {
        if (asked.things().isEmpty()) {
            return Outcome.refuse(NOTHING.at("things"));
        }
        try {
            return Outcome.of(told(asked, working), noticed(asked));
        } catch (Refusal refused) {
            return refused.outcome();
        }
    }

    private static Told told(Asking asked, Working working) throws Refusal {
        Length ends = ends(asked);
        int times = asked.way() == Way.DOUBLE ? 2 : 1;
        List<Line> lines = new ArrayList<>();
        Length sum = Length.ofMm(0);
        int pieces = 0;
        for (Thing thing : asked.things()) {
            Length each = thing.length().times(times).plus(ends);
            Length together = each.times(thing.count());
            lines.add(new Line(thing.id(), each, together));
            sum = sum.plus(together);
            pieces += thing.count();
        }
        Length all = sum.times(1 + asked.waste());
        Length diameter = asked.cord().diameter();
        Area section = Area.ofMm2(Math.PI * diameter.mm() * diameter.mm() / 4);
        double cubicCentimetres = section.mm2() * all.mm() / 1000;
        Mass mass = Mass.ofGrams(cubicCentimetres * asked.cord().density().gramsPerCm3());
        working.step(ALL, all, "S", sum, "w", asked.waste());
        working.step(SECTION, section, "d", diameter);
        working.step(MASS, mass, "A", section, "L", all, "ρ", asked.cord().density());
        return new Told(
                all,
                section,
                mass,
                pieces,
                Phrase.of("made", asked.way(), asked.colour().orElse("–")),
                asked.pricePerMetre().map(price -> price.times(all.mm() / 1000)),
                lines);
    }

    /** What both ends of a piece take beyond its length. */
    private static Length ends(Asking asked) throws Refusal {
        if (!(asked.end() instanceof End.Wound wound)) {
            return Length.ofMm(0);
        }
        Length diameter = asked.cord().diameter();
        if (wound.core().compareTo(diameter) < 0) {
            throw new Refusal(TIGHT_CORE.at("end.wound.core", wound.core(), diameter));
        }
        return Length.ofMm(2 * Math.PI * wound.core().plus(diameter).mm() * wound.turns());
    }

    private static List<Notice> noticed(Asking asked) {
        List<Notice> noticed = new ArrayList<>();
        if (asked.waste() < 0.05) {
            noticed.add(LITTLE_WASTE.at("waste", asked.waste()));
        }
        for (Thing thing : asked.things()) {
            if (thing.length().mm() < 50) {
                noticed.add(SHORT.at("things[" + thing.id() + "].length", thing.length()));
            }
        }
        if (asked.waxed()) {
            noticed.add(HOT_WAX.with());
        }
        return noticed;
    }
}
