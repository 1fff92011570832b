package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;

/** Takes a working down, and what in it is not declared or could not be printed. */
final class WorkingTaken implements Working {
    private final Collection<Formula> formulas;
    private final Collection<Source> sources;
    private final List<Line> lines = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();

    /** @param sources those of the formulas need not be among them */
    WorkingTaken(Collection<Formula> formulas, Collection<Source> sources) {
        this.formulas = formulas;
        this.sources = sources;
    }

    /** One thing taken down. */
    @FunctionalInterface
    private interface Line {
        String written(Function<Object, String> shown);
    }

    @Override
    public void step(Formula formula, Object result, Object... symbolsAndValues) {
        if (!formulas.contains(formula)) {
            wrong.add("the formula “" + formula + "” is worked by and not declared; list it in formulas()");
        }
        if (symbolsAndValues.length % 2 != 0) {
            wrong.add("a step of “" + formula + "” has a symbol without a value; give each symbol its value");
            return;
        }
        Unsayable.in(result).ifPresent(what -> wrong.add("the result of “" + formula + "” is " + what));
        for (int i = 0; i < symbolsAndValues.length; i += 2) {
            String symbol = String.valueOf(symbolsAndValues[i]);
            if (!formula.symbols().contains(symbol)) {
                wrong.add("the symbol " + symbol + " is given a value and does not stand in “" + formula
                        + "”; write it into the formula, or leave it out of the step");
            }
            Unsayable.in(symbolsAndValues[i + 1])
                    .ifPresent(what -> wrong.add(symbol + " in “" + formula + "” is " + what));
        }
        lines.add(shown -> formula.symbols() + " | " + put(symbolsAndValues, shown) + " | " + shown.apply(result));
    }

    private static String put(Object[] symbolsAndValues, Function<Object, String> shown) {
        List<String> put = new ArrayList<>();
        for (int i = 0; i < symbolsAndValues.length; i += 2) {
            put.add(symbolsAndValues[i] + " " + shown.apply(symbolsAndValues[i + 1]));
        }
        return String.join(", ", put);
    }

    @Override
    public void source(String answer, Source source) {
        boolean ofFormula =
                formulas.stream().anyMatch(formula -> formula.source().equals(source));
        if (!ofFormula && !sources.contains(source)) {
            wrong.add("the answer " + answer + " stands on the source " + source.key()
                    + ", which is not declared; list it in sources()");
        }
        lines.add(shown -> answer + " by " + source.key());
    }

    /** What was taken down, in its order. */
    List<String> lines(Function<Object, String> shown) {
        return lines.stream().map(line -> line.written(shown)).toList();
    }

    /** What the host could not print or explain, each with what to do. */
    List<String> wrong() {
        return List.copyOf(wrong);
    }
}
