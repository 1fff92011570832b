package org.hidewright.edges;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Length;

/** What a step says to do, and to what. */
final class StepWords {
    private static final String AND = "step-and";
    private static final String EDGE = "step-edge";
    private static final String EDGE_WITH_BEVEL = "step-edge-with-bevel";
    private static final String FACES = "step-faces";
    private static final String WHOLE_PIECE = "step-whole-piece";
    private static final String COAT = "-coat";
    private static final String MARGINS_FREE = "-margins-free";
    /** A beveler is told by tenths of a millimetre. */
    private static final double TENTHS = 10;

    private StepWords() {}

    static Phrase work(Step step) {
        Task task = step.task();
        String key = key(task.work());
        if (task.work() == Work.CEMENT_TURN) {
            return Phrase.of(key, step.drying().least(), step.drying().most());
        } else if (task.work() == Work.WAX && task.stage() == Stage.BEFORE_GLUE_UP) {
            return Phrase.of(key + MARGINS_FREE);
        }
        if (task.grit().isPresent()) {
            return Phrase.of(key, task.grit().get().label());
        } else if (step.coats() > 1 && task.work() != Work.SAND_PAINT) {
            return Phrase.of(key + COAT, task.coat(), step.coats());
        }
        return Phrase.of(key);
    }

    private static String key(Work work) {
        return "step-" + work.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Phrase on(Step step) {
        Stream<Phrase> edges = step.edges().stream().map(plan -> edge(step, plan));
        Stream<Phrase> faces = step.onFaces() ? Stream.of(Phrase.of(FACES)) : Stream.empty();
        Optional<Phrase> all = Stream.concat(faces, edges).reduce((these, next) -> Phrase.of(AND, these, next));
        return all.orElse(Phrase.of(WHOLE_PIECE));
    }

    private static Phrase edge(Step step, EdgePlan plan) {
        String name = plan.edge().id();
        return step.is(Work.BEVEL)
                ? Phrase.of(EDGE_WITH_BEVEL, name, tenths(plan.bevel().orElseThrow()))
                : Phrase.of(EDGE, name);
    }

    private static Length tenths(Length width) {
        return Length.ofMm(Math.round(width.mm() * TENTHS) / TENTHS);
    }

    static List<String> phrases() {
        return Stream.concat(
                        Stream.of(AND, EDGE, EDGE_WITH_BEVEL, FACES, WHOLE_PIECE, key(Work.WAX) + MARGINS_FREE),
                        Stream.concat(
                                Stream.of(Work.values()).map(StepWords::key),
                                Stream.of(Work.DYE, Work.BURNISH, Work.PAINT, Work.SEAL)
                                        .map(work -> key(work) + COAT)))
                .toList();
    }
}
