package org.hidewright.core;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The nearest right word for a misspelt one. */
public final class Nearest {
    private Nearest() {}

    /** The candidate fewest letters away; empty when even that one is another word altogether. */
    public static Optional<String> to(String word, Collection<String> candidates) {
        String asked = word.toLowerCase(Locale.ROOT);
        int farthest = Math.max(2, asked.length() / 2);
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        return candidates.stream()
                .filter(candidate -> distance.apply(asked, candidate.toLowerCase(Locale.ROOT)) <= farthest
                        || (asked.length() >= 3 && candidate.contains(asked)))
                .min(Comparator.comparingInt(candidate -> distance.apply(asked, candidate.toLowerCase(Locale.ROOT))));
    }
}
