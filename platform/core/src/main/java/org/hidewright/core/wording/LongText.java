package org.hidewright.core.wording;

/** Texts that nobody reads to their end, such as the corners of a hide that was cut from: beside others they are told by their beginning. */
public final class LongText {
    private static final int READ = 160;

    private LongText() {}

    /** The text, or its beginning with an ellipsis. */
    public static String cut(String text) {
        return text.length() <= READ
                ? text
                : text.substring(0, Math.max(READ / 2, text.lastIndexOf(' ', READ) + 1)) + "…";
    }
}
