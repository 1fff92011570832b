package org.hidewright.api.measure;

import java.util.Locale;
import java.util.Optional;

/** The known word nearest to a mistyped one: the least number of letters put in, left out, changed or swapped. */
final class NearestWord {
    private static final int LONGEST = 20;

    private final String wanted;
    private String nearest;
    private int distance;

    NearestWord(String wanted) {
        this.wanted = wanted.toLowerCase(Locale.ROOT);
        int slips = wanted.length() <= 4 ? 1 : 2;
        this.distance = Math.min(slips, wanted.length() - 1) + 1;
    }

    /** Offers a known word; of two equally near the first one offered stays. */
    void offer(String known) {
        if (wanted.length() > LONGEST) {
            return;
        }
        int steps = distance(wanted, known.toLowerCase(Locale.ROOT));
        if (steps < distance) {
            distance = steps;
            nearest = known;
        }
    }

    Optional<String> found() {
        return Optional.ofNullable(nearest);
    }

    /** Optimal string alignment distance (Damerau 1964, each pair swapped once at most). */
    private static int distance(String a, String b) {
        int[][] steps = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    steps[i][j] = i + j;
                    continue;
                }
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                int least = Math.min(steps[i - 1][j] + 1, steps[i][j - 1] + 1);
                least = Math.min(least, steps[i - 1][j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least = Math.min(least, steps[i - 2][j - 2] + 1);
                }
                steps[i][j] = least;
            }
        }
        return steps[a.length()][b.length()];
    }
}
