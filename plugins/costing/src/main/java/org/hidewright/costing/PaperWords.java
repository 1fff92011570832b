package org.hidewright.costing;

import java.text.NumberFormat;
import java.util.Locale;
import org.hidewright.api.declaration.Texts;

/** The texts of the papers, in the language of a job. */
final class PaperWords {
    private static final Texts TEXTS = Texts.beside(PaperWords.class);

    private final Locale language;

    PaperWords(Locale language) {
        this.language = language;
    }

    String text(String key, String... words) {
        return TEXTS.filled(key, language, words);
    }

    /** A share as a percentage with one digit, as it is written in the language. */
    String share(double share) {
        NumberFormat percent = NumberFormat.getPercentInstance(language);
        percent.setMinimumFractionDigits(1);
        percent.setMaximumFractionDigits(1);
        return percent.format(share);
    }
}
