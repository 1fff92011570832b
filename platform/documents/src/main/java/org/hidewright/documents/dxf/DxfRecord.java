package org.hidewright.documents.dxf;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.core.json.Place;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.store.FileTrouble;

/**
 * An entity, or whatever else begins with the group code 0: its type, and its pairs of group code and value.
 *
 * @param line of the file, on which its type stands
 */
record DxfRecord(String type, int line, List<Pair> pairs) {
    private static final Pattern LETTER = Pattern.compile("\\\\U\\+([0-9A-Fa-f]{4})");

    /** @param line of the file, on which the value stands */
    record Pair(int code, String value, int line) {
        double number(String entity) throws FileTrouble {
            try {
                double number = Double.parseDouble(value.strip());
                if (Double.isFinite(number)) {
                    return number;
                }
            } catch (NumberFormatException e) {
                // told below
            }
            throw OutlineNotices.trouble(
                    OutlineNotices.DRAWN_UNREADABLE.with(entity, value.strip()), new Place(line, 1));
        }
    }

    /** The layer it lies on. */
    String layer() {
        return words(8, "0");
    }

    /** The first value of a code; letters that the file writes as their numbers are letters again. */
    String words(int code, String missing) {
        return LETTER.matcher(text(code, missing))
                .replaceAll(found ->
                        Matcher.quoteReplacement(Character.toString((char) Integer.parseInt(found.group(1), 16))));
    }

    /** As it is told: its type and its layer. */
    String name() {
        return type.toUpperCase(Locale.ROOT) + " \"" + layer() + "\"";
    }

    Place at() {
        return new Place(line, 1);
    }

    /** The first value of a code. */
    String text(int code, String missing) {
        return pairs.stream()
                .filter(pair -> pair.code() == code)
                .map(pair -> pair.value().strip())
                .findFirst()
                .orElse(missing);
    }

    double number(int code, double missing) throws FileTrouble {
        for (Pair pair : pairs) {
            if (pair.code() == code) {
                return pair.number(name());
            }
        }
        return missing;
    }

    int whole(int code, int missing) throws FileTrouble {
        return (int) number(code, missing);
    }

    /** A number without which it cannot be drawn. */
    double needed(int code) throws FileTrouble {
        double number = number(code, Double.NaN);
        if (Double.isNaN(number)) {
            throw OutlineNotices.trouble(OutlineNotices.DRAWN_UNREADABLE.with(name(), "group " + code), at());
        }
        return number;
    }

    /** Every value of a code, in the order of the file. */
    double[] numbers(int code) throws FileTrouble {
        double[] numbers = new double
                [(int) pairs.stream().filter(pair -> pair.code() == code).count()];
        int next = 0;
        for (Pair pair : pairs) {
            if (pair.code() == code) {
                numbers[next++] = pair.number(name());
            }
        }
        return numbers;
    }
}
