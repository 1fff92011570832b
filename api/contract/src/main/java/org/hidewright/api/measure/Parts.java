package org.hidewright.api.measure;

import java.util.ArrayList;
import java.util.List;

/** The parts of a list, between semicolons. */
final class Parts {
    private final String typed;
    private final String plain;

    Parts(String typed) {
        this.typed = typed;
        this.plain = Glyphs.plain(typed);
    }

    /** A cursor over each part; an empty part or an overlong one is refused. */
    List<Cursor> cursors() throws Unclear {
        List<Cursor> parts = new ArrayList<>();
        int start = 0;
        while (start <= plain.length()) {
            int semicolon = plain.indexOf(';', start);
            int end = semicolon < 0 ? plain.length() : semicolon;
            Cursor part = new Cursor(typed, plain, start, end);
            if (part.afterSpaces(start) == end) {
                throw new Unclear(Trouble.EMPTY_PART, end, without(start, end), String.valueOf(parts.size() + 1));
            }
            if (end - start > TypedText.LONGEST) {
                throw new Unclear(Trouble.TOO_LONG, start + TypedText.LONGEST, null, String.valueOf(TypedText.LONGEST));
            }
            parts.add(part);
            start = end + 1;
        }
        return parts;
    }

    /** The list without an empty part and one of the semicolons beside it. */
    private String without(int start, int end) {
        String before = typed.substring(0, end < typed.length() ? start : Math.max(0, start - 1));
        return (before + typed.substring(Math.min(end + 1, typed.length()))).strip();
    }
}
