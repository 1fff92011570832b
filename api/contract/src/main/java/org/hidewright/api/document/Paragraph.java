package org.hidewright.api.document;

import java.util.Objects;

/** Running text; a line feed in it begins a new line. */
public final class Paragraph implements Block {
    private final String text;
    private final boolean quiet;

    private Paragraph(String text, boolean quiet) {
        this.text = Objects.requireNonNull(text, "text");
        this.quiet = quiet;
    }

    /** A paragraph of a text that is printed as it stands. */
    public static Paragraph of(String text) {
        return new Paragraph(text, false);
    }

    /** Small print: what may be skipped at the bench. */
    public static Paragraph quiet(String text) {
        return new Paragraph(text, true);
    }

    /** As it is printed. */
    public String text() {
        return text;
    }

    /** Whether it stands back behind what is around it. */
    public boolean isQuiet() {
        return quiet;
    }
}
