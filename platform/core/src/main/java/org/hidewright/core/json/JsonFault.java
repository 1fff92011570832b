package org.hidewright.core.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import org.hidewright.api.calculator.Phrase;

/** What is wrong with a text that is not JSON, found from where the parser stopped and what it had waited for there. */
final class JsonFault {
    private static final int SHOWN = 24;

    private final JsonProcessingException stopped;
    private final JsonParser parser;
    private final String text;
    private final int offset;

    /**
     * A fault.
     *
     * @param offset in the text, where the parser stopped
     */
    JsonFault(JsonProcessingException stopped, JsonParser parser, String text, int offset) {
        this.stopped = stopped;
        this.parser = parser;
        this.text = text;
        this.offset = Math.max(0, Math.min(offset, text.length()));
    }

    Phrase words() {
        String told = String.valueOf(stopped.getOriginalMessage());
        if (stopped instanceof StreamConstraintsException) {
            return Phrase.of("json-limit");
        } else if (stopped instanceof JsonEOFException) {
            return told.contains("quote") ? Phrase.of("json-open-text") : Phrase.of("json-open", openedIn());
        } else if (told.startsWith("Duplicate field")) {
            return Phrase.of("json-twice", told.replaceAll("^.*?'|'[^']*$", ""));
        } else if (told.startsWith("Illegal unquoted")) {
            return Phrase.of("json-line-end");
        } else if (told.contains("escape")) {
            return Phrase.of("json-escape");
        } else if (told.contains("comment")) {
            return Phrase.of("json-comment");
        } else if (told.contains("close marker")) {
            return told.contains("no open")
                    ? Phrase.of("json-closes-nothing", found())
                    : Phrase.of("json-closes-other", found(), openedIn());
        } else if (told.contains("numeric value")) {
            return Phrase.of("json-number");
        } else if (text.substring(offset).isBlank()) {
            return Phrase.of("json-open", openedIn());
        } else if (told.contains("a colon")) {
            return Phrase.of("json-colon", found());
        } else if (told.contains("expecting comma")) {
            return Character.isLetter(at(offset)) ? Phrase.of("json-word", found()) : Phrase.of("json-comma", found());
        }
        return misplaced(told.contains("field name"));
    }

    /** Something else where a key or a value should begin. */
    private Phrase misplaced(boolean key) {
        boolean closes = at(offset) == '}' || at(offset) == ']';
        if (closes && before() == ',') {
            return Phrase.of("json-last-comma", found());
        }
        if (closes || at(offset) == ',') {
            return Phrase.of(key ? "json-no-key" : "json-no-value", found());
        }
        return Phrase.of(key ? "json-key" : "json-word", found());
    }

    private int openedIn() {
        return parser.getParsingContext().startLocation(null).getLineNr();
    }

    private char at(int index) {
        return index < text.length() ? text.charAt(index) : ' ';
    }

    /** The last character before the fault that is no space. */
    private char before() {
        String earlier = text.substring(0, offset).stripTrailing();
        return earlier.isEmpty() ? ' ' : earlier.charAt(earlier.length() - 1);
    }

    /** What stands at the fault: a text in its quotes, a word, or a single sign. */
    private String found() {
        int end = offset + 1;
        if (at(offset) == '"') {
            int quote = text.indexOf('"', end);
            end = quote < 0 ? text.length() : quote + 1;
        } else if (Character.isLetterOrDigit(at(offset))) {
            while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
                end++;
            }
        }
        String whole = text.substring(offset, Math.min(end, text.length()));
        return whole.length() > SHOWN ? whole.substring(0, SHOWN) + "…" : whole;
    }
}
