package org.hidewright.core.addons;

import java.util.List;
import java.util.Map;

/**
 * What a bundle carries that is no code, read without installing it.
 *
 * @param id its symbolic name
 * @param version its version
 * @param templates texts of templates, by their paths in the bundle
 * @param tables texts of tables of the workshop, by their paths
 * @param properties texts of all other files that say something in another language, by their paths
 * @param missing paths that the manifest names and that are not there, or whose names cannot be those of a template
 * @param code whether it has code too
 */
public record Carried(
        String id,
        String version,
        Map<String, String> templates,
        Map<String, String> tables,
        Map<String, String> properties,
        List<String> missing,
        boolean code) {}
