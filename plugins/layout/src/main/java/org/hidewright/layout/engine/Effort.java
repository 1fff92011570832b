package org.hidewright.layout.engine;

/**
 * How a search for few sheets parts its time between exchanges on one sheet and all sheets at once; tried on open instances.
 *
 * @param strikes so many attempts without success, and separating all sheets at once is given up
 * @param stall so many rounds without a substantial gain end such an attempt
 * @param attempts so many of both, the second and later ones after two large parts changed places
 * @param exchanges so many exchanges without gain before all sheets are worked at once
 * @param drawn or so many drawn of which few could be made
 * @param rounds so many rounds of both before another sheet is given up instead
 */
record Effort(int strikes, int stall, int attempts, int exchanges, int drawn, int rounds) {
    /** Parts that fill panels edge to edge seldom come apart by exchanges alone: few of them are on the right panel. */
    static final Effort EDGE_TO_EDGE = new Effort(2, 60, 3, 20, 400, 3);

    /** A round of all parts on hides takes as long as many exchanges, which gain more. */
    static final Effort APART = new Effort(1, 30, 1, 40, 800, 5);
}
