package org.hidewright.api.declaration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Search;
import org.hidewright.api.calculator.Working;
import org.junit.jupiter.api.Test;

/** A calculator one of whose questions is searched for. */
class RecordSearchTest {
    public record Halves(
            @Asked(preset = "1") int lower,
            @Asked(preset = "2") int upper) {}

    public record Asks(@Asked(preset = "12") int sum, @Asked Optional<Halves> halves) {}

    public record Answers(@Answered int left) {}

    public record Other(@Asked(preset = "1") int lower) {}

    public record AsksTwice(
            @Asked Optional<Halves> one, @Asked Optional<Halves> other) {}

    /** Looks for two numbers that make up a sum, one try after another. */
    @Calculates("halving")
    public static final class Halving implements Calculator<Asks, Answers>, Search<Asks, Halves> {
        @Override
        public Outcome<Answers> calculate(Asks asks, Working working) {
            return Outcome.of(new Answers(asks.halves()
                    .map(halves -> asks.sum() - halves.lower() - halves.upper())
                    .orElse(asks.sum())));
        }

        @Override
        public void search(Asks asks, Budget budget, Consumer<Halves> better) {
            int upper = asks.halves().map(Halves::upper).orElse(0);
            for (long tried = 0; budget.spent(tried) < 1; tried++) {
                upper++;
                better.accept(new Halves(1, upper));
                if (1 + upper == asks.sum()) {
                    return;
                }
            }
        }
    }

    @Calculates("of-another")
    public static final class OfAnother implements Calculator<Other, Answers>, Search<Asks, Halves> {
        @Override
        public Outcome<Answers> calculate(Other other, Working working) {
            return Outcome.of(new Answers(0));
        }

        @Override
        public void search(Asks asks, Budget budget, Consumer<Halves> better) {}
    }

    @Calculates("not-asked")
    public static final class NotAsked implements Calculator<Other, Answers>, Search<Other, Halves> {
        @Override
        public Outcome<Answers> calculate(Other other, Working working) {
            return Outcome.of(new Answers(0));
        }

        @Override
        public void search(Other other, Budget budget, Consumer<Halves> better) {}
    }

    @Calculates("asked-twice")
    public static final class AskedTwice implements Calculator<AsksTwice, Answers>, Search<AsksTwice, Halves> {
        @Override
        public Outcome<Answers> calculate(AsksTwice asks, Working working) {
            return Outcome.of(new Answers(0));
        }

        @Override
        public void search(AsksTwice asks, Budget budget, Consumer<Halves> better) {}
    }

    public sealed interface Cut permits Straight, Round {}

    public record Straight(
            @RowId String id, @Asked(preset = "1") int steps) implements Cut {}

    public record Round(
            @RowId String id, @Asked(preset = "2") int turns) implements Cut {}

    public record Cuts(
            @Asked(example = "[{\"id\":\"a\",\"straight\":{}}]")
            List<Cut> cuts) {}

    public record AsksCuts(@Asked Optional<Cuts> cuts) {}

    /** What is found is one of several variants in each row. */
    @Calculates("cutting")
    public static final class Cutting implements Calculator<AsksCuts, Answers>, Search<AsksCuts, Cuts> {
        @Override
        public Outcome<Answers> calculate(AsksCuts asks, Working working) {
            return Outcome.of(
                    new Answers(asks.cuts().map(cuts -> cuts.cuts().size()).orElse(0)));
        }

        @Override
        public void search(AsksCuts asks, Budget budget, Consumer<Cuts> better) {
            better.accept(new Cuts(List.of(new Straight("a", 3), new Round("b", 4))));
        }
    }

    private record Tries(long most) implements Budget {
        @Override
        public int workers() {
            return 1;
        }

        @Override
        public void sideBySide(List<? extends Runnable> searches) {
            searches.forEach(Runnable::run);
        }

        @Override
        public long seed() {
            return 1;
        }

