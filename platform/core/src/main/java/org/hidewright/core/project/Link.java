package org.hidewright.core.project;

/**
 * A question answered by an answer of another slip.
 *
 * @param slip id of the slip linked to
 * @param answer key of its answer
 * @param row id of a row where the answer is a table, otherwise empty
 * @param column key of the column of that row, otherwise empty
 */
public record Link(String slip, String answer, String row, String column) {
    /** How the link is shown and written in messages: {@code slip.answer} or {@code slip.answer[row].column}. */
    @Override
    public String toString() {
        return slip + "." + answer + (row.isEmpty() ? "" : "[" + row + "]") + (column.isEmpty() ? "" : "." + column);
    }
}
