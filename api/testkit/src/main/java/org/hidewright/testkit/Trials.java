package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.api.trials.Samples;

/** One calculator asked many times, and what it told. */
final class Trials {
    /** One that is so slow that not all can be asked is told by its pace. */
    private static final long LONGEST_NS = 30_000_000_000L;

    private final RecordCalculator calculator;
    private final Bench bench;
    private final List<Values> usualAsked;
    private final List<Values> anywhereAsked;
    private final Optional<String> unreadable;
    private List<Told> usual;
    private List<Told> anywhere;

    private Trials(
            RecordCalculator calculator,
            Bench bench,
            List<Values> usualAsked,
            List<Values> anywhereAsked,
            Optional<String> unreadable) {
        this.calculator = calculator;
        this.bench = bench;
        this.usualAsked = usualAsked;
        this.anywhereAsked = anywhereAsked;
        this.unreadable = unreadable;
    }

    /** @param item what a question for one is answered with */
    static Trials of(RecordCalculator calculator, Bench bench, Item item) {
        TypicalAnswers typical = new TypicalAnswers(item);
        List<Question> questions = calculator.declaration().questions();
        try {
            return new Trials(
                    calculator,
                    bench,
                    Samples.usual(questions, typical),
                    Samples.anywhere(questions, typical),
                    Optional.empty());
        } catch (TypicalAnswers.Unreadable e) {
            return new Trials(calculator, bench, List.of(), List.of(), Optional.of(e.getMessage()));
        }
    }

    private List<Told> ask(List<Values> all) {
        long start = System.nanoTime();
        List<Told> told = new ArrayList<>();
        for (Values asked : all) {
            if (System.nanoTime() - start < LONGEST_NS) {
                told.add(bench.ask(calculator, asked));
            }
        }
        return told;
    }

    String id() {
        return calculator.declaration().id();
    }

    RecordCalculator calculator() {
        return calculator;
    }

    Bench bench() {
        return bench;
    }

    /** Why no question could be made up from the presets and examples. */
    Optional<String> unreadable() {
        return unreadable;
    }

    /** At the presets and examples; empty where they cannot be read. */
    Optional<Told> example() {
        return usual().stream().findFirst();
    }

    /** Inside usual limits, the example first. */
    List<Told> usual() {
        if (usual == null) {
            usual = ask(usualAsked);
        }
        return usual;
    }

    /** The example, and those that differ from it in one answer. */
    List<Told> oneChanged() {
        int most = Math.max(0, usualAsked.size() - Samples.SETS);
        return usual().subList(0, Math.min(most, usual().size()));
    }

    List<Told> all() {
        if (anywhere == null) {
            anywhere = ask(anywhereAsked);
        }
        return Stream.concat(usual().stream(), anywhere.stream()).toList();
    }

    /** Some of what is asked inside usual limits, the example first, where all would take long. */
    List<Values> someAsked(int most) {
        return Samples.some(usualAsked, most);
    }

    /** Some of those inside usual limits, the example first. */
    List<Told> some(int most) {
        return Samples.some(usual(), most);
    }
}
