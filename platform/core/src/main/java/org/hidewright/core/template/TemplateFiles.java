package org.hidewright.core.template;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;

/**
 * How a bundle names the templates it carries: a header of its manifest lists their files, and each file is called by the id of
 * its template, so that listing them opens none.
 */
public final class TemplateFiles {
    /** {@code Hidewright-Templates: templates/specimen-tag.json, templates/belt.json}. */
    public static final String HEADER = "Hidewright-Templates";

    /** The folder that an installed bundle was packed from, where its author has its templates read from there. */
    public static final String FOLLOWS = "Hidewright-Follows";

    private static final Pattern NAMED = Pattern.compile("(?:.*/)?([a-z][a-z0-9]*(?:-[a-z0-9]+)*)\\.json");

    private TemplateFiles() {}

    /** The calculators that a template draws with or asks; none where it cannot be read, which is told where it is used. */
    public static Set<String> asked(String text) {
        Set<String> asked = new TreeSet<>();
        try {
            if (JsonText.read(text).root() instanceof JsonObject template) {
                template.get("draws")
                        .flatMap(draws -> text(draws, "calculator"))
                        .ifPresent(asked::add);
                template.get("values")
                        .filter(JsonObject.class::isInstance)
                        .ifPresent(values -> ((JsonObject) values)
                                .members()
                                .values()
                                .forEach(value -> text(value.value(), "asks").ifPresent(asked::add)));
            }
        } catch (JsonTrouble unreadable) {
            return Set.of();
        }
        return asked;
    }

    private static Optional<String> text(JsonNode node, String key) {
        return node instanceof JsonObject object ? object.text(key) : Optional.empty();
    }

    /**
     * Paths in the bundle by the ids of their templates.
     *
     * @param header as it stands in the manifest; null where there is none
     */
    public static Map<String, String> byId(String header) {
        Map<String, String> byId = new LinkedHashMap<>();
        for (String part : header == null ? new String[0] : header.split(",")) {
            Matcher named = NAMED.matcher(part.strip());
            if (named.matches()) {
                byId.putIfAbsent(named.group(1), part.strip());
            }
        }
        return byId;
    }
}
