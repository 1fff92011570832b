package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.testkit.BundleCalculators;
import org.junit.jupiter.api.Test;

/** What is taken when nothing is typed: habits of the trade and nothing at all, never the maker’s own piece. */
class PresetsTest {
    private static final Set<String> HABITS = Set.of(
            "belt holes",
            "belt spacing",
            "belt tip-beyond",
            "belt tip-length",
            "belt turn-back-length",
            "belt slot-length",
            "belt slot-width",
            "belt keeper-width",
            "keeper ease",
            "keeper keeper-width",
            "keeper neutral-line",
            "neutral-line reading-error",
            "strap margin",
            "strap-width ease",
            "strips straight-edge-trim",
            "strips gap",
            "strips join-lap",
            "two-bars neutral-line",
            "wrap neutral-line");

    /** One strap, one layer; none where there may be none. */
    private static final Set<String> COUNTS = Set.of("strips straps", "keeper count", "strap layers");

    private static Stream<Question> inside(Question question) {
        return Stream.concat(
                        Stream.of(question),
                        Stream.concat(
                                question.questions().stream(),
                                question.variants().stream().flatMap(variant -> variant.questions().stream())))
                .flatMap(below -> below == question ? Stream.of(question) : inside(below));
    }

    private static Set<String> numbersPreset() {
        Set<String> preset = new TreeSet<>();
        for (RecordCalculator calculator : BundleCalculators.declaredBeside(StrapLayout.class)) {
            Declaration declaration = calculator.declaration();
            declaration.questions().stream()
                    .flatMap(PresetsTest::inside)
                    .filter(question -> question.unit().isPresent()
                            || List.of(Kind.COUNT, Kind.RATIO).contains(question.kind()))
                    .filter(question -> !question.preset().orElse("0 mm").equals("0 mm"))
                    .forEach(question -> preset.add(declaration.id() + " " + question.key()));
        }
        return preset;
    }

    @Test
    void onlyHabitsOfTheTradeStandInForANumberNobodyTyped() {
        Set<String> known = new TreeSet<>(HABITS);
        known.addAll(COUNTS);
        assertEquals(known, numbersPreset());
    }

    @Test
    void noRowIsThereUntilSomebodyTypesIt() {
        Set<String> rows = new TreeSet<>();
        for (RecordCalculator calculator : BundleCalculators.declaredBeside(StrapLayout.class)) {
            calculator.declaration().questions().stream()
                    .flatMap(PresetsTest::inside)
                    .filter(question -> question.kind() == Kind.ROWS)
                    .filter(question -> !question.preset().orElse("[]").equals("[]"))
                    .forEach(question -> rows.add(question.key()));
        }
        assertEquals(Set.of(), rows);
    }
}
