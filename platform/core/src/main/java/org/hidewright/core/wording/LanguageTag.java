package org.hidewright.core.wording;

import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Language tags as they are typed: {@code de}, {@code en-GB} (BCP 47, languages of two or three letters, ISO 639). */
public final class LanguageTag {
    private static final Set<String> TWO_LETTERS = Set.of(Locale.getISOLanguages());

    private LanguageTag() {}

    /** The language; empty when the tag is malformed or of no language, as “english” and “de_DE” are. */
    public static Optional<Locale> of(String tag) {
        try {
            Locale locale = new Locale.Builder().setLanguageTag(tag).build();
            String language = locale.getLanguage();
            return TWO_LETTERS.contains(language) || language.length() == 3 ? Optional.of(locale) : Optional.empty();
        } catch (IllformedLocaleException e) {
            return Optional.empty();
        }
    }
}
