package org.hidewright.command;

import java.util.Optional;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;

/**
 * The variant that is preset.
 *
 * @param key of the variant
 * @param answersInside whether its own questions are answered by the preset too
 */
record VariantPreset(String key, boolean answersInside) {
    /** Of a question with variants; empty for any other, and where nothing is preset. */
    static Optional<VariantPreset> of(Question question) {
        if (question.kind() != Kind.VARIANTS || question.preset().isEmpty()) {
            return Optional.empty();
        }
        try {
            JsonNode root = JsonText.read(question.preset().get()).root();
            return root instanceof JsonScalar alone
                    ? Optional.of(new VariantPreset(alone.text(), false))
                    : Optional.of(of((JsonObject) root));
        } catch (JsonTrouble e) {
            return Optional.empty(); // a fault of the bundle, which is told when its calculator is worked
        }
    }

    private static VariantPreset of(JsonObject preset) {
        String key = preset.text("is")
                .orElseGet(() -> preset.members().keySet().iterator().next());
        boolean inside = preset.get(key)
                .filter(node ->
                        node instanceof JsonObject answers && !answers.members().isEmpty())
                .isPresent();
        return new VariantPreset(key, inside);
    }
}
