package org.hidewright.api.measure;

import java.util.List;
import java.util.OptionalInt;

/** A place that moves through a stretch of typed text, seen in plain signs. */
final class Cursor {
    /** What the cursor sees at the end; it cannot stand in a text that means anything. */
    static final char NOTHING = '\0';

    /** Between two ends of a range. */
    private static final List<String> TO = List.of("to", "bis");

    private final String typed;
    private final String plain;
    private final int end;
    private int at;

    /** A cursor over {@code typed} from one place to another, both counted from 0, the second one excluded. */
    Cursor(String typed, String plain, int start, int end) {
        this.typed = typed;
        this.plain = plain;
        this.at = start;
        this.end = end;
    }

    int at() {
        return at;
    }

    void moveTo(int place) {
        at = place;
    }

    boolean atEnd() {
        return at >= end;
    }

    char peek() {
        return see(at);
    }

    char see(int place) {
        return place >= 0 && place < end ? plain.charAt(place) : NOTHING;
    }

    void skipSpaces() {
        at = afterSpaces(at);
    }

    int afterSpaces(int place) {
        int next = place;
        while (see(next) == ' ') {
            next++;
        }
        return next;
    }

    static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    static boolean isMark(char sign) {
        return sign == '.' || sign == ',';
    }

    int afterDigits(int place) {
        int next = place;
        while (isDigit(see(next))) {
            next++;
        }
        return next;
    }

    /** Whether an unsigned number begins at a place. */
    boolean numberAt(int place) {
        char sign = see(place);
        return isDigit(sign) || Glyphs.isVulgarFraction(sign) || isMark(sign) && isDigit(see(place + 1));
    }

    /** Whether a digit stands anywhere from here to the end. */
    boolean digitFollows() {
        return slice(at, end).chars().anyMatch(sign -> isDigit((char) sign));
    }

    /** Whether the next word is this one, whatever its case, with no letter after it. */
    private boolean wordIs(String word) {
        int after = at + word.length();
        return after <= end && plain.regionMatches(true, at, word, 0, word.length()) && !Character.isLetter(see(after));
    }

    /** The place after the word between two ends of a range, English or German, or empty if none stands here. */
    OptionalInt afterTo() {
        for (String word : TO) {
            if (wordIs(word)) {
                return OptionalInt.of(at + word.length());
            }
        }
        return OptionalInt.empty();
    }

    /** Whether a sign that parts two sides stands at a place. */
    boolean crossAt(int place) {
        char sign = see(place);
        return sign == Glyphs.TIMES || (sign == 'x' || sign == 'X') && !Character.isLetter(see(place + 1));
    }

    /** The plain text between two places. */
    String slice(int from, int to) {
        return plain.substring(from, to);
    }

    /** The text as typed between two places. */
    String typed(int from, int to) {
        return typed.substring(from, to);
    }

    /** Whether a word cannot go on at a place: a space, the next part, or the end. */
    boolean endsWordAt(int place) {
        return place >= end || see(place) == ' ' || see(place) == ';';
    }

    /** What stands at a place up to the next space or part, shortened for a message. */
    String wordFrom(int place) {
        int to = place;
        while (to < end && (to == place || !endsWordAt(to))) {
            to++;
        }
        return to - place > 20 ? typed(place, place + 20) + "…" : typed(place, to);
    }

    /** The whole typed text with one stretch replaced. */
    String replaced(int from, int to, String by) {
        return (typed.substring(0, from) + by + typed.substring(to)).strip();
    }

    /** The whole typed text with what is left of this stretch cut off after a place. */
    String withoutRest(int place) {
        return replaced(place, end, "");
    }
}
