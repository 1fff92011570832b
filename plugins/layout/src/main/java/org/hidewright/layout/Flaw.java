package org.hidewright.layout;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place on a hide that not every part may lie on, written as {@code marked 300,300 340,300 340,420} or
 * {@code region belly 0,0 900,0 900,200 0,200}.
 *
 * @param name of a region; of others empty
 * @param outline as it is written
 */
record Flaw(Damage damage, String name, String outline) {
    private static final Pattern WRITTEN = Pattern.compile("\\s*([a-z]+)\\s+(.*)");
    private static final Pattern NAMED = Pattern.compile("([\\p{L}][\\p{L}\\d-]+)\\s+(.*)");

    /** What is written; empty where it does not begin with what it is, or is a region without a name. */
    static Optional<Flaw> read(String text) {
        Matcher written = WRITTEN.matcher(text.toLowerCase(Locale.ROOT));
        if (!written.matches()) {
            return Optional.empty();
        }
        String rest = text.substring(written.start(2));
        return Arrays.stream(Damage.values())
                .filter(damage -> damage.name().toLowerCase(Locale.ROOT).equals(written.group(1)))
                .findFirst()
                .flatMap(damage -> damage == Damage.REGION ? region(rest) : Optional.of(new Flaw(damage, "", rest)));
    }

    /** What it is called where it is told of: a region by its name, any other by what it is and its first corner. */
    String called() {
        return damage == Damage.REGION
                ? name
                : damage.name().toLowerCase(Locale.ROOT) + " " + outline.strip().split("\\s+")[0];
    }

    private static Optional<Flaw> region(String rest) {
        Matcher named = NAMED.matcher(rest);
        return named.matches()
                ? Optional.of(new Flaw(Damage.REGION, named.group(1), named.group(2)))
                : Optional.empty();
    }
}
