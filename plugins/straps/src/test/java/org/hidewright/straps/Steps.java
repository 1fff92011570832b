package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Quantity;

/** Takes the working down: results by formula, sources by answer; every formula has to be a declared one. */
final class Steps implements Working {
    private final List<Formula> known;
    private final Map<String, List<Double>> results = new LinkedHashMap<>();
    private final Map<String, Source> sources = new HashMap<>();

    Steps(Calculator<?, ?> calculator) {
        known = calculator.formulas();
    }

    @Override
    public void step(Formula formula, Object result, Object... symbolsAndValues) {
        assertTrue(known.contains(formula), () -> formula + " is not among formulas()");
        assertEquals(0, symbolsAndValues.length % 2, () -> formula + " has a symbol without a value");
        double value = result instanceof Quantity<?> quantity ? quantity.base() : ((Number) result).doubleValue();
        results.computeIfAbsent(formula.key(), key -> new ArrayList<>()).add(value);
    }

    @Override
    public void source(String answer, Source source) {
        sources.put(answer, source);
    }

    /** Results in base units, in the order they were worked; empty where the formula was not. */
    List<Double> of(String key) {
        return results.getOrDefault(key, List.of());
    }

    Source source(String answer) {
        return sources.get(answer);
    }
}
