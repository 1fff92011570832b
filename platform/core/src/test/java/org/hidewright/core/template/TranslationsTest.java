package org.hidewright.core.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What files beside a template say in other languages, by the names of the files. */
class TranslationsTest {
    private static Optional<String> title(Map<String, String> files, Locale language) {
        return new Translations(ending -> Optional.ofNullable(files.get(ending))).find("tag.title", language);
    }

    @Test
    void ofTwoFilesThatOfTheCountrySaysFirst() {
        Map<String, String> files = Map.of(
                "_de.properties", "tag.title = Schild\ntag.width = Breite", "_de_AT.properties", "tag.title = Taferl");
        assertEquals(Optional.of("Taferl"), title(files, Locale.forLanguageTag("de-AT")));
        assertEquals(Optional.of("Schild"), title(files, Locale.GERMANY));
        assertEquals(Optional.empty(), title(files, Locale.ENGLISH));
    }

    @Test
    void theMarkThatSomeEditorsBeginAFileWithIsNoPartOfAKey() {
        assertEquals(Optional.of("Schild"), title(Map.of("_de.properties", "\uFEFFtag.title = Schild"), Locale.GERMAN));
    }

    @Test
    void aFileThatCannotBeReadSaysNothing() {
        String spoilt = "tag.title = Schild\ntag.width = \\u00e Breite";
        assertEquals(Optional.empty(), title(Map.of("_de.properties", spoilt), Locale.GERMAN));
    }
}
