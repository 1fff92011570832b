package org.hidewright.core.outline;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a place on a hide is, by the names it has in a drawing.
 *
 * <p>The words are those that a hide’s flaws begin with wherever they are typed, in a project and in the workshop’s table of
 * hides. The table cannot tell them: its column is a list of texts. They stand here once, and a test of the built program
 * holds them against the bundle that reads them.
 */
final class Kind {
    /** What is taken where no name says anything: a part that must be without a fault is kept off it. */
    static final String UNNAMED = "marked";

    private static final List<String> ALONE = List.of("hole", "weak", "marked");
    private static final String REGION = "region";
    private static final Pattern NO_NAME = Pattern.compile("[^\\p{L}\\d]+");
    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\d-]+");

    private Kind() {}

    /** As a flaw begins, {@code hole} or {@code region belly}; empty where no name begins like one. */
    static Optional<String> of(List<String> names) {
        return names.stream().flatMap(name -> of(name).stream()).findFirst();
    }

    private static Optional<String> of(String name) {
        String small = name.strip().toLowerCase(Locale.ROOT);
        if (!small.startsWith(REGION)) {
            return ALONE.stream().filter(small::startsWith).findFirst();
        }
        Matcher words = NO_NAME.matcher(small.substring(REGION.length()));
        String region = words.replaceAll("-").replaceAll("^-|-$", "");
        return NAME.matcher(region).matches() ? Optional.of(REGION + " " + region) : Optional.empty();
    }
}
