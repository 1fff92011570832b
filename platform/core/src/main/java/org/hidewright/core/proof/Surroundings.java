package org.hidewright.core.proof;

import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.workshop.Tables;

/**
 * What is installed beside a text that is looked over.
 *
 * @param others finds the calculators that it asks and that draw
 * @param tables where a guided start finds rows, the columns of its own bundle among them
 */
public record Surroundings(Function<String, Optional<DeclaredCalculator>> others, Tables tables) {
    /** What a question says that suits it and is not there: {@code from} or {@code stock}; of what is not installed nothing is known. */
    Optional<String> notThere(Question question) {
        return question.from()
                .filter(question.kind() == Kind.GROUP ? this::noWay : this::noAnswer)
                .map(from -> "from")
                .or(() -> question.stock().filter(this::noColumn).map(stock -> "stock"));
    }

    private boolean noAnswer(String from) {
        String[] named = from.split("\\.", 2);
        return others.apply(named[0])
                .filter(whom -> whom.declaration().answer(named[1]).isEmpty())
                .isPresent();
    }

    private boolean noWay(String from) {
        String[] named = from.split("\\.", 2);
        return others.apply(named[0])
                .filter(whom -> whom.declaration().questions().stream()
                        .flatMap(question -> question.variants().stream())
                        .noneMatch(way -> way.key().equals(named[1])))
                .isPresent();
    }

    private boolean noColumn(String stock) {
        String[] named = stock.split("\\.", 2);
        return tables.find(named[0])
                .filter(table -> table.column(named[1]).isEmpty())
                .isPresent();
    }
}
