package org.hidewright.core.workshop;

import java.util.Optional;
import java.util.function.Supplier;

/** What can be taken from besides a project's own copies: the tables that are installed, and the workshop file in use. */
public final class Stock {
    private final Supplier<Tables> tables;
    private final Workshop file;

    private Stock(Supplier<Tables> tables, Workshop file) {
        this.tables = tables;
        this.file = file;
    }

    /**
     * Tables without a file.
     *
     * @param tables asked for when something is taken
     */
    public static Stock of(Supplier<Tables> tables) {
        return new Stock(tables, null);
    }

    public Stock with(Workshop workshop) {
        return new Stock(tables, workshop);
    }

    public Tables tables() {
        return tables.get();
    }

    /** The workshop file in use. */
    public Optional<Workshop> file() {
        return Optional.ofNullable(file);
    }
}
