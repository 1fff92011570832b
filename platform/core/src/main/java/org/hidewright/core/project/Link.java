package org.hidewright.core.project;

import java.util.Optional;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;

/**
 * A question answered by an answer of another slip.
 *
 * @param slip id of the slip linked to
 * @param answer key of its answer
 * @param row id of a row where the answer is a table, otherwise empty
 * @param column key of the column of that row, otherwise empty
 */
public record Link(String slip, String answer, String row, String column) {
    /** The link that stands in a node, if one does. */
    public static Optional<Link> in(JsonNode node) {
        return node instanceof JsonObject object
                        && object.text("from").isPresent()
                        && object.text("answer").isPresent()
                ? Optional.of(new Link(
                        object.text("from").get(),
                        object.text("answer").get(),
                        object.text("row").orElse(""),
                        object.text("column").orElse("")))
                : Optional.empty();
    }

    /** How the link is shown and written in messages: {@code slip.answer} or {@code slip.answer[row].column}. */
    @Override
    public String toString() {
        return slip + "." + answer + (row.isEmpty() ? "" : "[" + row + "]") + (column.isEmpty() ? "" : "." + column);
    }
}
