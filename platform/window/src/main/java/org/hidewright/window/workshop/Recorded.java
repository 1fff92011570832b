package org.hidewright.window.workshop;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Results that were measured, appended with the day they were measured on. The clock is the window’s: no calculator knows
 * it.
 */
public record Recorded(OpenWorkshop workshop) {
    /** Id of the table they stand in. */
    public static final String TABLE = "measured";

    private static final String DAY = "day";

    /**
     * Appends a result of today.
     *
     * @param cells what is known of it, by column
     * @return the id of its row
     */
    public String now(Map<String, String> cells) {
        return on(LocalDate.now(ZoneId.systemDefault()), cells);
    }

    String on(LocalDate day, Map<String, String> cells) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(DAY, day.toString());
        all.putAll(cells);
        return workshop.add(TABLE, all);
    }
}
