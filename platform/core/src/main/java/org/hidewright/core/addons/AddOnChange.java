package org.hidewright.core.addons;

import java.util.List;

/**
 * What a change of the add-ons did, or would do.
 *
 * @param moved what came, went, or gave way to another version, by id
 * @param on ids of bundles that were turned on
 * @param off ids of bundles that were turned off
 * @param strange whether something came that nobody signed whom this workshop has named, so that it has to be said what a
 *     bundle may do
 */
public record AddOnChange(List<Moved> moved, List<String> on, List<String> off, boolean strange) {
    public AddOnChange {
        moved = List.copyOf(moved);
        on = List.copyOf(on);
        off = List.copyOf(off);
    }

    /** Whether all stays as it is. */
    public boolean isNothing() {
        return moved.isEmpty() && on.isEmpty() && off.isEmpty();
    }

    /**
     * A bundle that came, went, or gave way to another version of itself.
     *
     * @param id its symbolic name
     * @param before the version that was there; empty where none was
     * @param now the version that is there; empty where none is any more
     * @param calculators ids of the calculators it declares, as it is now, or was before it went
     * @param needed whether it came only because another needs it
     */
    public record Moved(String id, String before, String now, List<String> calculators, boolean needed) {}
}
