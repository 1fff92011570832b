package org.hidewright.edges;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Phrase;

/** What a step says to do, and to what. */
final class StepWords {
    private static final String AND = "step-and";
    private static final String EDGE = "step-edge";
    private static final String FACES = "step-faces";
    private static final String WHOLE_PIECE = "step-whole-piece";
    private static final String COAT = "-coat";
    private static final String MARGINS_FREE = "-margins-free";

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
        Stream<Phrase> edges =
                step.edges().stream().map(plan -> Phrase.of(EDGE, plan.edge().id()));
        Stream<Phrase> faces = step.onFaces() ? Stream.of(Phrase.of(FACES)) : Stream.empty();
        Optional<Phrase> all = Stream.concat(faces, edges).reduce((these, next) -> Phrase.of(AND, these, next));
        return all.orElse(Phrase.of(WHOLE_PIECE));
    }

    static List<String> phrases() {
        return Stream.concat(
                        Stream.of(AND, EDGE, FACES, WHOLE_PIECE, key(Work.WAX) + MARGINS_FREE),
                        Stream.concat(
                                Stream.of(Work.values()).map(StepWords::key),
                                Stream.of(Work.DYE, Work.BURNISH, Work.PAINT, Work.SEAL)
                                        .map(work -> key(work) + COAT)))
                .toList();
    }
}
