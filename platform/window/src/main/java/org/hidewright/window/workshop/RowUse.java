package org.hidewright.window.workshop;

import java.nio.file.Path;

/**
 * A question of a project that takes a row of the workshop.
 *
 * @param file of the project
 * @param project what it is called
 * @param where slip and question, in words
 * @param differs how the project’s copy stands to the row as it is now, in words
 * @param changed whether the two differ
 */
public record RowUse(Path file, String project, String where, String differs, boolean changed) {}
