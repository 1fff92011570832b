package ${package};

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import ${package}.${className}.Asking;
import ${package}.${className}.Made;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

class ${className}Test {
#if($kind == "template")
    private static Outcome<Made> worked(double width, double hole) {
        return new ${className}()
                .calculate(
                        new Asking(Length.ofMm(width), Length.ofMm(80), Length.ofMm(hole), Length.ofMm(2)),
                        Working.NONE);
    }

    @Test
    void theHoleIsInTheMiddleBelowTheTop() {
        var hole = worked(40, 4).answers().orElseThrow().item().part("body").orElseThrow().holes().get(0);
        assertEquals(20, hole.centre().x(), 1e-9);
        assertEquals(80 - 2.5 * 4, hole.centre().y(), 1e-9);
    }

    @Test
    void aHoleTooNearTheSideIsRefused() {
        assertEquals(List.of(), worked(20, 4).notices());
        assertEquals(
                List.of(${className}.NO_ROOM.at("hole", Length.ofMm(4), Length.ofMm(20))),
                worked(19.9, 4).notices());
    }
#else
    @Test
    void itGoesRoundTheMiddleOfTheLeather() {
        Outcome<Made> made =
                new ${className}().calculate(new Asking(Length.ofMm(60), Length.ofMm(2)), Working.NONE);
        // circumference of a circle: pi * (60 + 2)
        assertEquals(194.7787, made.answers().orElseThrow().cutLength().mm(), 0.0001);
        assertEquals(List.of(), made.notices());
    }
#end
}
