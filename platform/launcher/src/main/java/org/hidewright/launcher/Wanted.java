package org.hidewright.launcher;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.osgi.framework.Constants;
import org.osgi.framework.wiring.BundleRequirement;

/** A requirement in the words of a manifest: a name, and the versions that would do. Read from its filter. */
record Wanted(String name, String versions, String filter) {

    static final String PACKAGE = "osgi.wiring.package";

    private static final Pattern FLOOR = Pattern.compile("(?<!!)\\(version>=([^)]*)\\)");
    private static final Pattern CEILING = Pattern.compile("\\(!\\(version>=([^)]*)\\)\\)");
    private static final Pattern EXACT = Pattern.compile("\\(version=([^)]*)\\)");

    static Wanted of(BundleRequirement need) {
        String filter = need.getDirectives().getOrDefault(Constants.FILTER_DIRECTIVE, "");
        return of(need.getNamespace(), filter);
    }

    static Wanted of(String namespace, String filter) {
        String name = first(Pattern.compile("\\(" + Pattern.quote(namespace) + "=([^)]*)\\)"), filter, "");
        String floor = first(FLOOR, filter, first(EXACT, filter, ""));
        String ceiling = first(CEILING, filter, "");
        return new Wanted(name, ceiling.isEmpty() ? floor : "[" + floor + "," + ceiling + ")", filter);
    }

    String nameAndVersions() {
        return versions.isEmpty() ? name : name + " " + versions;
    }

    private static String first(Pattern pattern, String text, String otherwise) {
        Matcher matcher = pattern.matcher(text);
        return matcher.find() ? matcher.group(1) : otherwise;
    }
}
