package net.example.kept;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.benchwork.Allowances;
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
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** A template: a case of two panels for a lens, with a pocket for its cloth and a tab for a ring. */
@Component(service = Calculator.class)
@Calculates("kept-case")
public final class LensCase implements Calculator<LensCase.Asking, LensCase.Made> {
    /** What is asked. */
    public record Asking(
            @Asked HeldSize held,
            @Asked(unit = "mm", min = "0 mm", max = "30 mm", usual = "2-8 mm", preset = "4 mm") Length ease,
            @Asked(unit = "mm", min = "0.8 mm", max = "4 mm", usual = "1.2-2.5 mm", preset = "2 mm") Length leather,
            @Asked(unit = "mm", min = "1.5 mm", max = "10 mm", usual = "2.7-5 mm", preset = "4 mm") Length pitch,
            @Asked(preset = "{\"snap\":{}}") Closing closing,
            @Asked(unit = "mm", min = "8 mm", max = "40 mm", usual = "10-25 mm", example = "20 mm") Optional<Length> ring) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "case-width", lead = true) Length width,
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "case-height", lead = true) Length height,
            @Answered(unit = "cm2", step = "0.1 cm2", round = Rounding.UP, by = "case-front") Area front,
            @Answered Item item) {}

    /** From the seam to the edge. */
    static final double MARGIN_MM = 4;

    private static final Source PRACTICE = Source.of("case-practice", Source.Kind.COMMON_PRACTICE);
    private static final Source GEOMETRY = Source.of("case-geometry", Source.Kind.DEFINITION);

    static final Formula WIDTH = Formula.of("case-width", "W = w + t + e + 2 · m", PRACTICE);
    static final Formula HEIGHT = Formula.of("case-height", "H = h + t / 2 + m", PRACTICE);
    static final Formula FRONT = Formula.of("case-front", "A = W · H - (2 - π / 2) · r^2", GEOMETRY);

    static final NoticeKind NO_ROOM = NoticeKind.stop("case-no-room");
    static final NoticeKind CLOTH = NoticeKind.note("cloth");
    static final NoticeKind KNIFE = NoticeKind.caution("knife");

    @Override
    public List<Formula> formulas() {
        return List.of(WIDTH, HEIGHT, FRONT);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, CLOTH, KNIFE);
    }

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Length margin = Length.ofMm(MARGIN_MM);
        Length width = Length.ofMm(Allowances.flatPanels(
                        asked.held().width().mm(), asked.held().thickness().mm(), asked.ease().mm())
                + 2 * MARGIN_MM);
        Length height = asked.held().height().plus(asked.held().thickness().times(0.5)).plus(margin);
        Length radius = width.times(1.0 / 4);
        Area front = Area.ofMm2(width.mm() * height.mm() - (2 - Math.PI / 2) * radius.mm() * radius.mm());
        working.step(
                WIDTH, width, "w", asked.held().width(), "t", asked.held().thickness(), "e", asked.ease(), "m", margin);
        working.step(HEIGHT, height, "h", asked.held().height(), "t", asked.held().thickness(), "m", margin);
        working.step(FRONT, front, "W", width, "H", height, "r", radius);
        try {
            Item item = new CaseParts(asked, width.mm(), height.mm(), radius.mm()).item();
            List<Notice> told = new ArrayList<>(List.of(KNIFE.with()));
            if (asked.held().height().mm() > 60) {
                told.add(CLOTH.at("held.height", height.times(0.5)));
            }
            return Outcome.of(new Made(width, height, front, item), told);
        } catch (NoRoom e) {
            return Outcome.refuse(NO_ROOM.with(e.part(), e.what()));
        }
    }
}
