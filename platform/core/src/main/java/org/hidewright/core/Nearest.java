package org.hidewright.core;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The nearest right word for a misspelt one. */
public final class Nearest {
    /** Up to this many letters, two slips make another word: flying is not folding. */
    private static final int SHORT = 6;

    private Nearest() {}

    /** The candidate fewest slips away; empty where even that one has more than a third of them wrong. */
    public static Optional<String> to(String word, Collection<String> candidates) {
        String asked = word.toLowerCase(Locale.ROOT);
        int farthest = asked.length() <= SHORT ? 1 : asked.length() / 3;
        return candidates.stream()
                .filter(candidate -> slips(asked, candidate.toLowerCase(Locale.ROOT)) <= farthest
                        || (asked.length() >= 3 && candidate.contains(asked)))
                .min(Comparator.comparingInt(candidate -> slips(asked, candidate.toLowerCase(Locale.ROOT))));
    }

    /** Letters put in, left out or changed; two that have changed places are one slip. */
    private static int slips(String asked, String candidate) {
        int distance = LevenshteinDistance.getDefaultInstance().apply(asked, candidate);
        return distance == 2 && Arrays.equals(sorted(asked), sorted(candidate)) ? 1 : distance;
    }

    private static int[] sorted(String word) {
        return word.chars().sorted().toArray();
    }
}