        @Override
        public double spent(long tried) {
            return (double) tried / most;
        }
    }

    private static List<Values> search(Values asked, long tries) {
        List<Values> found = new ArrayList<>();
        RecordCalculator.of(new Halving()).search().orElseThrow().search(asked, new Tries(tries), found::add);
        return found;
    }

    @Test
    void theQuestionSearchedForIsTheOneOfItsType() {
        DeclaredSearch search = RecordCalculator.of(new Halving()).search().orElseThrow();
        assertEquals("halves", search.sought().key());
        assertTrue(search.sought().optional());
        assertEquals(
                List.of("lower", "upper"),
                search.sought().questions().stream().map(Question::key).toList());
    }

    @Test
    void whatIsFoundComesAsValuesAndEachIsBetter() {
        List<Values> found = search(Values.of(Map.of("sum", 4)), 100);
        assertEquals(
                List.of(
                        Values.of(Map.of("lower", 1, "upper", 1)),
                        Values.of(Map.of("lower", 1, "upper", 2)),
                        Values.of(Map.of("lower", 1, "upper", 3))),
                found);
    }

    @Test
    void theSearchEndsWhereItsBudgetDoes() {
        assertEquals(2, search(Values.of(Map.of("sum", 100)), 2).size());
    }

    @Test
    void aSearchGoesOnFromWhatWasFoundBefore() {
        Values asked = Values.of(Map.of("sum", 9, "halves", Values.of(Map.of("lower", 1, "upper", 7))));
        assertEquals(List.of(Values.of(Map.of("lower", 1, "upper", 8))), search(asked, 100));
    }

    @Test
    void whatIsFoundIsWorkedWithLikeWhatIsTyped() {
        RecordCalculator halving = RecordCalculator.of(new Halving());
        Values found = search(Values.of(Map.of("sum", 4)), 100).get(2);
        Values worked = halving.work(Values.of(Map.of("sum", 4, "halves", found)), Working.NONE)
                .answers()
                .orElseThrow();
        assertEquals(Optional.of(0), worked.get("left"));
    }

    @Test
    void whatIsFoundSaysWhichVariantItIs() {
        RecordCalculator cutting = RecordCalculator.of(new Cutting());
        List<Values> found = new ArrayList<>();
        cutting.search().orElseThrow().search(Values.of(Map.of()), new Tries(1), found::add);
        List<Chosen> rows = List.of(
                Chosen.of("straight", Values.row("a", Map.of("steps", 3))),
                Chosen.of("round", Values.row("b", Map.of("turns", 4))));
        assertEquals(List.of(Values.of(Map.of("cuts", rows))), found);
        Values asked = Values.of(Map.of("cuts", found.get(0)));
        assertEquals(
                Optional.of(2),
                cutting.work(asked, Working.NONE).answers().orElseThrow().get("left"));
    }

    @Test
    void aCalculatorThatSearchesForNothingSaysSo() {
        @Calculates("plain")
        final class Plain implements Calculator<Other, Answers> {
            @Override
            public Outcome<Answers> calculate(Other other, Working working) {
                return Outcome.of(new Answers(0));
            }
        }
        assertEquals(Optional.empty(), RecordCalculator.of(new Plain()).search());
    }

    @Test
    void searchAndCalculationHaveTheSameQuestions() {
        assertTold("it searches with Asks and calculates with Other", new OfAnother());
    }

    @Test
    void whatIsSearchedForIsAQuestion() {
        assertTold("an Optional<Halves>", new NotAsked());
    }

    @Test
    void onlyOneQuestionIsSearchedFor() {
        assertTold("one alone", new AskedTwice());
    }

    private static void assertTold(String words, Calculator<?, ?> calculator) {
        String told = assertThrows(InvalidDeclaration.class, () -> RecordCalculator.of(calculator))
                .getMessage();
        assertTrue(told.contains(words), told);
    }
}
