package org.hidewright.edges;

/** A grade of abrasive with the mean size of its grain. */
record Grit(String label, double micrometres) {
    /** A P grade that is in the table. */
    static Grit p(int number) {
        return GritScale.P.grit(number);
    }

    /** How much coarser than another it is. */
    double over(Grit finer) {
        return micrometres / finer.micrometres;
    }
}
