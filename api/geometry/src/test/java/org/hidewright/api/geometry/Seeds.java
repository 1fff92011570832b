package org.hidewright.api.geometry;

/** How many seeded cases a test works through. */
final class Seeds {
    private Seeds() {}

    /** Few where each of a thousand mutants has to be judged, more in a short verification, all of them in a long one. */
    static int count(int usual, int inLongRuns) {
        int asked = Integer.getInteger("hidewright.seeds", 0);
        return asked > 0 ? asked : Boolean.getBoolean("hidewright.long") ? inLongRuns : usual;
    }
}
