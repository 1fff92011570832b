package org.hidewright.core.search;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.project.Slip;

/**
 * How what stands on a slip was searched for, as the project keeps it.
 *
 * @param asked print of the other answers it was searched for with
 * @param seed what chance began with
 * @param tries how many tries were made before it was found; with the same seed, one worker and a budget of so many, the search finds
 *     it again
 */
public record Searched(String asked, long seed, long tries) {
    private static final String ASKED = "asked";
    private static final String SEED = "seed";
    private static final String TRIES = "tries";

    /** How a slip was searched for; empty where it was not, or where it is not written down as it should be. */
    public static Optional<Searched> on(Slip slip) {
        return slip.node()
                .get(Slip.SEARCHED)
                .filter(JsonObject.class::isInstance)
                .map(JsonObject.class::cast)
                .flatMap(node -> node.text(ASKED)
                        .map(asked -> new Searched(asked, number(slip, node, SEED), number(slip, node, TRIES))));
    }

    private static long number(Slip slip, JsonObject node, String key) {
        return node.get(key)
                .map(slip::textOf)
                .filter(text -> text.matches("-?\\d{1,18}"))
                .map(Long::valueOf)
                .orElse(0L);
    }

    /** As it stands in the file. */
    public String json() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put(ASKED, asked);
        tree.put(SEED, seed);
        tree.put(TRIES, tries);
        return JsonOut.line(tree);
    }
}
