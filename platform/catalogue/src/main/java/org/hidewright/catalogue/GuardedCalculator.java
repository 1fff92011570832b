package org.hidewright.catalogue;

import java.util.Optional;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.catalogue.Guard;

/** A calculator whose code is called by a guard. Its declaration is data and is read without one. */
final class GuardedCalculator implements DeclaredCalculator {
    private final DeclaredCalculator calculator;
    private final String bundle;
    private final Guard guard;

    GuardedCalculator(DeclaredCalculator calculator, String bundle, Guard guard) {
        this.calculator = calculator;
        this.bundle = bundle;
        this.guard = guard;
    }

    @Override
    public Declaration declaration() {
        return calculator.declaration();
    }

    @Override
    public Outcome<Values> work(Values questions, Working working) {
        // A class, since ranges come here some hundred times and the first lambda of a bundle costs a start
        return guard.call(bundle, new Supplier<Outcome<Values>>() {
            @Override
            public Outcome<Values> get() {
                return calculator.work(questions, working);
            }
        });
    }

    @Override
    public Texts texts() {
        return calculator.texts();
    }

    @Override
    public Optional<String> picture(String name) {
        return calculator.picture(name);
    }
}
