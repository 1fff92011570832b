package org.hidewright.core.json;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;

/**
 * How the lines of an object are indented and ended. One that stands in a single line has a blank where lines would end.
 *
 * @param indent of one step
 * @param end of each line
 */
record JsonLines(String indent, String end) {
    private static final JsonLines ONE_LINE = new JsonLines("", " ");
    private static final String USUAL_INDENT = "  ";
    /** What the JSON reader counts as one; others may stand within quotes. */
    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

    private static final Pattern CLOSING = Pattern.compile("[\\]}\\s]*");

    /** As the first member that begins a line is; where none does, two blanks. */
    static JsonLines of(String text, JsonObject object) {
        Matcher found = LINE_END.matcher(text).region(object.start(), object.end());
        if (!found.find()) {
            return ONE_LINE;
        }
        String[] lines = LINE_END.split(text, -1);
        for (Member member : object.members().values()) {
            String line = lines[member.place().line() - 1];
            String before =
                    line.substring(0, line.length() - line.stripLeading().length());
            if (member.place().line() > object.place().line()
                    && before.length() == member.place().column() - 1) {
                return new JsonLines(before, found.group());
            }
        }
        return new JsonLines(USUAL_INDENT, found.group());
    }

    /**
     * JSON with its lines indented and ended anew; all else stays as it is. Within quotes there are no line ends.
     *
     * @param around how many brackets stand around it
     */
    String indented(String json, int around) {
        StringBuilder text = new StringBuilder();
        int depth = around;
        for (String line : LINE_END.split(json.strip(), -1)) {
            String words = line.strip();
            if (!text.isEmpty()) {
                text.append(end).append(words.isEmpty() ? "" : indent.repeat(depth + opened(closing(words))));
            }
            text.append(words);
            depth += opened(words);
        }
        return text.toString();
    }

    /** What a new last member needs behind it, so that the closing bracket stands in a line of its own where it should. */
    String before(String closing) {
        return equals(ONE_LINE) || LINE_END.matcher(closing).find() ? "" : end;
    }

    /** The brackets that a line closes before all else. */
    private static String closing(String line) {
        Matcher brackets = CLOSING.matcher(line);
        return brackets.lookingAt() ? brackets.group() : "";
    }

    /** How many more brackets a line opens than it closes; those within quotes are none. */
    private static int opened(String line) {
        int opened = 0;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (quoted && c == '\\') {
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted) {
                opened += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
            }
        }
        return opened;
    }
}
