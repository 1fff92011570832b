package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Quantity;

/** Takes the working down and checks that it can be printed: known formulas, every symbol in its formula. */
final class Steps implements Working {
    private final List<Formula> known;
    private final Map<String, List<Object>> results = new LinkedHashMap<>();
    private final Map<String, Object> given = new LinkedHashMap<>();

    Steps(Calculator<?, ?> calculator) {
        known = calculator.formulas();
    }

    @Override
    public void step(Formula formula, Object result, Object... symbolsAndValues) {
        assertTrue(known.contains(formula), () -> formula + " is not among formulas()");
        assertEquals(0, symbolsAndValues.length % 2, () -> formula + " has a symbol without a value");
        String right = formula.symbols().substring(formula.symbols().indexOf('=') + 1);
        for (int i = 0; i < symbolsAndValues.length; i += 2) {
            String symbol = (String) symbolsAndValues[i];
            Pattern alone = Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(symbol) + "(?![\\p{L}\\p{N}])");
            assertTrue(alone.matcher(right).find(), () -> symbol + " does not stand alone in " + formula);
            given.put(formula.key() + " " + symbol, symbolsAndValues[i + 1]);
        }
        results.computeIfAbsent(formula.key(), key -> new ArrayList<>()).add(result);
    }

    @Override
    public void source(String answer, Source source) {
        throw new AssertionError("no answer of this bundle changes its source: " + answer);
    }

    /** The last result of a formula as a plain number in base units. */
    double result(String key) {
        List<Object> of = results.getOrDefault(key, List.of());
        assertTrue(!of.isEmpty(), () -> key + " was not worked; there is " + results.keySet());
        Object last = of.get(of.size() - 1);
        return last instanceof Quantity<?> quantity ? quantity.base() : ((Number) last).doubleValue();
    }

    /** What was last put in place of a symbol, as a plain number in base units. */
    double given(String key, String symbol) {
        Object value = given.get(key + " " + symbol);
        return value instanceof Quantity<?> quantity ? quantity.base() : ((Number) value).doubleValue();
    }

    int times(String key) {
        return results.getOrDefault(key, List.of()).size();
    }
}
