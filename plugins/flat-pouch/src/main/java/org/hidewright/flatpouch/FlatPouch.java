package org.hidewright.flatpouch;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.benchwork.Closing;
import org.hidewright.api.benchwork.HeldSize;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** Two panels sewn round a thing on three sides, open or closed by a flap. */
@Calculates("flat-pouch")
@Component(service = Calculator.class)
public final class FlatPouch implements Calculator<FlatPouch.Asking, FlatPouch.Made> {
    private static final Source GIRTH = Source.of("half-the-girth", Source.Kind.COMMON_PRACTICE);
    private static final Source GEOMETRY = Source.of("plane-geometry", Source.Kind.DEFINITION);

    static final Formula BETWEEN = Formula.of("between-seams", "B = w + t + e", GIRTH);
    static final Formula HEIGHT = Formula.of("panel-height", "H = m + t / 2 + h + a", GIRTH);
    static final Formula BEND = Formula.of("flap-bend", "L = π · (t / 2 + s + s / 2)", GEOMETRY);

    private static final NoticeKind NO_ROOM = NoticeKind.stop("no-room");
    private static final NoticeKind SHOWS_TOO_MUCH = NoticeKind.stop("stands-out-too-far");
    private static final NoticeKind TIGHT = NoticeKind.check("tight");
    private static final NoticeKind SLACK = NoticeKind.check("flap-slack");
    private static final NoticeKind SMALL_THINGS = NoticeKind.caution("small-things");
    private static final NoticeKind OWN_USE = NoticeKind.caution("own-use");
    private static final NoticeKind KNIFE = NoticeKind.caution("knife");

    /** How the bottom is shaped. */
    public enum Bottom {
        SQUARE,
        ROUND
    }

    /** What is asked. */
    public record Asking(
            @Asked HeldSize held,
            @Asked(preset = "square") Bottom bottom,

            @Asked(unit = "mm", min = "0 mm", max = "60 mm", usual = "2-8 mm", preset = "4 mm")
            Length ease,

            @Asked(
                    unit = "mm",
                    min = "0.6 mm",
                    max = "5 mm",
                    usual = "1.2-3 mm",
                    preset = "2 mm",
                    stock = "leather.thickness")
            Length thickness,

            @Asked(
                    unit = "mm",
                    min = "1.5 mm",
                    max = "10 mm",
                    usual = "2.7-5 mm",
                    preset = "3.85 mm",
                    stock = "pricking-irons.pitch")
            Length pitch,

            @Asked(preset = "{\"snap\":{}}") Closing closing) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.1 mm", by = "between-seams", lead = true)
            Length betweenSeams,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "between-seams", lead = true)
            Length panelWidth,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "panel-height", lead = true)
            Length backHeight,

            @Answered(unit = "mm", step = "0.1 mm", by = "flap-bend")
            Length flapBend,

            @Answered(unit = "mm", step = "0.5 mm", by = "flap-bend")
            Length slackEmpty,

            @Answered Item item) {}

    @Override
    public List<Formula> formulas() {
        return List.of(BETWEEN, HEIGHT, BEND);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, SHOWS_TOO_MUCH, TIGHT, SLACK, SMALL_THINGS, OWN_USE, KNIFE);
    }

    @Override
    public List<Source> sources() {
        return List.of(GIRTH, GEOMETRY);
    }

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Sizes sizes = Sizes.of(asked);
        if (asked.closing() instanceof Closing.Open open
                && open.standsOut().mm() > asked.held().height().mm() / 2) {
            return Outcome.refuse(SHOWS_TOO_MUCH.at(
                    "closing.open.stands-out", open.standsOut(), asked.held().height()));
        }
        sizes.explain(asked, working);
        try {
            return Outcome.of(
                    new Made(
                            Length.ofMm(sizes.betweenSeams()),
                            Length.ofMm(sizes.width()),
                            Length.ofMm(sizes.height() + sizes.flap().length()),
                            Length.ofMm(sizes.flap().fold()),
                            Length.ofMm(sizes.slack()),
                            new PouchParts(asked, sizes).item()),
                    told(asked, sizes));
        } catch (NoRoom e) {
            return Outcome.refuse(NO_ROOM.with(e.what(), e.part()));
        }
    }

    private static List<Notice> told(Asking asked, Sizes sizes) {
        List<Notice> told = new ArrayList<>();
        if (asked.ease().mm() < 1) {
            told.add(TIGHT.at("ease", asked.ease()));
        }
        if (sizes.slack() > 12) {
            told.add(SLACK.at("closing", Length.ofMm(sizes.slack())));
        }
        if (asked.held().isSmallPart()) {
            told.add(SMALL_THINGS.with());
        }
        told.add(OWN_USE.with());
        told.add(KNIFE.with());
        return told;
    }
}
