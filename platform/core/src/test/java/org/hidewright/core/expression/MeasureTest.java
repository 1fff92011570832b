package org.hidewright.core.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.measure.Dimension;
import org.junit.jupiter.api.Test;

/** What sums, products and roots measure, for each of the four powers. */
class MeasureTest {
    private static final Map<String, Sort> NAMES = Map.of(
            "length", Measure.of(Dimension.LENGTH).orElseThrow(),
            "mass", Measure.of(Dimension.MASS).orElseThrow(),
            "time", Measure.of(Dimension.DURATION).orElseThrow(),
            "turn", Measure.of(Dimension.ANGLE).orElseThrow());

    private static Measure of(String expression) throws ExpressionTrouble {
        return (Measure) Expression.read(expression).sort(NAMES);
    }

    @Test
    void productsAddPowersAndQuotientsTakeThemAway() throws ExpressionTrouble {
        assertEquals(new Measure(1, 1, 1, 1), of("length * mass * time * turn"));
        assertEquals(new Measure(1, -1, -1, -1), of("length / mass / time / turn"));
        assertEquals(new Measure(0, 2, 0, -1), of("mass * mass / turn"));
        assertEquals(new Measure(-1, 0, 1, 0), of("time / length"));
        assertEquals(Measure.NUMBER, of("mass * time * turn / (turn * time * mass)"));
    }

    @Test
    void rootsHalveThem() throws ExpressionTrouble {
        assertEquals(of("mass"), of("sqrt(mass * mass)"));
        assertEquals(of("time * turn"), of("sqrt(time * turn * time * turn)"));
        for (String odd : List.of("sqrt(mass)", "sqrt(time)", "sqrt(turn)", "sqrt(length)")) {
            Expression expression = Expression.read(odd);
            try {
                expression.sort(NAMES);
                throw new AssertionError(odd);
            } catch (ExpressionTrouble e) {
                assertEquals("expression-no-root", e.notice().kind().key());
            }
        }
    }

    @Test
    void everyDimensionButMoneyIsMeasured() {
        for (Dimension dimension : Dimension.values()) {
            Optional<Measure> measure = Measure.of(dimension);
            assertEquals(dimension != Dimension.MONEY, measure.isPresent(), dimension.name());
            measure.ifPresent(known -> assertEquals(Optional.of(dimension), known.dimension()));
        }
        assertEquals(Optional.empty(), new Measure(0, 1, 1, 0).dimension());
        assertEquals(
                "sort-mass", Measure.of(Dimension.MASS).orElseThrow().words().key());
        assertEquals("sort-other", new Measure(1, 2, 3, 4).words().key());
        assertEquals(List.of(1, 2, 3, 4), new Measure(1, 2, 3, 4).words().args());
    }

    @Test
    void amountsAreCountedInOurOwnUnits() throws ExpressionTrouble {
        Worth.Amount millilitres = (Worth.Amount) Expression.read("2 ml").worth(Map.of());
        assertEquals(2000, millilitres.number(), 1e-9, "cubic millimetres");
        assertEquals(2, millilitres.inBase(Dimension.VOLUME), 1e-12);
        Worth.Amount dense = (Worth.Amount) Expression.read("0.9 g/cm³").worth(Map.of());
        assertEquals(0.0009, dense.number(), 1e-12);
        assertEquals(0.9, dense.inBase(Dimension.DENSITY), 1e-12);
        Worth.Amount kilos = (Worth.Amount) Expression.read("1 kg + 500 g").worth(Map.of());
        assertEquals(1500, kilos.number(), 1e-9);
        Worth.Amount hours = (Worth.Amount) Expression.read("1 h + 30 min").worth(Map.of());
        assertEquals(5400, hours.number(), 1e-9);
    }

    @Test
    void expressionsAreEqualByTheirText() throws ExpressionTrouble {
        Expression one = Expression.read("2 * length");
        assertEquals(one, Expression.read("2 * length"));
        assertEquals(one.hashCode(), Expression.read("2 * length").hashCode());
        assertNotEquals(one, Expression.read("2*length"));
        assertNotEquals(one, "2 * length");
        assertEquals("2 * length", one.toString());
        assertEquals("2 * length", one.text());
        assertEquals(
                List.of("turn", "mass"),
                List.copyOf(Expression.read("turn * mass / turn").names()));
    }
}
