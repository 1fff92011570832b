package org.hidewright.api.declaration;

import java.util.Locale;
import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/** The texts of a bundle by key and language. */
@FunctionalInterface
@ConsumerType
public interface Texts {
    /** The text in the language nearest to the one asked for, as a {@link java.text.MessageFormat} pattern. */
    Optional<String> find(String key, Locale language);

    /** The texts in {@code messages.properties} beside a class, and its translations, read through its own loader. */
    static Texts beside(Class<?> type) {
        return new BundleTexts(type);
    }
}
