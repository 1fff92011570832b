package org.hidewright.core.template;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
