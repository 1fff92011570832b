package org.hidewright.documents.page;

/** What the arrangement must know of the letters. */
public interface Typeface {
    /** Length of a text that {@link #printable} has passed, in multiples of the letters' size. */
    double width(Face face, String text);

    /** The text with every letter the typeface lacks replaced by a visible sign, and control characters by spaces. */
    String printable(String text);

    /** Length in millimetres. */
    default double widthMm(Style style, String text) {
        return width(style.face(), text) * style.sizeMm();
    }
}
