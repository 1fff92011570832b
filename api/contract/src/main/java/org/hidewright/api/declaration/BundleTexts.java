package org.hidewright.api.declaration;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;

/** Texts from {@code messages.properties} beside a class, read through that class's own loader. */
final class BundleTexts implements Texts {
    private final String baseName;
    private final ClassLoader loader;

    BundleTexts(Class<?> beside) {
        this.baseName = beside.getPackageName() + ".messages";
        this.loader = beside.getClassLoader();
    }

    @Override
    public Optional<String> find(String key, Locale language) {
        try {
            ResourceBundle bundle = ResourceBundle.getBundle(
                    baseName,
                    language,
                    loader,
                    ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
            return bundle.containsKey(key) ? Optional.of(bundle.getString(key)) : Optional.empty();
        } catch (MissingResourceException | IllegalArgumentException e) {
            return Optional.empty(); // no file, or one with an escape that is none: no text of it can be had
        }
    }
}
