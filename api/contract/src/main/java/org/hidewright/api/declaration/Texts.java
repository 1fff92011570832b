package org.hidewright.api.declaration;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/** The texts of a bundle by key and language. */
@FunctionalInterface
@ConsumerType
public interface Texts {
    /** The text in the language nearest to the one asked for, as a {@link MessageFormat} pattern. */
    Optional<String> find(String key, Locale language);

    /**
     * The text with its places filled, for sections that a bundle adds to a document; the key itself where there is no such
     * text.
     *
     * @param words as they are to be read: numbers formatted, units written
     */
    default String filled(String key, Locale language, String... words) {
        return new MessageFormat(find(key, language).orElse(key), Locale.ROOT).format(words.clone());
    }

    /** The texts in {@code messages.properties} beside a class, and its translations, read through its own loader. */
    static Texts beside(Class<?> type) {
        return new BundleTexts(type);
    }
}
