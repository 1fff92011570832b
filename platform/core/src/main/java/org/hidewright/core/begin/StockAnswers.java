package org.hidewright.core.begin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.work.SuitableRows;
import org.hidewright.core.work.SuitableRows.Fit;
import org.hidewright.core.workshop.StockLink;

/** Answers that the workshop has: links to rows, those of one table to one and the same row where that suits them all. */
final class StockAnswers {
    private final SuitableRows rows;
    /** By table, the row that is to be taken where it suits. */
    private final Map<String, String> preferred;

    StockAnswers(SuitableRows rows, Map<String, String> preferred) {
        this.rows = rows;
        this.preferred = preferred;
    }

    /**
     * The first row that suits each of several questions by itself, where another measure of it is asked as well the row that
     * is taken for that: the bar of a buckle is that of the buckle which is chosen by its width. A group without a preset has
     * those inside.
     */
    Map<String, Object> eachByItself(List<Question> questions) {
        return eachByItself(questions, new ArrayList<>());
    }

    private Map<String, Object> eachByItself(List<Question> questions, List<StockLink> taken) {
        Map<String, Object> links = new LinkedHashMap<>();
        for (Question question : questions) {
            if (question.optional()) {
                continue;
            }
            best(rows.of(question), taken).ifPresent(link -> {
                taken.add(link);
                links.put(question.key(), link.written());
            });
            if (question.kind() == Kind.GROUP && question.preset().isEmpty()) {
                Map<String, Object> inside = eachByItself(question.questions(), taken);
                if (!inside.isEmpty()) {
                    links.put(question.key(), inside);
                }
            }
        }
        return links;
    }

    private static Optional<StockLink> best(List<Fit> fits, List<StockLink> taken) {
        return fits.stream()
                .filter(fit -> fit.usual() == fits.get(0).usual())
                .map(Fit::link)
                .filter(link -> taken.stream()
                        .anyMatch(other -> other.table().equals(link.table())
                                && other.row().equals(link.row())
                                && !other.column().equals(link.column())))
                .findFirst()
                .or(() -> fits.stream().map(Fit::link).findFirst());
    }

    /** Rows for questions that are asked of the same thing: its price and its area are those of one hide. */
    Map<String, Object> alike(List<Question> questions) {
        Map<String, Object> links = new LinkedHashMap<>();
        for (Question question : questions) {
            best(question, questions).ifPresent(link -> links.put(question.key(), link.written()));
        }
        return links;
    }

    private Optional<StockLink> best(Question question, List<Question> all) {
        List<StockLink> fits = links(question);
        List<List<String>> others = all.stream()
                .filter(other -> table(other).equals(table(question)))
                .map(other -> links(other).stream().map(StockLink::row).toList())
                .filter(ids -> !ids.isEmpty())
                .toList();
        List<StockLink> shared = fits.stream()
                .filter(link -> others.stream().allMatch(ids -> ids.contains(link.row())))
                .toList();
        List<StockLink> from = shared.isEmpty() ? fits : shared;
        String wanted = preferred.getOrDefault(table(question), "");
        return from.stream()
                .filter(link -> link.row().equals(wanted))
                .findFirst()
                .or(() -> from.stream().findFirst());
    }

    private List<StockLink> links(Question question) {
        return rows.of(question).stream().map(Fit::link).toList();
    }

    private static String table(Question question) {
        return question.stock()
                .map(stock -> stock.substring(0, stock.indexOf('.')))
                .orElse("");
    }
}
