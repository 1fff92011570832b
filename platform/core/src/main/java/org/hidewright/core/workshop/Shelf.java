package org.hidewright.core.workshop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.workshop.Tables.BroughtRow;

/**
 * The rows a project works with: its own copies first, so that what was worked yesterday is worked alike today; what it has
 * no copy of comes from the workshop file in use; single rows that this has not either, from bundles. What bundles bring are
 * sizes that there are, not what the maker has: whoever takes a table whole takes the maker’s own rows.
 */
public final class Shelf {
    private final Stock stock;
    private final Workshop kept;
    private final Workshop file;
    private volatile Tables tables;

    private Shelf(Stock stock, Workshop kept, Workshop file) {
        this.stock = stock;
        this.kept = kept;
        this.file = file;
    }

    /**
     * The rows within reach of a project.
     *
     * @param kept its own copies
     */
    public static Shelf of(Optional<Workshop> kept, Stock stock) {
        return new Shelf(stock, kept.orElse(null), stock.file().orElse(null));
    }

    /** Whether the same is within reach as was before, as far as anybody looked there. */
    public boolean sameAs(Shelf before) {
        return kept == before.kept && file == before.file && (before.tables == null || before.tables == tables());
    }

    /**
     * A row and the currency of amounts that name none in it.
     *
     * @param kept whether it is the project's own copy
     * @param from the bundle it comes from; empty for what the maker wrote
     */
    public record Taken(Row row, Optional<Unit> currency, boolean kept, Optional<Bringer> from) {}

    /** What is installed; the same for as long as a project is worked with this shelf. */
    public Tables tables() {
        Tables asked = tables;
        if (asked == null) {
            asked = stock.tables();
            tables = asked;
        }
        return asked;
    }

    /** The project’s own copies. */
    Optional<Workshop> kept() {
        return Optional.ofNullable(kept);
    }

    /** The workshop file in use. */
    Optional<Workshop> file() {
        return Optional.ofNullable(file);
    }

    /** Whether there is anything to take rows from. */
    public boolean stocked() {
        return file != null || kept != null && !kept.tables().isEmpty() || tables().haveRows();
    }

    public Optional<Taken> row(String table, String id) {
        return row(kept, true, table, id).or(() -> now(table, id));
    }

    /** A row as it would be taken without the project’s copy of it. */
    Optional<Taken> now(String table, String id) {
        return row(file, false, table, id).or(() -> tables().row(table, id).map(Shelf::taken));
    }

    private static Taken taken(BroughtRow brought) {
        return new Taken(brought.row(), brought.currency(), false, Optional.of(brought.from()));
    }

    private static Optional<Taken> row(Workshop from, boolean kept, String table, String id) {
        return from == null ? Optional.empty() : from.row(table, id).map(row -> taken(from, kept, row));
    }

    /** The rows the project has copies of, each as {@code table[row]}. */
    public List<String> rows() {
        return kept == null
                ? List.of()
                : kept.tables().stream()
                        .flatMap(table -> kept.rows(table).stream())
                        .map(Row::toString)
                        .toList();
    }

    /**
     * Every row of a table: the project's copies where it holds the table whole, else those of the file, its own copies of
     * single rows in their places; empty where neither has them all.
     */
    public Optional<List<Taken>> rows(String table) {
        if (kept != null && kept.whole(table)) {
            return Optional.of(taken(kept, true, table));
        }
        if (file == null) {
            return Optional.empty();
        }
        return Optional.of(taken(file, false, table).stream()
                .map(taken -> row(kept, true, table, taken.row().id()).orElse(taken))
                .toList());
    }

    private static List<Taken> taken(Workshop from, boolean kept, String table) {
        return from.rows(table).stream().map(row -> taken(from, kept, row)).toList();
    }

    private static Taken taken(Workshop from, boolean kept, Row row) {
        return new Taken(row, row.currencyIn(from), kept, kept ? row.from() : Optional.empty());
    }

    /** The rows a link leads to; none where it leads nowhere. */
    List<Taken> taken(StockLink link) {
        return link.row().isEmpty()
                ? rows(link.table()).orElse(List.of())
                : row(link.table(), link.row()).map(List::of).orElse(List.of());
    }

    /** The rows a link would lead to without the project’s copies, save those that only the project has. */
    List<Taken> renewed(StockLink link) {
        List<Taken> now = new Shelf(stock, null, file).taken(link);
        return now.isEmpty() ? taken(link) : now;
    }

    /** What lies where a link leads, to be held against what lay there before. */
    public Object seen(StockLink link) {
        return List.of(
                tables().find(link.table()), link.row().isEmpty() ? rows(link.table()) : row(link.table(), link.row()));
    }

    /** Ids of the rows of a table that can be taken, for suggestions. */
    public List<String> ids(String table) {
        Map<String, Boolean> ids = new LinkedHashMap<>();
        for (Workshop from : new Workshop[] {kept, file}) {
            if (from != null) {
                from.rows(table).forEach(row -> ids.put(row.id(), true));
            }
        }
        tables().rows(table).forEach(brought -> ids.put(brought.row().id(), true));
        return List.copyOf(ids.keySet());
    }
}
