package org.hidewright.straps;

import java.util.ArrayList;
import java.util.List;
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
import org.hidewright.api.measure.Size;
import org.hidewright.straps.geometry.Wraps;
import org.osgi.service.component.annotations.Component;

/** A keeper: the loop that holds the end of a strap, cut to go round every layer it must pass. */
@Calculates("keeper")
@Component(service = Calculator.class)
public final class KeeperLength implements Calculator<KeeperLength.Loop, KeeperLength.Blank> {
    private static final Formula STACK = Formula.of("keeper-stack", "h = u + n · t", Origins.GEOMETRY);
    private static final Formula INSIDE =
            Formula.of("keeper-inside", "P = 2 · (w + h) - (8 - 2 · π) · r + e", Origins.GEOMETRY);
    private static final Formula CUT =
            Formula.of("keeper-cut-length", "L = P + 2 · π · k · t + o + x", Origins.GEOMETRY);
    private static final Formula LAP_CORNERS = Formula.of("keeper-lap-corners", "x = n · π / 2 · t", Origins.GEOMETRY);

    private static final NoticeKind NO_LAYERS = NoticeKind.stop("keeper-no-layers");
    private static final NoticeKind CORNER_TOO_LARGE = NoticeKind.stop("keeper-corner-too-large");
    private static final NoticeKind TOO_FEW_LAYERS = NoticeKind.check("keeper-too-few-layers");
    private static final NoticeKind NO_EASE = NoticeKind.check("keeper-no-ease");

    private static final double LEAST_EASE_MM = 1;
    private static final double MOST_EASE_MM = 2;
    private static final double LEAST_WIDTH_MM = 10;
    private static final double MOST_WIDTH_MM = 15;

    /** Where the keeper sits, and so what it must at least let through. */
    enum KeeperPlace {
        /** At a belt’s buckle: strap, turn-back and the tip passing. */
        BELT_AT_TURN_BACK(3),
        /** Free on a belt: strap and tip. */
        BELT_FREE(2),
        /** Anywhere else; nothing is checked. */
        ELSEWHERE(1);

        private final int layers;

        KeeperPlace(int layers) {
            this.layers = layers;
        }
    }

    /** Layers of one thickness. */
    public record KeeperLayer(
            @RowId String id,

            @Asked(unit = "mm", min = "0.1 mm", max = "50 mm", usual = "0.5-5 mm", example = "3.5 mm")
            Length thickness,

            @Asked(min = "1", max = "50", preset = "1") int count) {}

    /** How the ends meet. */
    sealed interface KeeperJoint {
        /** End to end, stitched. */
        record Butted() implements KeeperJoint {}

        /** One end over the other along the broad side. */
        record Lapped(
                @Asked(unit = "mm", min = "1 mm", max = "500 mm", usual = "8-25 mm", example = "12 mm")
                Length lap) implements KeeperJoint {}
    }

    /** What is asked; the ease is added to the inside length all round. */
    public record Loop(
            @Asked(
                    example =
                            "[{\"id\":\"strap\",\"thickness\":\"3.5 mm\"},{\"id\":\"turn-back\",\"thickness\":\"2 mm\"},"
                                    + "{\"id\":\"tip\",\"thickness\":\"3.5 mm\"}]")
            List<KeeperLayer> layers,

            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "1 m",
                    usual = "8-60 mm",
                    example = "38 mm",
                    picture = "keeper#strap")
            Length width,

            @Asked(unit = "mm", min = "0 mm", max = "100 mm", usual = "0-2 mm", example = "1 mm")
            Length cornerRadius,

            @Asked(unit = "mm", min = "0 mm", max = "50 mm", usual = "1-2 mm", preset = "1.5 mm")
            Length ease,

            @Asked(example = "belt-at-turn-back") KeeperPlace place,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", usual = "1-3 mm", example = "2 mm")
            Length thickness,

