package ${package};

import java.util.List;
#if($kind == "template")
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.benchwork.Steps;
#end
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
#if($kind == "template")
import org.hidewright.api.calculator.NoticeKind;
#end
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
#if($kind == "template")
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Item;
#end
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

#if($kind == "template")
/** One part with round corners and a hole near its upper edge: change it into what you want to make. */
#else
/** How long to cut a strip that goes once round a round thing: change it into what you want to know. */
#end
@Component(service = Calculator.class)
@Calculates("${id}")
public final class ${className} implements Calculator<${className}.Asking, ${className}.Made> {

#if($kind == "template")
    /** What is asked. */
    public record Asking(
            @Asked(unit = "mm", min = "15 mm", max = "300 mm", usual = "30-100 mm", preset = "40 mm")
            Length width,

            @Asked(unit = "mm", min = "30 mm", max = "600 mm", usual = "60-200 mm", preset = "80 mm")
            Length height,

            @Asked(unit = "mm", min = "1.5 mm", max = "12 mm", usual = "3-6 mm", preset = "4 mm")
            Length hole,

            @Asked(unit = "mm", min = "0.6 mm", max = "6 mm", usual = "1-4 mm", preset = "2.4 mm")
            Length thickness) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "from-top", lead = true)
            Length fromTop,

            @Answered Item item) {}

    private static final Source HABIT = Source.of("leather-beside", Source.Kind.COMMON_PRACTICE);

    static final Formula FROM_TOP = Formula.of("from-top", "y = 2.5 · d", HABIT);

    static final NoticeKind NO_ROOM = NoticeKind.stop("no-room");

    @Override
    public List<Formula> formulas() {
        return List.of(FROM_TOP);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM);
    }

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Length fromTop = asked.hole().times(2.5);
        working.step(FROM_TOP, fromTop, "d", asked.hole());
        if (asked.width().compareTo(fromTop.times(2)) < 0) {
            return Outcome.refuse(NO_ROOM.at("hole", asked.hole(), fromTop.times(2)));
        }
        try {
            return Outcome.of(new Made(fromTop, item(asked, fromTop)));
        } catch (NoRoom e) {
            return Outcome.refuse(NO_ROOM.at("hole", asked.hole(), fromTop.times(2)));
        }
    }

    private static Item item(Asking asked, Length fromTop) throws NoRoom {
        double width = asked.width().mm();
        double height = asked.height().mm();
        Piece body = Piece.of(
                "body",
                "Body",
                Outlines.roundedRectangle(Point.of(0, 0), width, height, 5),
                asked.thickness().mm());
        body.hole("cord", Point.of(width / 2, height - fromTop.mm()), asked.hole().mm());
        Item.Builder item = Item.builder().part(body.wholePart());
        new Steps().then("edges", "Bevel and burnish the edge", 15, "body").into(item);
        return item.build();
    }
}
#else
    /** What is asked. */
    public record Asking(
            @Asked(unit = "mm", min = "5 mm", max = "500 mm", usual = "20-150 mm", example = "60 mm")
            Length diameter,

            @Asked(unit = "mm", min = "0.4 mm", max = "6 mm", usual = "1-3 mm", preset = "2 mm")
            Length thickness) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "once-round", lead = true)
            Length cutLength) {}

    private static final Source RING = Source.of("ring", Source.Kind.DEFINITION);

    static final Formula ONCE_ROUND = Formula.of("once-round", "L = π · (D + t)", RING);

    @Override
    public List<Formula> formulas() {
        return List.of(ONCE_ROUND);
    }

    @Override
    public Outcome<Made> calculate(Asking asked, Working working) {
        Length cut = asked.diameter().plus(asked.thickness()).times(Math.PI);
        working.step(ONCE_ROUND, cut, "D", asked.diameter(), "t", asked.thickness());
        return Outcome.of(new Made(cut));
    }
}
#end
