package org.hidewright.core.workshop;

import java.util.Optional;
import java.util.function.Supplier;

/** What can be taken from besides a project's own copies: the tables that are installed, and the workshop file in use. */
public final class Stock {
    private final Supplier<Tables> tables;
    private final Workshop file;
    private final boolean sound;

    private Stock(Supplier<Tables> tables, Workshop file, boolean sound) {
        this.tables = tables;
        this.file = file;
        this.sound = sound;
    }

    /**
     * Tables without a file.
     *
     * @param tables asked for when something is taken
     */
    public static Stock of(Supplier<Tables> tables) {
        return new Stock(tables, null, true);
    }

    /** The same with a workshop file that nothing is wrong with. */
    public Stock with(Workshop workshop) {
        return new Stock(tables, workshop, true);
    }

    /** The same with a file of which parts had to be passed over, so that what is taken from it may lack something. */
    public Stock withParts(Workshop workshop) {
        return new Stock(tables, workshop, false);
    }

    public Tables tables() {
        return tables.get();
    }

    /** Whether no part of the file in use had to be passed over. */
    public boolean sound() {
        return sound;
    }

    /** The workshop file in use. */
    public Optional<Workshop> file() {
        return Optional.ofNullable(file);
    }
}
