package org.hidewright.held;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** How large a thing is that is to be held, measured or by name. */
@Calculates("held-thing")
@Component(service = Calculator.class)
public final class HeldThing implements Calculator<HeldThing.Asking, HeldThing.Given> {
    private static final Source MEASURED = Source.of("the-thing-itself", Source.Kind.MEASURED_HERE);
    private static final Source CARDS = Source.of("iso-7810", Source.Kind.PUBLISHED);
    private static final Source PAPER = Source.of("iso-216", Source.Kind.PUBLISHED);
    private static final Source CELLS = Source.of("iec-60086", Source.Kind.PUBLISHED);
    private static final Source COINS = Source.of("coins", Source.Kind.PUBLISHED);

    private static final NoticeKind BUTTON_CELLS = NoticeKind.caution("button-cells");
    private static final NoticeKind SMALL_THINGS = NoticeKind.caution("small-things");
    private static final NoticeKind OWN_USE = NoticeKind.note("own-use");

    /** Of the cylinder that a small part is measured by, ISO 8124-1; from memory. */
    private static final double SMALL_PART_MM = 31.7;

    /** What is asked. */
    public record Asking(
            @Asked(example = "{\"cards\":{\"card\":\"id-1\",\"count\":\"4\"}}")
            Thing thing) {}

    /** What is answered: the greatest it can be. */
    public record Given(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "the-thing-itself", lead = true)
            Length width,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "the-thing-itself", lead = true)
            Length height,

            @Answered(unit = "mm", step = "0.01 mm", round = Rounding.UP, by = "the-thing-itself", lead = true)
            Length thickness,

            @Answered boolean round) {}

    @Override
    public List<NoticeKind> notices() {
        return List.of(BUTTON_CELLS, SMALL_THINGS, OWN_USE);
    }

    @Override
    public List<Source> sources() {
        return List.of(MEASURED, CARDS, PAPER, CELLS, COINS);
    }

    @Override
    public Outcome<Given> calculate(Asking asked, Working working) {
        Bulk bulk = asked.thing().bulk();
        for (String answer : List.of("width", "height", "thickness")) {
            working.source(answer, source(asked.thing()));
        }
        return Outcome.of(
                new Given(
                        Length.ofMm(bulk.width()),
                        Length.ofMm(bulk.height()),
                        Length.ofMm(bulk.thickness()),
                        bulk.round()),
                told(asked.thing(), bulk));
    }

    private static List<Notice> told(Thing thing, Bulk bulk) {
        List<Notice> told = new ArrayList<>();
        if (thing instanceof Thing.Cells cells && cells.cell().isButton()) {
            told.add(BUTTON_CELLS.with());
        } else if (isSmallPart(bulk)) {
            told.add(SMALL_THINGS.with());
        }
        if (thing instanceof Thing.Measured || thing instanceof Thing.MeasuredRound) {
            told.add(OWN_USE.with());
        }
        return told;
    }

    /** Whichever way it is turned. */
    private static boolean isSmallPart(Bulk bulk) {
        double[] sides = DoubleStream.of(bulk.width(), bulk.height(), bulk.thickness())
                .sorted()
                .toArray();
        return sides[1] < SMALL_PART_MM && sides[2] < 2 * SMALL_PART_MM;
    }

    private static Source source(Thing thing) {
        if (thing instanceof Thing.Cards) {
            return CARDS;
        } else if (thing instanceof Thing.Sheets) {
            return PAPER;
        } else if (thing instanceof Thing.Cells) {
            return CELLS;
        }
        return thing instanceof Thing.Coins ? COINS : MEASURED;
    }
}
