package org.hidewright.bookcover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** An outer cover with a sleeve at either end that a book’s boards slide into. */
@Calculates("book-cover")
@Component(service = Calculator.class)
public final class BookCover implements Calculator<BookCover.Asking, BookCover.Made> {
    private static final Source PRACTICE = Source.of("covers", Source.Kind.COMMON_PRACTICE);
    private static final Source GEOMETRY = Source.of("plane-geometry", Source.Kind.DEFINITION);

    static final Formula SPINE = Formula.of("spine", "S = t + π · (q / 3 + q / 2)", GEOMETRY);
    static final Formula WIDTH = Formula.of("cover-width", "W = 2 · (w + m + e / 2) + S", PRACTICE);
    static final Formula HEIGHT = Formula.of("cover-height", "H = h + e + 2 · m", PRACTICE);
    static final Formula LINING = Formula.of("lining-shorter", "d = π · (q + n) / 2", GEOMETRY);

    private static final NoticeKind NO_ROOM = NoticeKind.stop("no-room");
    private static final NoticeKind SLEEVES_MEET = NoticeKind.stop("sleeves-meet");
    private static final NoticeKind SHORT_SLEEVE = NoticeKind.check("short-sleeve");
    private static final NoticeKind TIGHT = NoticeKind.check("tight");
    private static final NoticeKind THICK_TURN = NoticeKind.check("thick-turn");
    private static final NoticeKind KNIFE = NoticeKind.caution("knife");

    /** How the edge of the outer cover is finished. */
    public sealed interface Edge {
        /** Cut, and burnished or painted. */
        record Cut() implements Edge {}

        /** Skived and turned over to the inside. */
        record Turned(
                @Asked(unit = "mm", min = "4 mm", max = "25 mm", usual = "8-12 mm", preset = "10 mm", picture = "turn")
                Length turn,

                @Asked(unit = "mm", min = "0.2 mm", max = "2 mm", usual = "0.4-0.8 mm", preset = "0.6 mm")
                Length skivedTo)
                implements Edge {}
    }

    /** What is asked. */
    public record Asking(
            @Asked(from = "held-thing.sheets") HeldSize held,

            @Asked(unit = "mm", min = "0 mm", max = "20 mm", usual = "2-5 mm", preset = "3 mm")
            Length ease,

            @Asked(unit = "%", min = "10 %", max = "95 %", usual = "30-60 %", preset = "45 %", picture = "sleeve")
            double sleeve,

            @Asked(
                    unit = "mm",
                    min = "0.6 mm",
                    max = "4 mm",
                    usual = "1.2-2.4 mm",
                    preset = "1.8 mm",
                    stock = "leather.thickness")
            Length thickness,

            @Asked(
                    unit = "mm",
                    min = "0.4 mm",
                    max = "3 mm",
                    usual = "0.8-1.4 mm",
                    preset = "1.1 mm",
                    stock = "leather.thickness")
            Length sleeveThickness,

            @Asked(
                    unit = "mm",
                    min = "0.2 mm",
                    max = "2 mm",
                    usual = "0.4-0.8 mm",
                    example = "0.6 mm",
                    stock = "leather.thickness")
            Optional<Length> liningThickness,

            @Asked(preset = "{\"cut\":{}}") Edge edge,

            @Asked(
                    unit = "mm",
                    min = "1.5 mm",
                    max = "10 mm",
                    usual = "2.7-5 mm",
                    preset = "3.85 mm",
                    stock = "pricking-irons.pitch")
            Length pitch) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "cover-width", lead = true)
            Length coverWidth,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "cover-height", lead = true)
            Length coverHeight,

            @Answered(unit = "mm", step = "0.1 mm", by = "spine")
            Length spine,

            @Answered(unit = "mm", step = "0.1 mm", by = "lining-shorter")
            Optional<Length> liningShorter,

            @Answered Item item) {}

    @Override
    public List<Formula> formulas() {
        return List.of(SPINE, WIDTH, HEIGHT, LINING);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, SLEEVES_MEET, SHORT_SLEEVE, TIGHT, THICK_TURN, KNIFE);
    }

    @Override
    public List<Source> sources() {
        return List.of(PRACTICE, GEOMETRY);
    }

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Sizes sizes = Sizes.of(asked);
        if (2 * sizes.sleeve() > sizes.width() - sizes.spine() - 4) {
            return Outcome.refuse(
                    SLEEVES_MEET.at("sleeve", reach(asked), asked.held().width()));
        }
        sizes.explain(asked, working);
        try {
            return Outcome.of(
                    new Made(
                            Length.ofMm(sizes.width()),
                            Length.ofMm(sizes.height()),
                            Length.ofMm(sizes.spine()),
                            asked.liningThickness().map(lining -> Length.ofMm(sizes.liningShorter())),
                            new CoverParts(asked, sizes).item()),
                    told(asked));
        } catch (NoRoom e) {
            return Outcome.refuse(NO_ROOM.with(e.what(), e.part()));
        }
    }

    private static Length reach(Asking asked) {
        return Length.ofMm(asked.sleeve() * asked.held().width().mm());
    }

    private static List<Notice> told(Asking asked) {
        List<Notice> told = new ArrayList<>();
        if (asked.sleeve() < 0.25) {
            told.add(SHORT_SLEEVE.at("sleeve", reach(asked), asked.held().width()));
        }
        if (asked.ease().mm() < 1.5) {
            told.add(TIGHT.at("ease", asked.ease()));
        }
        if (asked.edge() instanceof Edge.Turned turned
                && turned.skivedTo().mm() > asked.thickness().mm() / 2) {
            told.add(THICK_TURN.at("edge.turned.skived-to", turned.skivedTo(), asked.thickness()));
        }
        told.add(KNIFE.with());
        return told;
    }
}
