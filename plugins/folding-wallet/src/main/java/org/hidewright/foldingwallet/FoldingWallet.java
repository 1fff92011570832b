package org.hidewright.foldingwallet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.SteppedPockets;
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

/** An outer, an inner that is shorter than it, notes between them, and pockets in steps on either side. */
@Calculates("folding-wallet")
@Component(service = Calculator.class)
public final class FoldingWallet implements Calculator<FoldingWallet.Asking, FoldingWallet.Made> {
    private static final Source PRACTICE = Source.of("wallets", Source.Kind.COMMON_PRACTICE);
    private static final Source GEOMETRY = Source.of("plane-geometry", Source.Kind.DEFINITION);

    static final Formula SHORTER = Formula.of("inner-shorter", "d = π · (q / 2 + n + i / 2)", GEOMETRY);
    static final Formula FULL = Formula.of("full", "F = 2 · (q + n + i) + 2 · z · (k + c) + v", GEOMETRY);

    private static final NoticeKind NO_ROOM = NoticeKind.stop("no-room");
    private static final NoticeKind STEP_TOO_LARGE = NoticeKind.stop("step-too-large");
    private static final NoticeKind STEP_TOO_SMALL = NoticeKind.stop("step-too-small");
    private static final NoticeKind THICK = NoticeKind.check("thick-wallet");
    private static final NoticeKind TIGHT = NoticeKind.check("tight");
    private static final NoticeKind KNIFE = NoticeKind.caution("knife");

    /** Cards in one pocket. */
    public record Cards(
            @Asked(
                    unit = "mm",
                    min = "20 mm",
                    max = "200 mm",
                    usual = "70-110 mm",
                    example = "85.72 mm",
                    from = "held-thing.width")
            Length width,

            @Asked(
                    unit = "mm",
                    min = "20 mm",
                    max = "200 mm",
                    usual = "48-75 mm",
                    example = "54.03 mm",
                    from = "held-thing.height")
            Length height,

            @Asked(
                    unit = "mm",
                    min = "0.1 mm",
                    max = "8 mm",
                    usual = "0.5-2 mm",
                    example = "0.84 mm",
                    from = "held-thing.thickness")
            Length thickness) {}

    /** What is asked. */
    public record Asking(
            @Asked Cards cards,

            @Asked(unit = "mm", min = "60 mm", max = "300 mm", usual = "120-165 mm", preset = "160 mm")
            Length noteWidth,

            @Asked(unit = "mm", min = "40 mm", max = "160 mm", usual = "60-85 mm", preset = "82 mm")
            Length noteHeight,

            @Asked(min = "1", max = "6", usual = "2-4", preset = "3")
            int pockets,

            @Asked(unit = "mm", min = "4 mm", max = "40 mm", usual = "10-14 mm", preset = "12 mm")
            Length step,

            @Asked(unit = "mm", min = "0 mm", max = "15 mm", usual = "2-6 mm", preset = "4 mm")
            Length ease,

            @Asked(
                    unit = "mm",
                    min = "0.6 mm",
                    max = "3 mm",
                    usual = "1-1.6 mm",
                    preset = "1.2 mm",
                    stock = "leather.thickness")
            Length thickness,

            @Asked(
                    unit = "mm",
                    min = "0.4 mm",
                    max = "2 mm",
                    usual = "0.7-1.1 mm",
                    preset = "0.9 mm",
                    stock = "leather.thickness")
            Length innerThickness,

            @Asked(
                    unit = "mm",
                    min = "0.3 mm",
                    max = "1.6 mm",
                    usual = "0.6-1 mm",
                    preset = "0.8 mm",
                    stock = "leather.thickness")
            Length pocketThickness,

            @Asked(
                    unit = "mm",
                    min = "0.2 mm",
                    max = "1.5 mm",
                    usual = "0.3-0.7 mm",
                    example = "0.5 mm",
                    stock = "leather.thickness")
            Optional<Length> liningThickness,

            @Asked(
                    unit = "mm",
                    min = "1.5 mm",
                    max = "8 mm",
                    usual = "2.7-4 mm",
                    preset = "3 mm",
                    stock = "pricking-irons.pitch")
            Length pitch) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "wallets", lead = true)
            Length outerWidth,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "wallets", lead = true)
            Length height,

            @Answered(unit = "mm", step = "0.1 mm", by = "inner-shorter", lead = true)
            Length innerShorter,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "wallets")
            Length closedWidth,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "full")
            Length thicknessFull,

            @Answered Item item) {}

    @Override
    public List<Formula> formulas() {
        return List.of(SHORTER, FULL);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, STEP_TOO_LARGE, STEP_TOO_SMALL, THICK, TIGHT, KNIFE);
    }

    @Override
    public List<Source> sources() {
        return List.of(PRACTICE, GEOMETRY);
    }

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        double leastStep = SteppedPockets.leastStep(asked.pitch().mm());
        if (2 * asked.step().mm() > asked.cards().height().mm()) {
            return Outcome.refuse(
                    STEP_TOO_LARGE.at("step", asked.step(), asked.cards().height()));
        } else if (asked.step().mm() < leastStep) {
            return Outcome.refuse(STEP_TOO_SMALL.at("step", Length.ofMm(leastStep)));
        }
        Sizes sizes = Sizes.of(asked);
        sizes.explain(asked, working);
        try {
            return Outcome.of(
                    new Made(
                            Length.ofMm(sizes.outerWidth()),
                            Length.ofMm(sizes.height()),
                            Length.ofMm(sizes.shorter()),
                            Length.ofMm(sizes.outerWidth() / 2),
                            Length.ofMm(sizes.full()),
                            new WalletParts(asked, sizes).item()),
                    told(asked, sizes));
        } catch (NoRoom e) {
            return Outcome.refuse(NO_ROOM.with(e.what(), e.part()));
        }
    }

    private static List<Notice> told(Asking asked, Sizes sizes) {
        List<Notice> told = new ArrayList<>();
        if (sizes.full() > 25) {
            told.add(THICK.with(Length.ofMm(sizes.full())));
        }
        if (asked.ease().mm() < 2) {
            told.add(TIGHT.at("ease", asked.ease()));
        }
        told.add(KNIFE.with());
        return told;
    }
}
