package org.hidewright.addons;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.jar.Attributes;
import org.osgi.framework.Constants;

/**
 * A header of a manifest in the languages that its bundle has it in (OSGi Core 8, 3.11): {@code %name} stands for the text
 * {@code name} in {@code OSGI-INF/l10n/bundle.properties}, and in German for that in {@code bundle_de.properties}.
 */
final class HeaderWords {
    private static final int LONGEST = 1 << 20;
    private static final String ENDING = ".properties";

    private HeaderWords() {}

    /**
     * The texts of a header by the language they are in, that for all others under an empty text; none where the header is
     * empty.
     */
    static Map<String, String> of(String header, Attributes headers, Entries entries) throws IOException {
        if (header == null || header.isBlank()) {
            return Map.of();
        } else if (!header.strip().startsWith("%")) {
            return Map.of("", header.strip());
        }
        String key = header.strip().substring(1);
        Map<String, String> words = new TreeMap<>(Map.of("", key)); // as the standard has it where there is no text
        String named = headers.getValue(Constants.BUNDLE_LOCALIZATION);
        String base = named == null ? Constants.BUNDLE_LOCALIZATION_DEFAULT_BASENAME : named.strip();
        for (String name : entries.names()) {
            if (name.startsWith(base) && name.endsWith(ENDING)) {
                String language = name.substring(base.length(), name.length() - ENDING.length());
                if (language.isEmpty() || language.matches("_[A-Za-z]{2,3}(_[A-Za-z0-9]+)?")) {
                    String text = texts(name, entries).getProperty(key, "").strip();
                    if (!text.isEmpty()) {
                        words.put(language.isEmpty() ? "" : language.substring(1), text);
                    }
                }
            }
        }
        return words;
    }

    private static Properties texts(String name, Entries entries) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = entries.open(name)) {
            byte[] bytes = in.readNBytes(LONGEST);
            try (Reader reader = new StringReader(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString())) {
                texts.load(reader);
            } catch (CharacterCodingException latin) { // as such files were written before Java 9
                texts.load(new ByteArrayInputStream(bytes));
            }
        } catch (IllegalArgumentException badEscape) {
            texts.clear(); // a name is not worth refusing a bundle for
        }
        return texts;
    }
}
