package org.hidewright.layout.task;

/**
 * Where one piece lies: its outline turned about its own origin by an angle, counter-clockwise, and then moved.
 *
 * @param piece number of the piece, from 0
 * @param sheet number of the sheet, from 0
 * @param angle in radians
 */
public record Laid(int piece, int sheet, double angle, double dx, double dy) {}
