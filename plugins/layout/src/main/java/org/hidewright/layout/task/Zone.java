package org.hidewright.layout.task;

/**
 * A place on a sheet whose leather is less than faultless.
 *
 * @param quality higher is better; pieces that ask for more may not lie on it
 */
public record Zone(Outline outline, int quality) {}
