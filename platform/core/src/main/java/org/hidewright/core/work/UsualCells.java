package org.hidewright.core.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Range;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.WorkshopNotices;

/**
 * What is usual in a column of the workshop that says nothing of it itself: from the least to the most that the questions which
 * take it call usual. One and the same leather is for many things: only what is usual for none of them is told, and not as a fault,
 * since a row may be for something that takes none of the workshop by itself.
 */
public final class UsualCells {
    /** Where nobody is asked. */
    public static final UsualCells NONE = new UsualCells();

    private final Map<String, Range> byColumn = new HashMap<>();

    private UsualCells() {}

    /** What the questions of all calculators that are installed say. */
    public static UsualCells of(Catalogue catalogue) {
        UsualCells cells = new UsualCells();
        catalogue.ids().stream()
                .flatMap(id -> catalogue.find(id).stream())
                .forEach(installed ->
                        cells.add(installed.calculator().declaration().questions()));
        return cells;
    }

    private void add(List<Question> questions) {
        for (Question question : questions) {
            question.stock()
                    .ifPresent(column ->
                            question.usual().ifPresent(usual -> byColumn.merge(column, usual, UsualCells::both)));
            add(question.questions());
            question.variants().forEach(variant -> add(variant.questions()));
        }
    }

    private static Range both(Range one, Range other) {
        return Range.between(Math.min(one.low(), other.low()), Math.max(one.high(), other.high()));
    }

    /** That a value is unusual; empty where it is usual, or nobody says what is. */
    Optional<Notice> unusual(String table, Column column, double value) {
        Question question = column.question();
        Optional<Dimension> dimension = question.itemKind().dimension().filter(known -> known != Dimension.MONEY);
        Optional<Range> usual = Optional.ofNullable(byColumn.get(table + "." + column.key()))
                .filter(limits -> question.usual().isEmpty());
        return dimension.flatMap(known -> usual.filter(limits -> Resolver.isOutside(question, limits, known, value))
                .map(limits -> WorkshopNotices.UNUSUAL_WHERE_TAKEN.with(
                        Resolver.told(question, known, value),
                        Resolver.told(question, known, limits.low()),
                        Resolver.told(question, known, limits.high()))));
    }
}
