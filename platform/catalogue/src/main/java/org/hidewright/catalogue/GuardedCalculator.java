package org.hidewright.catalogue;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.DeclaredSearch;
import org.hidewright.api.declaration.Question;
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
    public Optional<DeclaredSearch> search() {
        return calculator.search().map(Guarded::new);
    }

    /** A search whose code is let work by the guard until its budget is spent. */
    private final class Guarded implements DeclaredSearch {
        private final DeclaredSearch search;

        Guarded(DeclaredSearch search) {
            this.search = search;
        }

        @Override
        public Question sought() {
            return search.sought();
        }

        @Override
        public void search(Values questions, Budget budget, Consumer<Values> better) {
            guard.run(
                    bundle, () -> search.search(questions, new LentThreads(budget), better), () -> budget.spent(0) < 1);
        }
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
