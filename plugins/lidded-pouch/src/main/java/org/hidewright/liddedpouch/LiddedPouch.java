package org.hidewright.liddedpouch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** A front, a back with a lid, and a gusset between them. */
@Calculates("lidded-pouch")
@Component(service = Calculator.class)
public final class LiddedPouch implements Calculator<LiddedPouch.Asking, LiddedPouch.Made> {
    private static final Source PRACTICE = Source.of("gussets", Source.Kind.COMMON_PRACTICE);
    private static final Source GEOMETRY = Source.of("plane-geometry", Source.Kind.DEFINITION);

    static final Formula PANEL_WIDTH = Formula.of("panel-width", "W = w + e + 2 · s + 2 · f", GEOMETRY);
    static final Formula FRONT_HEIGHT = Formula.of("front-height", "H = f + s + h + b", GEOMETRY);
    static final Formula GUSSET_WIDTH = Formula.of("gusset-width", "G = D + 2 · f - 3 · s + π · s / 2", GEOMETRY);
    static final Formula GUSSET_LENGTH = Formula.of("gusset-length", "L = P + 2 · x", GEOMETRY);
    static final Formula LID = Formula.of("lid-length", "A = D + q - 2 · r + 2 · π / 2 · (r + q / 2)", GEOMETRY);

    private static final NoticeKind NO_ROOM = NoticeKind.stop("no-room");
    private static final NoticeKind DEEPER = NoticeKind.check("deeper-than-thing");
    private static final NoticeKind SHOWS_TOO_MUCH = NoticeKind.stop("stands-out-too-far");
    private static final NoticeKind TIGHT = NoticeKind.check("tight");
    private static final NoticeKind STIFF = NoticeKind.check("stiff-gusset");
    private static final NoticeKind NO_RATING = NoticeKind.caution("ring-no-rating");
    private static final NoticeKind SMALL_THINGS = NoticeKind.caution("small-things");
    private static final NoticeKind OWN_USE = NoticeKind.caution("own-use");
    private static final NoticeKind KNIFE = NoticeKind.caution("knife");

    /** A ring at the back for a cord or strap. */
    public record Ring(
            @Asked(unit = "mm", min = "6 mm", max = "80 mm", usual = "12-30 mm", preset = "20 mm")
            Length inside,

            @Asked(unit = "mm", min = "1 mm", max = "8 mm", usual = "2-4 mm", preset = "3 mm")
            Length wire) {}

    /** What is asked. */
    public record Asking(
            @Asked HeldSize held,

            @Asked(unit = "mm", min = "0 mm", max = "60 mm", usual = "2-8 mm", preset = "4 mm")
            Length ease,

            @Asked(
                    unit = "mm",
                    min = "0.8 mm",
                    max = "5 mm",
                    usual = "1.6-3 mm",
                    preset = "2.2 mm",
                    stock = "leather.thickness")
            Length thickness,

            @Asked(
                    unit = "mm",
                    min = "0.5 mm",
                    max = "4 mm",
                    usual = "0.8-1.6 mm",
                    preset = "1 mm",
                    stock = "leather.thickness")
            Length gussetThickness,

            @Asked(
                    unit = "mm",
                    min = "1.5 mm",
                    max = "10 mm",
                    usual = "2.7-5 mm",
                    preset = "3.85 mm",
                    stock = "pricking-irons.pitch")
            Length pitch,

            @Asked(preset = "{\"stud\":{}}") Closing closing,

            @Asked(example = "{\"inside\":\"20 mm\",\"wire\":\"3 mm\"}")
            Optional<Ring> ring) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "panel-width", lead = true)
            Length panelWidth,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "lid-length", lead = true)
            Length backHeight,

            @Answered(unit = "mm", step = "0.1 mm", by = "gusset-width", lead = true)
            Length gussetWidth,

            @Answered(unit = "mm", step = "0.1 mm", by = "gusset-length", lead = true)
            Length gussetLength,

            @Answered(unit = "mm", step = "0.1 mm", by = "lid-length")
            Length lid,

            @Answered Item item) {}

    @Override
    public List<Formula> formulas() {
        return List.of(PANEL_WIDTH, FRONT_HEIGHT, GUSSET_WIDTH, GUSSET_LENGTH, LID);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, DEEPER, SHOWS_TOO_MUCH, TIGHT, STIFF, NO_RATING, SMALL_THINGS, OWN_USE, KNIFE);
    }

    @Override
    public List<Source> sources() {
        return List.of(PRACTICE, GEOMETRY);
    }

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Sizes sizes = Sizes.of(asked);
        if (asked.closing() instanceof Closing.Open open
                && open.standsOut().mm() > asked.held().height().mm() / 2) {
            return Outcome.refuse(SHOWS_TOO_MUCH.at(
                    "closing.open.stands-out", open.standsOut(), asked.held().height()));
        }
        try {
            LiddedParts parts = new LiddedParts(asked, sizes);
            Item item = parts.item();
            sizes.explain(asked, parts.seamLength(), working);
            return Outcome.of(
                    new Made(
                            Length.ofMm(sizes.width()),
                            Length.ofMm(sizes.height() + sizes.lid().length()),
                            Length.ofMm(sizes.gussetWidth()),
                            Length.ofMm(parts.seamLength() + 2 * LiddedParts.END),
                            Length.ofMm(sizes.lid().fold()),
                            item),
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
        if (Sizes.wantedDepth(asked) < sizes.depth()) {
            told.add(DEEPER.at("held.thickness", Length.ofMm(sizes.depth()), Length.ofMm(Sizes.wantedDepth(asked))));
        }
        if (asked.gussetThickness().mm() > sizes.depth() / 12) {
            told.add(STIFF.at("gusset-thickness", asked.gussetThickness(), Length.ofMm(sizes.depth())));
        }
        if (asked.ring().isPresent()) {
            told.add(NO_RATING.at("ring"));
        }
        if (asked.held().isSmallPart()) {
            told.add(SMALL_THINGS.with());
        }
        told.add(OWN_USE.with());
        told.add(KNIFE.with());
        return told;
    }
}
