package org.hidewright.straps;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The id that was probably meant. */
final class Nearest {
    private Nearest() {}

    /** The id fewest letters away, if that is less than about half of them. */
    static Optional<String> to(String typed, List<String> ids) {
        return ids.stream()
                .min(Comparator.comparingInt(id -> lettersApart(typed, id)))
                .filter(id -> lettersApart(typed, id) <= Math.max(1, Math.max(typed.length(), id.length()) / 2));
    }

    /** Levenshtein's distance: letters to add, leave out or change. */
    static int lettersApart(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int change = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[other.length()];
    }
}
