package org.hidewright.distribution;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** Spoils texts at random, as by a slip of the hand, a bad disk or another program; the same seed spoils alike. */
final class Spoiler {
    /** The longest that one spoilt text may take. */
    static final long LONGEST_NS = 5_000_000_000L;
    /** The most heap that all of them may take. */
    static final long MOST_HEAP = 1L << 30;

    private static final List<String> TOKENS = List.of(
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "\"",
            "\\",
            "null",
            "true",
            "-",
            "1e999",
            "0.1.2",
            "\u0000",
            "\uD800",
            "é",
            "½",
            "\n",
            "{\"from\": \"closing-strap\", \"answer\": \"cut-length\"}",
            "{\"workshop\": \"leather\", \"row\": \"natural-side\", \"column\": \"thickness\"}",
            "9999999999999999999999",
            "[[[[[[[[[[",
            " mm",
            " oz",
            "-5 mm",
            "1000 km",
            "2-1 mm",
            "± 3 mm",
            "<script>",
            "=1+1",
            "//",
            "/*");

    private final SplittableRandom random;

    Spoiler(long seed) {
        random = new SplittableRandom(seed);
        System.gc(); // what other tests of the same run have left is not ours
        heapPools().forEach(MemoryPoolMXBean::resetPeakUsage);
    }

    /** The most heap that was used since the spoiling began. */
    static long heap() {
        return heapPools().mapToLong(Spoiler::peak).sum();
    }

    private static Stream<MemoryPoolMXBean> heapPools() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP);
    }

    private static long peak(MemoryPoolMXBean pool) {
        return pool.getPeakUsage().getUsed();
    }

    /** One to four spoilt places. */
    String spoilt(String text) {
        String spoilt = text;
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            int at = random.nextInt(spoilt.length() + 1);
            int to = Math.min(spoilt.length(), at + random.nextInt(1, 40));
            String before = spoilt.substring(0, at);
            String token = TOKENS.get(random.nextInt(TOKENS.size()));
            spoilt = switch (random.nextInt(9)) {
                case 0 -> before + spoilt.substring(to);
                case 1 -> before + token + spoilt.substring(at);
                case 2 -> before + token + spoilt.substring(to);
                case 3 -> before + spoilt.substring(at, to) + spoilt.substring(at);
                case 4 -> before + (char) random.nextInt(1, 0x300) + spoilt.substring(to);
                case 5 ->
                    random.nextInt(8) == 0
                            ? before
                            : before + token.repeat(random.nextInt(1, 200)) + spoilt.substring(at);
                case 6 -> number(spoilt, at);
                default -> inQuotes(spoilt, at, token);
            };
        }
        return spoilt;
    }

    /** The first digit after a place becomes another. */
    private String number(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            if (Character.isDigit(text.charAt(i))) {
                return text.substring(0, i) + random.nextInt(10) + text.substring(i + 1);
            }
        }
        return text;
    }

    /** What stands in the next quotes becomes something else, so that the text stays JSON. */
    private static String inQuotes(String text, int from, String token) {
        int open = text.indexOf('"', from);
        int close = text.indexOf('"', open + 1);
        return open < 0 || close < 0
                ? text
                : text.substring(0, open + 1) + token.replaceAll("[\"\\\\\\p{Cntrl}]", "") + text.substring(close);
    }
}
