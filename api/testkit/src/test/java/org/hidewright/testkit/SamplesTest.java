package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Length;
import org.hidewright.api.trials.Samples;
import org.hidewright.testkit.faults.Everything;
import org.hidewright.testkit.faults.Strip;
import org.junit.jupiter.api.Test;

/** What is asked in trials: inside the limits, at their ends, every choice, and the same every time. */
class SamplesTest {
    private static final TypicalAnswers TYPICAL = new TypicalAnswers(TwoPanels.item());

    private static List<Question> questions(Calculator<?, ?> calculator) {
        return RecordCalculator.of(calculator).declaration().questions();
    }

    private static <T> Set<T> met(List<Values> all, Function<Values, T> what) {
        return all.stream().map(what).collect(Collectors.toCollection(TreeSet::new));
    }

    private static double width(Values asked) {
        return ((Length) asked.entries().get("width")).mm();
    }

    @Test
    void theExampleComesFirst() {
        Values first = Samples.usual(questions(new Strip()), TYPICAL).get(0);
        assertEquals("{width=25.0 mm, length=400.0 mm}", first.entries().toString());
    }

    @Test
    void whatIsUsualReachesFromOneUsualEndToTheOther() {
        TreeSet<Double> widths = new TreeSet<>(met(Samples.usual(questions(new Strip()), TYPICAL), SamplesTest::width));
        assertEquals(10, widths.first());
        assertEquals(60, widths.last());
        assertTrue(widths.size() > 20, widths.toString());
    }

    @Test
    void anywhereReachesFromOneHardEndToTheOther() {
        TreeSet<Double> widths =
                new TreeSet<>(met(Samples.anywhere(questions(new Strip()), TYPICAL), SamplesTest::width));
        assertEquals(3, widths.first());
        assertEquals(200, widths.last());
        assertTrue(widths.size() > 20, widths.toString());
    }

    @Test
    void everyChoiceAndVariantIsAskedAndWhatMayStayOpenStaysSo() {
        List<Values> usual = Samples.usual(questions(new Everything()), TYPICAL);
        assertEquals(Set.of("bound", "cut", "turned"), met(usual, asked ->
                (String) asked.entries().get("edge")));
        assertEquals(
                Set.of("lace", "stud"),
                met(usual, asked -> ((Chosen) asked.entries().get("closing")).variant()));
        assertEquals(Set.of(false, true), met(usual, asked -> asked.get("until").isPresent()));
    }

    @Test
    void rowsKeepTheirNamesSinceOtherQuestionsNameThem() {
        for (Values asked : Samples.anywhere(questions(new Everything()), TYPICAL)) {
            List<?> layers = (List<?>) asked.entries().get("layers");
            assertEquals(
                    List.of("front", "lining"),
                    layers.stream().map(row -> ((Values) row).rowId()).toList());
        }
    }

    @Test
    void theyAreTheSameEveryTime() {
        assertEquals(
                Samples.usual(questions(new Everything()), TYPICAL).toString(),
                Samples.usual(questions(new Everything()), TYPICAL).toString());
    }

    @Test
    void whereNothingIsSaidToBeUsualWhatIsNearTheExampleIs() {
        // a stretch of 80 mm without usual limits: a fifth down and up
        TreeSet<Double> lengths = new TreeSet<>();
        for (Values asked : Samples.usual(questions(new Everything()), TYPICAL)) {
            Chosen leg = (Chosen) ((List<?>) asked.entries().get("stretches")).get(0);
            lengths.add(((Length) leg.values().entries().get("length")).mm());
        }
        assertEquals(64, lengths.first(), 1e-9);
        assertEquals(96, lengths.last(), 1e-9);
    }
}
