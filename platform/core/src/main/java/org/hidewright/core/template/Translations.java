package org.hidewright.core.template;

import java.io.IOException;
import java.io.StringReader;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.hidewright.api.declaration.Texts;

/**
 * The texts of a template in other languages than it is written in, from files beside it: {@code dog-collar_de.properties}
 * beside {@code dog-collar.json}, with the keys that messages of a bundle have.
 */
final class Translations implements Texts {
    /** Some editors begin a file with it; it would be a part of the first key. */
    private static final String MARK = "\uFEFF";

    private final Function<String, Optional<String>> beside;
    private final Map<String, Optional<Properties>> read = new ConcurrentHashMap<>();

    /** @param beside the text of the file beside the template whose name ends so, {@code _de.properties}; empty where there is none */
    Translations(Function<String, Optional<String>> beside) {
        this.beside = beside;
    }

    /** As the files are called, that of the country first. */
    @Override
    public Optional<String> find(String key, Locale language) {
        return in(language.getLanguage() + "_" + language.getCountry(), key)
                .or(() -> in(language.getLanguage(), key))
                .map(text -> text.replace("'", "''"));
    }

    private Optional<String> in(String language, String key) {
        return read.computeIfAbsent(language, this::read).map(texts -> texts.getProperty(key));
    }

    private Optional<Properties> read(String language) {
        return language.isEmpty() || language.endsWith("_")
                ? Optional.empty()
                : beside.apply("_" + language + ".properties").map(Translations::texts);
    }

    private static Properties texts(String file) {
        Properties texts = new Properties();
        try {
            texts.load(new StringReader(file.startsWith(MARK) ? file.substring(1) : file));
        } catch (IOException | IllegalArgumentException spoilt) {
            return new Properties(); // an escape that is none: the template is told in its own words
        }
        return texts;
    }
}
