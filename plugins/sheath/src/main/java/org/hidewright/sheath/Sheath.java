package org.hidewright.sheath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** Two panels with a welt between them, and a loop for a belt. */
@Calculates("sheath")
@Component(service = Calculator.class)
public final class Sheath implements Calculator<Sheath.Asking, Sheath.Made> {
    private static final Source PRACTICE = Source.of("welts", Source.Kind.COMMON_PRACTICE);
    private static final Source GEOMETRY = Source.of("plane-geometry", Source.Kind.DEFINITION);

    static final Formula WIDTH = Formula.of("panel-width", "W = b + e + 2 · u", PRACTICE);
    static final Formula LAYERS = Formula.of("welt-layers", "n = ceil(d / s)", PRACTICE);
    static final Formula LOOP = Formula.of("loop", "L = r + π · (g + s / 2) + w + c", GEOMETRY);

    private static final NoticeKind NO_ROOM = NoticeKind.stop("no-room");
    private static final NoticeKind CHROME = NoticeKind.check("chrome-against-steel");
    private static final NoticeKind THICK = NoticeKind.check("thick-stack");
    private static final NoticeKind LOOSE = NoticeKind.check("loose");
    private static final NoticeKind STORED = NoticeKind.caution("stored-in-leather");
    private static final NoticeKind SHARP = NoticeKind.caution("sharp");
    private static final NoticeKind LAW = NoticeKind.caution("law");

    /** What the leather was tanned with. */
    public enum Tannage {
        VEGETABLE,
        CHROME,
        OTHER
    }

    /** How the lower end is shaped. */
    public enum Tip {
        ROUND,
        BLUNT
    }

    /** What goes in. */
    public record Blade(
            @Asked(
                    unit = "mm",
                    min = "4 mm",
                    max = "250 mm",
                    usual = "15-60 mm",
                    example = "28 mm",
                    from = "held-thing.width")
            Length width,

            @Asked(
                    unit = "mm",
                    min = "20 mm",
                    max = "600 mm",
                    usual = "70-250 mm",
                    example = "110 mm",
                    from = "held-thing.height")
            Length height,

            @Asked(
                    unit = "mm",
                    min = "0.3 mm",
                    max = "30 mm",
                    usual = "1.5-6 mm",
                    example = "4 mm",
                    from = "held-thing.thickness")
            Length thickness) {}

    /** What is asked. */
    public record Asking(
            @Asked(from = "held-thing.measured") Blade held,
            @Asked(preset = "round") Tip tip,

            @Asked(unit = "mm", min = "0 mm", max = "20 mm", usual = "1-5 mm", preset = "2 mm")
            Length ease,

            @Asked(preset = "vegetable") Tannage tannage,

            @Asked(
                    unit = "mm",
                    min = "1.5 mm",
                    max = "6 mm",
                    usual = "2.5-4 mm",
                    preset = "3 mm",
                    stock = "leather.thickness")
            Length thickness,

            @Asked(
                    unit = "mm",
                    min = "2 mm",
                    max = "10 mm",
                    usual = "3.5-6 mm",
                    preset = "5 mm",
                    stock = "pricking-irons.pitch")
            Length pitch,

            @Asked(unit = "mm", min = "10 mm", max = "120 mm", usual = "30-50 mm", example = "40 mm")
            Optional<Length> belt) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "panel-width", lead = true)
            Length panelWidth,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "loop", lead = true)
            Length backHeight,

            @Answered(unit = "mm", step = "0.1 mm", by = "panel-width")
            Length weltWidth,

            @Answered(by = "welt-layers") int weltLayers,

            @Answered(unit = "mm", step = "0.1 mm", by = "welt-layers")
            Length stack,

            @Answered Item item) {}

    @Override
    public List<Formula> formulas() {
        return List.of(WIDTH, LAYERS, LOOP);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, CHROME, THICK, LOOSE, STORED, SHARP, LAW);
    }

    @Override
    public List<Source> sources() {
        return List.of(PRACTICE, GEOMETRY);
    }

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Sizes sizes = Sizes.of(asked);
        sizes.explain(asked, working);
        try {
            return Outcome.of(
                    new Made(
                            Length.ofMm(sizes.width()),
                            Length.ofMm(sizes.height() + sizes.loop()),
                            Length.ofMm(sizes.welt()),
                            sizes.layers(),
                            Length.ofMm(sizes.stack()),
                            new SheathParts(asked, sizes).item()),
                    told(asked, sizes));
        } catch (NoRoom e) {
            return Outcome.refuse(NO_ROOM.with(e.what(), e.part()));
        }
    }

    private static List<Notice> told(Asking asked, Sizes sizes) {
        List<Notice> told = new ArrayList<>();
        if (asked.tannage() == Tannage.CHROME) {
            told.add(CHROME.at("tannage"));
        }
        if (sizes.stack() > 14) {
            told.add(THICK.with(Length.ofMm(sizes.stack())));
        }
        if (asked.ease().mm() > 5) {
            told.add(LOOSE.at("ease", asked.ease()));
        }
        told.add(STORED.with());
        told.add(SHARP.with());
        told.add(LAW.with());
        return told;
    }
}
