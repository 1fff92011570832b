package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

class StackTest {
    private final Stack stack = new Stack();

    private static Stack.StackLayer layer(String id, double mm, int count) {
        return new Stack.StackLayer(id, Length.ofMm(mm), count, Optional.empty());
    }

    private static Stack.StackLayer skived(String id, double mm, int count, double toMm) {
        return new Stack.StackLayer(id, Length.ofMm(mm), count, Optional.of(Length.ofMm(toMm)));
    }

    private static Stack.Pile pile(double glueMm, Stack.StackLayer... layers) {
        return new Stack.Pile(List.of(layers), Length.ofMm(glueMm));
    }

    private Stack.Together of(double glueMm, Stack.StackLayer... layers) {
        return Told.answers(stack, stack.calculate(pile(glueMm, layers), Working.NONE));
    }

    @Test
    void skivedLayersCountAsTheyAreLeftAndEveryJointHasItsGlueLine() {
        Steps steps = new Steps(stack);
        Stack.Together together = Told.answers(
                stack, stack.calculate(pile(0.1, layer("front", 3, 1), skived("gusset", 1.6, 2, 0.8)), steps));
        assertEquals(4.8, together.total().mm(), 1e-12); // 3 + 2 x 0.8 + 2 x 0.1
        assertEquals(4.6, together.leather().mm(), 1e-12);
        assertEquals(0.2, together.glue().mm(), 1e-12);
        assertEquals(3, together.pieces());
        assertEquals(2, together.joints());
        assertEquals(4.8 * 64 / 25.4, together.ounces(), 1e-12);
        assertEquals(2, together.jointHeights().size());
        assertEquals(3.0, together.jointHeights().get(0).mm(), 1e-12);
        assertEquals(3.9, together.jointHeights().get(1).mm(), 1e-12);
        assertEquals(4.8, steps.result("stack-total"), 1e-12);
        assertEquals(1.6, steps.result("stack-layers"), 1e-12);
        assertEquals(1.6 / 4.8, steps.result("stack-share"), 1e-12);
        assertEquals(2, steps.times("stack-layers"));
    }

    @Test
    void everyRowSaysHowThickItIsAndHowHighItReaches() {
        Stack.Together together = of(0.1, layer("front", 3, 1), skived("gusset", 1.6, 2, 0.8));
        Stack.StackedLayer front = together.layers().get(0);
        Stack.StackedLayer gusset = together.layers().get(1);
        assertEquals("front", front.id());
        assertEquals(3, front.top().mm(), 1e-12);
        assertEquals(3 / 4.8, front.share(), 1e-12);
        assertEquals("gusset", gusset.id());
        assertEquals(0.8, gusset.each().mm(), 1e-12);
        assertEquals(1.6, gusset.together().mm(), 1e-12);
        assertEquals(4.8, gusset.top().mm(), 1e-12);
        assertEquals(1.6 / 4.8, gusset.share(), 1e-12);
    }

    @Test
    void oneLayerHasNoJoint() {
        Stack.Together together = of(0.2, layer("only", 2, 1));
        assertEquals(2, together.total().mm(), 1e-12);
        assertEquals(0, together.joints());
        assertEquals(List.of(), together.jointHeights());
    }

    @Test
    void anEmptyStackIsRefused() {
        Outcome<Stack.Together> outcome = stack.calculate(pile(0), Working.NONE);
        assertEquals("stack-no-layers at layers", Told.refusal(stack, outcome));
    }

    @Test
    void aLayerSkivedThickerThanItIsIsRefusedByItsRow() {
        Outcome<Stack.Together> outcome =
                stack.calculate(pile(0, layer("a", 1, 1), skived("b", 1, 1, 1.01)), Working.NONE);
        assertEquals("stack-skived-thicker at layers[b].skived", Told.refusal(stack, outcome));
        assertEquals(1, of(0, skived("b", 1, 1, 1)).total().mm());
    }

    @Test
    void aStackSkivedToNothingIsRefusedUnlessGlueIsLeft() {
        Outcome<Stack.Together> outcome = stack.calculate(pile(0, skived("a", 1, 2, 0)), Working.NONE);
        assertEquals("stack-nothing-left at layers", Told.refusal(stack, outcome));
        assertEquals(0.1, of(0.1, skived("a", 1, 2, 0)).total().mm(), 1e-12);
    }

    @Test
    void orderOfLayersDoesNotMatterAndSharesMakeTheWhole() {
        Random random = new Random(14);
        for (int i = 0; i < 300; i++) {
            double glue = random.nextDouble() * 0.3;
            List<Stack.StackLayer> layers = new ArrayList<>();
            double leather = 0;
            int pieces = 0;
            int rows = 1 + random.nextInt(6);
            for (int row = 0; row < rows; row++) {
                double mm = 0.3 + random.nextDouble() * 5;
                int count = 1 + random.nextInt(4);
                layers.add(layer("r" + row, mm, count));
                leather += mm * count;
                pieces += count;
            }
            Stack.Together there = of(glue, layers.toArray(Stack.StackLayer[]::new));
            Collections.shuffle(layers, random);
            Stack.Together shuffled = of(glue, layers.toArray(Stack.StackLayer[]::new));
            double total = leather + (pieces - 1) * glue;
            assertEquals(total, there.total().mm(), 1e-9);
            assertEquals(total, shuffled.total().mm(), 1e-9);
            assertEquals(
                    leather / total,
                    there.layers().stream()
                            .mapToDouble(Stack.StackedLayer::share)
                            .sum(),
                    1e-9);
            assertEquals(total, shuffled.layers().get(rows - 1).top().mm(), 1e-9);
            assertEquals(pieces - 1, there.jointHeights().size());
        }
    }
}
