package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.workshop.standard.StandardTables;
import org.junit.jupiter.api.Test;

/** What a question says of the workshop is there: a column, and one that measures what is asked. */
class SuitableStockIT {
    private final List<String> unfit = new ArrayList<>();
    private int looked;

    private final List<DeclaredTable> tables = new ArrayList<>();

    private Optional<Question> column(String stock) {
        String table = stock.substring(0, stock.indexOf('.'));
        String column = stock.substring(stock.indexOf('.') + 1);
        return tables.stream()
                .filter(one -> one.id().equals(table))
                .flatMap(one -> one.columns().stream())
                .filter(one -> one.key().equals(column))
                .findFirst();
    }

    private void look(List<Question> questions, String of) {
        for (Question question : questions) {
            question.stock().ifPresent(stock -> {
                looked++;
                if (column(stock).filter(one -> one.kind() == question.kind()).isEmpty()) {
                    unfit.add(of + ": " + question.key() + " from " + stock);
                }
            });
            question.variants().forEach(variant -> look(variant.questions(), of));
            look(question.questions(), of);
        }
    }

    @Test
    void everyColumnThatAQuestionNamesIsThere() throws Exception {
        StandardTables.brought().forEach(brought -> tables.add(brought.table()));
        tables.addAll(BundledCalculators.tables());
        Catalogue catalogue = BundledCalculators.catalogue();
        catalogue
                .ids()
                .forEach(id -> look(
                        catalogue
                                .find(id)
                                .orElseThrow()
                                .calculator()
                                .declaration()
                                .questions(),
                        id));
        assertEquals(List.of(), unfit);
        assertTrue(looked > 30, looked + " questions");
    }
}
