package org.hidewright.core.proof;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.regex.Pattern;

/** The texts of a file of properties with their lines, each read as {@link Properties} reads it. */
final class TranslationLines {
    private static final String MARK = "\uFEFF";
    private static final Pattern NOTE = Pattern.compile("[ \\t\\f]*([#!].*)?");
    private static final Pattern GOES_ON = Pattern.compile("(?:.*[^\\\\])?(?:\\\\\\\\)*\\\\");

    /**
     * A text.
     *
     * @param line where it begins, from 1
     * @param key empty where it cannot be read
     * @param text as it is read
     * @param read whether it could be; what begins like an escape and is none spoils the whole file
     */
    record Line(int line, String key, String text, boolean read) {}

    private TranslationLines() {}

    /** In the order they stand in. */
    static List<Line> of(String file) {
        List<Line> lines = new ArrayList<>();
        String[] written = (file.startsWith(MARK) ? file.substring(1) : file).split("\r\n|\r|\n", -1);
        for (int i = 0; i < written.length; i++) {
            if (!NOTE.matcher(written[i]).matches()) {
                int first = i;
                StringBuilder whole = new StringBuilder(written[i]);
                while (GOES_ON.matcher(written[i]).matches() && i + 1 < written.length) {
                    i++;
                    whole.append('\n').append(written[i]);
                }
                lines.add(read(first + 1, whole.toString()));
            }
        }
        return lines;
    }

    private static Line read(int line, String whole) {
        Properties one = new Properties();
        try {
            one.load(new StringReader(whole));
        } catch (IOException | IllegalArgumentException spoilt) {
            return new Line(line, "", whole, false);
        }
        return one.stringPropertyNames().stream()
                .findFirst()
                .map(key -> new Line(line, key, one.getProperty(key), true))
                .orElse(new Line(line, "", whole, true));
    }
}
