package org.hidewright.thickness;

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
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** Layers laid on each other: how thick they are together, with skived layers and glue lines. */
@Calculates("stack")
@Component(service = Calculator.class)
public final class Stack implements Calculator<Stack.Pile, Stack.Together> {
    private static final Formula LAYERS = Formula.of("stack-layers", "s = n · t", Origins.ARITHMETIC);
    private static final Formula TOTAL = Formula.of("stack-total", "T = S + j · g", Origins.ARITHMETIC);
    private static final Formula SHARE = Formula.of("stack-share", "a = s / T", Origins.ARITHMETIC);
    private static final NoticeKind NO_LAYERS = NoticeKind.stop("stack-no-layers");
    private static final NoticeKind SKIVED_THICKER = NoticeKind.stop("stack-skived-thicker");
    private static final NoticeKind NOTHING_LEFT = NoticeKind.stop("stack-nothing-left");

    /** What is asked. */
    public record Pile(
            @Asked(
                    example = "[{\"id\":\"front\",\"thickness\":\"8 oz\"},"
                            + "{\"id\":\"gusset\",\"thickness\":\"4 oz\",\"count\":\"2\",\"skived\":\"0.8 mm\"}]")
            List<StackLayer> layers,

            @Asked(unit = "mm", min = "0 mm", max = "5 mm", usual = "0-0.3 mm", preset = "0 mm")
            Length glueLine) {}

    /** Pieces of one thickness lying on each other, from the bottom up. */
    public record StackLayer(
            @RowId String id,

            @Asked(unit = "mm", min = "0.01 mm", max = "50 mm", usual = "0.4-6 mm", example = "8 oz")
            Length thickness,

            @Asked(min = "1", max = "100", usual = "1-6", preset = "1")
            int count,

            @Asked(unit = "mm", min = "0 mm", max = "50 mm", usual = "0.2-3 mm", example = "0.8 mm")
            Optional<Length> skived) {
        Length laid() {
            return skived.orElse(thickness);
        }
    }

    /** What is answered; joint heights are measured from the bottom to the under side of each glue line. */
    public record Together(
            @Answered(unit = "mm", by = "stack-total", step = "0.1 mm", lead = true)
            Length total,

            @Answered(by = "astm-d1814", step = "0.1") double ounces,
            @Answered(by = "arithmetic") int pieces,
            @Answered(by = "arithmetic") int joints,

            @Answered(unit = "mm", by = "stack-layers", step = "0.1 mm")
            Length leather,

            @Answered(unit = "mm", by = "stack-total", step = "0.01 mm")
            Length glue,

            @Answered(unit = "mm", by = "stack-layers", step = "0.1 mm")
            List<Length> jointHeights,

            @Answered List<StackedLayer> layers) {}

    /** One row of the pile as it lies. */
    public record StackedLayer(
            @RowId String id,

            @Answered(unit = "mm", by = "stack-layers", step = "0.01 mm")
            Length each,

            @Answered(unit = "mm", by = "stack-layers", step = "0.01 mm")
            Length together,

            @Answered(unit = "mm", by = "stack-total", step = "0.1 mm")
            Length top,

            @Answered(unit = "%", by = "stack-share", step = "0.1 %")
            double share) {}

    @Override
    public Outcome<Together> calculate(Pile pile, Working working) {
        List<Notice> refusals = refusals(pile);
        if (!refusals.isEmpty()) {
            return Outcome.refuse(refusals);
        }
        int pieces = pile.layers().stream().mapToInt(StackLayer::count).sum();
        int joints = pieces - 1;
        Length leather = leather(pile, working);
        Length glue = pile.glueLine().times(joints);
        Length total = leather.plus(glue);
        if (total.mm() <= 0) {
            return Outcome.refuse(NOTHING_LEFT.at("layers"));
        }
        working.step(TOTAL, total, "S", leather, "j", joints, "g", pile.glueLine());
        List<Length> jointHeights = new ArrayList<>();
        List<StackedLayer> rows = new ArrayList<>();
        Length top = Length.ZERO;
        for (StackLayer layer : pile.layers()) {
            for (int piece = 0; piece < layer.count(); piece++) {
                if (!jointHeights.isEmpty()) {
                    top = top.plus(pile.glueLine());
                }
                top = top.plus(layer.laid());
                jointHeights.add(top);
            }
            Length together = layer.laid().times(layer.count());
            double share = together.per(total);
            working.step(SHARE, share, "s", together, "T", total);
            rows.add(new StackedLayer(layer.id(), layer.laid(), together, top, share));
        }
        jointHeights.remove(jointHeights.size() - 1);
        return Outcome.of(new Together(
                total, total.in(Units.OUNCE), pieces, joints, leather, glue, List.copyOf(jointHeights), rows));
    }

    private static List<Notice> refusals(Pile pile) {
        if (pile.layers().isEmpty()) {
            return List.of(NO_LAYERS.at("layers"));
        }
        List<Notice> refusals = new ArrayList<>();
        for (StackLayer layer : pile.layers()) {
            if (layer.laid().compareTo(layer.thickness()) > 0) {
                refusals.add(SKIVED_THICKER.at(
                        "layers[" + layer.id() + "].skived", layer.id(), layer.laid(), layer.thickness()));
            }
        }
        return refusals;
    }

    private static Length leather(Pile pile, Working working) {
        Length leather = Length.ZERO;
        for (StackLayer layer : pile.layers()) {
            Length together = layer.laid().times(layer.count());
            working.step(LAYERS, together, "n", layer.count(), "t", layer.laid());
            leather = leather.plus(together);
        }
        return leather;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(LAYERS, TOTAL, SHARE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_LAYERS, SKIVED_THICKER, NOTHING_LEFT);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.ASTM_D1814);
    }
}
