package org.hidewright.core.json;

import java.util.Random;

/** Random JSON text with random spacing; the same seed gives the same text. */
final class RandomJson {
    private static final String[] SPACES = {"", "", " ", "  ", "\n", "\r\n", "\t", " \n\t ", "\r\n\r\n  "};
    private static final String[] SCALARS = {
        "null",
        "true",
        "false",
        "0",
        "-0",
        "1.50",
        "1e5",
        "1E+05",
        "-12.340",
        "123456789012345678901234567890",
        "0.1000000000000000055511151231257827",
        "\"\"",
        "\"2-3 oz\"",
        "\"\\u00e9\\n\\\"\\\\\\/\"",
        "\"é\"",
        "\"\uD83E\uDDF5\"",
        "\"\\uD83E\\uDDF5 thread\"",
        "\"31 ± 0.5 mm\"",
        "\"tab\\there\"",
        "\"{[,:]}\""
    };
    private static final int DEEPEST = 5;

    private final Random random;
    private final StringBuilder text = new StringBuilder();
    private int keys;

    private RandomJson(long seed) {
        random = new Random(seed);
    }

    /** An object at the top, so that there is always one to add to. */
    static String of(long seed) {
        RandomJson json = new RandomJson(seed);
        json.space();
        json.value(DEEPEST);
        json.space();
        return json.text.toString();
    }

    private void space() {
        text.append(SPACES[random.nextInt(SPACES.length)]);
    }

    private void value(int depth) {
        int kind = depth == DEEPEST ? 3 : depth == 0 ? 0 : random.nextInt(4);
        if (kind == 2) {
            items('[', ']', () -> value(depth - 1));
        } else if (kind == 3) {
            items('{', '}', () -> {
                text.append("\"k")
                        .append(random.nextInt(4) == 0 ? "\\u0041 é\uD83E\uDDF5" : "")
                        .append(keys++)
                        .append('"');
                space();
                text.append(':');
                space();
                value(depth - 1);
            });
        } else if (random.nextInt(40) == 0) {
            text.append('"').append("long ".repeat(random.nextInt(2000))).append('"');
        } else {
            text.append(SCALARS[random.nextInt(SCALARS.length)]);
        }
    }

    private void items(char open, char close, Runnable item) {
        text.append(open);
        int count = random.nextInt(6);
        for (int i = 0; i < count; i++) {
            text.append(i > 0 ? "," : "");
            space();
            item.run();
            space();
        }
        if (count == 0) {
            space();
        }
        text.append(close);
    }
}
