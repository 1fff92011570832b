package org.hidewright.layout.task;

/**
 * One thing to be cut.
 *
 * @param name what it is called where a fault is told
 * @param outline its outline, about a point of its own
 * @param turning the angles it may lie at
 * @param quality the least quality of leather it takes; what has less may not lie under it
 */
public record Piece(String name, Outline outline, Turning turning, int quality) {
    /** For a piece that takes only what has no fault at all. */
    public static final int FAULTLESS = Integer.MAX_VALUE;
}
