package org.hidewright.core.workshop.standard;

import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.core.workshop.Tables.Brought;

/** The tables that every workshop has, in the order they are listed. */
public final class StandardTables {
    private static final String BUNDLE = "org.hidewright.core";

    private StandardTables() {}

    /** Each as the host declares it, the same way a bundle does. */
    public static List<Brought> brought() {
        return Stream.of(
                        new Leather(),
                        new Hardware(),
                        new Threads(),
                        new Liquids(),
                        new Punches(),
                        new SlotPunches(),
                        new PrickingIrons(),
                        new EdgeTools(),
                        new Abrasives(),
                        new Machines(),
                        new Rates(),
                        new Measured())
                .map(DeclaredTable::of)
                .map(table -> new Brought(table, BUNDLE))
                .toList();
    }
}
