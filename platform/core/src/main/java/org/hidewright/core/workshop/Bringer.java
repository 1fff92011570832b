package org.hidewright.core.workshop;

import java.util.Optional;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;

/**
 * Who brings a row that the maker did not write.
 *
 * @param bundle symbolic name of the bundle
 * @param source where its author has the sizes from
 */
public record Bringer(String bundle, String source) {
    /** The key it stands under in a project’s copy of a row. */
    static final String KEY = "from";

    private static final String BUNDLE = "bundle";
    private static final String SOURCE = "source";

    static Optional<Bringer> in(JsonNode node) {
        return node instanceof JsonObject object
                ? object.text(BUNDLE)
                        .map(bundle -> new Bringer(bundle, object.text(SOURCE).orElse("")))
                : Optional.empty();
    }

    /** As it stands in a project’s copy. */
    String json() {
        return "{\"" + BUNDLE + "\": " + JsonText.quoted(bundle) + ", \"" + SOURCE + "\": " + JsonText.quoted(source)
                + "}";
    }
}
