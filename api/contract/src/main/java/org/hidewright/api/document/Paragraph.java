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

    public static Paragraph of(String text) {
        return new Paragraph(text, false);
    }

    /** Small print: what may be skipped at the bench. */
    public static Paragraph quiet(String text) {
        return new Paragraph(text, true);
    }

    public String text() {
        return text;
    }

    public boolean isQuiet() {
        return quiet;
    }
}
