package org.hidewright.core.work;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Range;
import org.hidewright.core.json.Place;
import org.hidewright.core.work.Entry.Answered;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Shelf.Taken;
import org.hidewright.core.workshop.StockLink;

/**
 * The rows of the maker’s own workshop that can answer a question which names a column: all of the value lies inside the hard
 * limits. Those whose middle lies inside the usual limits come first, else they come in the order of the workshop.
 */
public final class SuitableRows {
    /** Middles of ranges are sums; a billionth of a metre is no leather. */
    private static final double SLACK = 1e-9;

    private final Shelf shelf;

    public SuitableRows(Shelf shelf) {
        this.shelf = shelf;
    }

    /**
     * A row that suits.
     *
     * @param link to its cell
     * @param name what the maker calls it
     * @param text what is typed in the cell
     * @param usual whether its value is a usual answer
     */
    public record Fit(StockLink link, String name, String text, boolean usual) {}

    /** The rows that suit a question, the best first; none where it names no column or the workshop has nothing for it. */
    public List<Fit> of(Question question) {
        return question.stock().stream()
                .flatMap(stock ->
                        fits(question, stock.substring(0, stock.indexOf('.')), stock.substring(stock.indexOf('.') + 1))
                                .stream())
                .sorted(Comparator.comparing(fit -> !fit.usual()))
                .toList();
    }

    private List<Fit> fits(Question question, String table, String column) {
        return shelf.rows(table).orElse(List.of()).stream()
                .map(Taken::row)
                .flatMap(row -> fit(question, row, column).stream())
                .toList();
    }

    private Optional<Fit> fit(Question question, Row row, String column) {
        StockLink link = new StockLink(row.table(), row.id(), column);
        StockReader reader = new StockReader(
                shelf, link, (inner, path) -> new Answered(new Entry.Open(), Entry.Origin.PRESET, "", null));
        Entry entry = reader.read(question, question.key(), Place.START);
        if (!reader.remarks().isEmpty() || !inside(question, entry)) {
            return Optional.empty();
        }
        return Optional.of(
                new Fit(link, row.cell("name").orElse(row.id()), reader.text().orElse(""), usual(question, entry)));
    }

    private static boolean inside(Question question, Entry entry) {
        Optional<Range> range = range(entry);
        return range.isEmpty()
                || range.get().low() >= question.min().orElse(Double.NEGATIVE_INFINITY)
                        && range.get().high() <= question.max().orElse(Double.POSITIVE_INFINITY);
    }

    private static boolean usual(Question question, Entry entry) {
        Optional<Range> range = range(entry);
        if (range.isEmpty() || question.usual().isEmpty()) {
            return true;
        }
        double middle = (range.get().low() + range.get().high()) / 2;
        return middle >= question.usual().get().low() - SLACK
                && middle <= question.usual().get().high() + SLACK;
    }

    /** Of a single quantity; empty for what is no number. */
    private static Optional<Range> range(Entry entry) {
        if (entry instanceof Entry.Stocked stocked) {
            return range(stocked.entry());
        }
        return entry instanceof Entry.Quantity quantity
                ? Optional.of(quantity.typed().range())
                : Optional.empty();
    }
}