            @Asked(preset = "{\"butted\":{}}") KeeperJoint joint,

            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "500 mm",
                    usual = "10-15 mm",
                    preset = "12 mm",
                    picture = "keeper#width")
            Length keeperWidth,

            @Asked(min = "0", max = "1", usual = "0.3-0.7", preset = "0.5")
            double neutralLine) {}

    /** What is answered. */
    public record Blank(
            @Answered(unit = "mm", step = "0.1 mm", by = "keeper-cut-length", lead = true)
            Length cutLength,

            @Answered(unit = "mm", step = "0.1 mm", by = "keeper-cut-length")
            Size blank,

            @Answered(unit = "mm", step = "0.1 mm", by = "keeper-stack")
            Length stackHeight,

            @Answered(unit = "mm", step = "0.1 mm", by = "keeper-inside")
            Length insideLength,

            @Answered(unit = "mm", step = "0.1 mm", by = "keeper-inside")
            Size inside) {}

    @Override
    public Outcome<Blank> calculate(Loop loop, Working working) {
        if (loop.layers().isEmpty()) {
            return Outcome.refuse(NO_LAYERS.at("layers"));
        }
        Length height = loop.layers().stream()
                .map(layer -> layer.thickness().times(layer.count()))
                .reduce(Length.ZERO, Length::plus);
        double radius = loop.cornerRadius().mm();
        if (2 * radius > Math.min(loop.width().mm(), height.mm()) + 1e-9) {
            return Outcome.refuse(CORNER_TOO_LARGE.at(
                    "corner-radius",
                    loop.cornerRadius(),
                    Length.ofMm(Math.min(loop.width().mm(), height.mm()))));
        }
        Length inside = Length.ofMm(Wraps.roundedRectangleMm(loop.width().mm(), height.mm(), radius))
                .plus(loop.ease());
        Length lap = loop.joint() instanceof KeeperJoint.Lapped lapped ? lapped.lap() : Length.ZERO;
        int corners = cornersUnder(lap.mm(), loop.width().mm(), height.mm(), radius);
        Length more = Length.ofMm(corners * Math.PI / 2 * loop.thickness().mm());
        Length cut = inside.plus(
                        Length.ofMm(Wraps.roundClosedCoreMm(loop.thickness().mm(), loop.neutralLine())))
                .plus(lap)
                .plus(more);
        stack(loop.layers(), working);
        working.step(INSIDE, inside, "w", loop.width(), "h", height, "r", loop.cornerRadius(), "e", loop.ease());
        working.step(LAP_CORNERS, more, "n", corners, "t", loop.thickness());
        working.step(CUT, cut, "P", inside, "k", loop.neutralLine(), "t", loop.thickness(), "o", lap, "x", more);
        credit(loop, working);
        Length quarter = loop.ease().times(0.25);
        Blank blank = new Blank(
                cut,
                Size.of(cut, loop.keeperWidth()),
                height,
                inside,
                Size.of(loop.width().plus(quarter), height.plus(quarter)));
        return Outcome.of(blank, notices(loop));
    }

    /**
     * Corners the outer end goes round on top of the inner one, each of which takes it a quarter turn of its own
     * thickness further: none while the lap stays on the flat of the broad side.
     */
    private static int cornersUnder(double lap, double width, double height, double radius) {
        double corner = Math.PI / 2 * radius;
        double left = lap - (width - 2 * radius);
        int corners = 0;
        boolean narrow = true;
        while (left > 1e-9) {
            corners++;
            left -= corner + (narrow ? height : width) - 2 * radius;
            narrow = !narrow;
        }
        return corners;
    }

    /** The length stands on the neutral line, the inside on the ease, the blank on the width usual for keepers. */
    private static void credit(Loop loop, Working working) {
        Origins.creditNeutralLine(working, "cut-length", loop.neutralLine());
        boolean eased = within(loop.ease(), LEAST_EASE_MM, MOST_EASE_MM);
        Origins.creditHabit(working, "inside-length", Origins.KEEPER_HABITS, eased);
        Origins.creditHabit(working, "inside", Origins.KEEPER_HABITS, eased);
        boolean wide = within(loop.keeperWidth(), LEAST_WIDTH_MM, MOST_WIDTH_MM);
        Origins.creditHabit(working, "blank", Origins.KEEPER_HABITS, wide);
    }

    private static boolean within(Length length, double leastMm, double mostMm) {
        return length.mm() >= leastMm && length.mm() <= mostMm;
    }

    /** Layer upon layer, each laid on what is under it. */
    private static void stack(List<KeeperLayer> layers, Working working) {
        Length under = Length.ZERO;
        for (KeeperLayer layer : layers) {
            Length height = under.plus(layer.thickness().times(layer.count()));
            working.step(STACK, height, "u", under, "n", layer.count(), "t", layer.thickness());
            under = height;
        }
    }

    private static List<Notice> notices(Loop loop) {
        List<Notice> notices = new ArrayList<>();
        int layers = loop.layers().stream().mapToInt(KeeperLayer::count).sum();
        if (layers < loop.place().layers) {
            notices.add(TOO_FEW_LAYERS.at("layers", layers, loop.place().layers, loop.place()));
        }
        if (loop.ease().mm() < LEAST_EASE_MM) {
            notices.add(NO_EASE.at("ease", loop.ease(), Length.ofMm(LEAST_EASE_MM), Length.ofMm(MOST_EASE_MM)));
        }
        return notices;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(STACK, INSIDE, LAP_CORNERS, CUT);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_LAYERS, CORNER_TOO_LARGE, TOO_FEW_LAYERS, NO_EASE);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.KEEPER_HABITS, Origins.NEUTRAL_HABIT);
    }
}
