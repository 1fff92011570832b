package org.hidewright.command;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.wording.BareNumbers;
import org.hidewright.core.wording.UnitSystem;

/** Numbers typed without a unit on a command line: who asks to see inches means inches. */
final class TypedUnits {
    private final Declaration declaration;
    private final UnitSystem system;

    TypedUnits(Declaration declaration, UnitSystem system) {
        this.declaration = declaration;
        this.system = system;
    }

    /**
     * What was typed, with the unit that is shown where it has none of its own.
     *
     * @param path of the question, {@code core.round-bar.diameter}, also without the variant
     */
    String read(String path, String typed) {
        return at(declaration.questions(), List.of(path.split("\\.")))
                .map(question -> BareNumbers.withUnitShown(typed, question, system))
                .orElse(typed);
    }

    private static Optional<Question> at(List<Question> level, List<String> path) {
        Optional<Question> found = level.stream()
                .filter(question -> question.key().equals(path.get(0)))
                .findFirst();
        if (path.size() == 1) {
            return found;
        }
        List<String> rest = path.subList(1, path.size());
        return found.flatMap(question -> inside(question, rest));
    }

    private static Optional<Question> inside(Question question, List<String> path) {
        Stream<Optional<Question>> named = question.variants().stream()
                .filter(variant -> path.size() > 1 && variant.key().equals(path.get(0)))
                .map(variant -> at(variant.questions(), path.subList(1, path.size())));
        Stream<Optional<Question>> unnamed = question.variants().stream().map(variant -> at(variant.questions(), path));
        return Stream.concat(named, Stream.concat(unnamed, Stream.of(at(question.questions(), path))))
                .flatMap(Optional::stream)
                .findFirst();
    }
}
