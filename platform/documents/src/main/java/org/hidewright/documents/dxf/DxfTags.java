package org.hidewright.documents.dxf;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Locale;
import org.hidewright.documents.PlainDecimal;

/** Pairs of group code and value, as a DXF file is made of; records count their handles here. */
final class DxfTags {
    /** Named in the header as ANSI_1252. */
    private static final Charset CODE_PAGE = Charset.forName("windows-1252");

    private final StringBuilder text = new StringBuilder();
    private int lastHandle;

    DxfTags add(int code, String value) {
        text.append(code).append("\r\n").append(value).append("\r\n");
        return this;
    }

    DxfTags add(int code, int value) {
        return add(code, Integer.toString(value));
    }

    DxfTags add(int code, double value) {
        return add(code, PlainDecimal.of(value));
    }

    /** A place in the plane, at a group code and the two that belong to it. */
    DxfTags place(int code, double x, double y) {
        return add(code, x).add(code + 10, y).add(code + 20, 0.0);
    }

    /** A text: letters that the file's code page lacks stand as their numbers. */
    DxfTags words(int code, String words) {
        CharsetEncoder encoder = CODE_PAGE.newEncoder();
        StringBuilder escaped = new StringBuilder();
        for (char letter : words.toCharArray()) {
            if (Character.isISOControl(letter)) {
                escaped.append(' ');
            } else if (encoder.canEncode(letter)) {
                escaped.append(letter);
            } else {
                escaped.append(String.format(Locale.ROOT, "\\U+%04X", (int) letter));
            }
        }
        return add(code, escaped.toString());
    }

    /** A handle no other record has. */
    String handle() {
        lastHandle++;
        return Integer.toHexString(lastHandle).toUpperCase(Locale.ROOT);
    }

    byte[] bytes() {
        return text.toString().getBytes(CODE_PAGE);
    }
}
