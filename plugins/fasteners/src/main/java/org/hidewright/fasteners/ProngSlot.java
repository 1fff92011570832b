package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.Comparator;
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
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** The slot in the fold of a strap that the prong of a buckle stands in. */
@Calculates("prong-slot")
@Component(service = Calculator.class)
public final class ProngSlot implements Calculator<ProngSlot.Prong, ProngSlot.Slot> {
    private static final Formula LENGTH = Formula.of("slot-length", "s = b + 2 · t", Origins.SLOT_HABIT);
    private static final Formula WIDTH = Formula.of("slot-width", "w = p + e", Origins.SLOT_HABIT);
    private static final Formula LEFT = Formula.of("slot-left", "q = (W - w) / 2", Origins.GEOMETRY);

    private static final NoticeKind NO_SLOT_PUNCH = NoticeKind.check("no-slot-punch-fits");
    private static final NoticeKind LITTLE_LEFT = NoticeKind.check("slot-leaves-little");
    private static final NoticeKind WIDER_THAN_STRAP = NoticeKind.stop("slot-wider-than-strap");

    /** Half a millimetre either side, so that the prong moves (common practice). */
    private static final Length EASE = Length.ofMm(1);
    /** Beside a slot at least so many times its width stays, as beside a hole; ours, after the habit for holes. */
    private static final double LEFT_WIDTHS = 1.5;

    /** A punch two of these larger than the slot lets the prong wander. */
    private static final double LOOSE_MM = 6;

    private static final String FOLD = "slot-fold";
    private static final double LETTER_MM = 3;

    /** What is asked. */
    public record Prong(
            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "60 mm",
                    usual = "3-20 mm",
                    example = "12 mm",
                    picture = "prong#base")
            Length prongBase,

            @Asked(
                    unit = "mm",
                    min = "0.5 mm",
                    max = "30 mm",
                    usual = "2-6 mm",
                    example = "3 mm",
                    picture = "prong#width")
            Length prongWidth,

            @Asked(unit = "mm", min = "0.3 mm", max = "20 mm", usual = "1-5 mm", example = "3 mm")
            Length thickness,

            @Asked(unit = "mm", min = "3 mm", max = "1 m", usual = "10-50 mm", example = "25 mm")
            Length strapWidth,

            @Asked(example = "[{\"id\":\"slot-25\",\"length\":\"25 mm\",\"width\":\"4 mm\"}]")
            Optional<List<SlotPunch>> slotPunches,

            @Asked(preset = "no") boolean bearsLoad) {}

    /** A slot punch that is there; the table of slot punches can be taken for them. */
    public record SlotPunch(
            @RowId String id,

            @Asked(unit = "mm", min = "1 mm", max = "100 mm", example = "25 mm")
            Length length,

            @Asked(unit = "mm", min = "0.5 mm", max = "40 mm", example = "4 mm")
            Length width) {}

    /** What is answered. */
    public record Slot(
            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "slot-length", lead = true)
            Length length,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "slot-width", lead = true)
            Length width,

            @Answered Optional<String> punch,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "slot-left")
            Length leftBeside,

            @Answered Drawing slot) {}

    @Override
    public Outcome<Slot> calculate(Prong asked, Working working) {
        Length length = asked.prongBase().plus(asked.thickness().times(2));
        Length width = asked.prongWidth().plus(EASE);
        working.step(LENGTH, length, "b", asked.prongBase(), "t", asked.thickness());
        working.step(WIDTH, width, "p", asked.prongWidth(), "e", EASE);
        if (width.mm() >= asked.strapWidth().mm()) {
            return Outcome.refuse(WIDER_THAN_STRAP.at("strap-width", width, asked.strapWidth()));
        }
        List<Notice> notices = new ArrayList<>();
        List<SlotPunch> punches = asked.slotPunches().orElse(List.of());
        Optional<SlotPunch> punch = nearest(punches, length, width);
        if (punch.isEmpty() && !punches.isEmpty()) {
            notices.add(NO_SLOT_PUNCH.at("slot-punches", length, width));
        }
        Length cut = punch.map(SlotPunch::width).orElse(width);
        Length left = asked.strapWidth().minus(cut).times(0.5);
        working.step(LEFT, left, "W", asked.strapWidth(), "w", cut);
        if (left.mm() < LEFT_WIDTHS * cut.mm() - 1e-9) {
            notices.add(LITTLE_LEFT.at("strap-width", left, cut.times(LEFT_WIDTHS)));
        }
        notices.add(Cautions.STRUCK_TOOLS.with());
        if (asked.bearsLoad()) {
            notices.add(Cautions.NO_LOAD.with());
        }
        return Outcome.of(
                new Slot(
                        length,
                        width,
                        punch.map(SlotPunch::id),
                        left,
                        drawn(punch.map(SlotPunch::length).orElse(length), cut, asked.strapWidth())),
                notices);
    }

    /** The shortest that is long and wide enough and not so large that the prong wanders. */
    private static Optional<SlotPunch> nearest(List<SlotPunch> punches, Length length, Length width) {
        return punches.stream()
                .filter(punch -> punch.length().mm() >= length.mm() - 1e-9
                        && punch.width().mm() >= width.mm() - EASE.mm() / 2 - 1e-9
                        && punch.length().mm() <= length.mm() + LOOSE_MM
                        && punch.width().mm() <= width.mm() + LOOSE_MM / 2)
                .min(Comparator.<SlotPunch>comparingDouble(
                                punch -> punch.length().mm())
                        .thenComparingDouble(punch -> punch.width().mm()));
    }

    private static Drawing drawn(Length length, Length width, Length strap) {
        double half = strap.mm() / 2;
        double straight = Math.max(0, length.mm() - width.mm()) / 2;
        double radius = width.mm() / 2;
        double end = length.mm() / 2 + 10;
        return Drawing.builder()
                .line(Role.CUT, Point.of(-end, -half), Point.of(end, -half))
                .line(Role.CUT, Point.of(-end, half), Point.of(end, half))
                .line(Role.FOLD, Point.of(0, -half), Point.of(0, half))
                .add(Path.from(Point.of(-straight, -radius))
                        .lineTo(straight, -radius)
                        .arcAround(Point.of(straight, 0), Math.PI)
                        .lineTo(-straight, radius)
                        .arcAround(Point.of(-straight, 0), Math.PI)
                        .closed(Role.INNER_CUT))
                .dimension(
                        Point.of(-length.mm() / 2, 0),
                        Point.of(length.mm() / 2, 0),
                        -half - LETTER_MM,
                        length,
                        LETTER_MM)
                .dimension(Point.of(end, -radius), Point.of(end, radius), -LETTER_MM, width, LETTER_MM)
                .label(Phrase.of(FOLD), Point.of(0, half + 1), Anchor.BOTTOM, LETTER_MM)
                .build();
    }

    @Override
    public List<Formula> formulas() {
        return List.of(LENGTH, WIDTH, LEFT);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_SLOT_PUNCH, LITTLE_LEFT, WIDER_THAN_STRAP, Cautions.STRUCK_TOOLS, Cautions.NO_LOAD);
    }

    @Override
    public List<String> phrases() {
        return List.of(FOLD);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.SLOT_HABIT);
    }
}
