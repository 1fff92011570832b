package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the maker is told when a text cannot be read. */
class ReadingMessagesTest {
    private static final Set<String> PARTS = Set.of(".what", ".why", ".next");

    private final Properties messages = new Properties();

    @BeforeEach
    void load() throws IOException {
        try (Reader in = new InputStreamReader(
                TypedText.class.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8)) {
            messages.load(in);
        }
    }

    @Test
    void everyTroubleHasItsThreeSentencesAndEverySentenceItsTrouble() {
        Set<String> wanted = new TreeSet<>();
        for (Trouble trouble : Trouble.values()) {
            PARTS.forEach(part -> wanted.add(trouble.key() + part));
        }
        assertEquals(wanted, new TreeSet<>(messages.stringPropertyNames()));
    }

    @ParameterizedTest
    @EnumSource
    void theSentencesNameEverythingTheTroubleTells(Trouble trouble) {
        StringBuilder all = new StringBuilder();
        for (String part : PARTS) {
            String sentence = messages.getProperty(trouble.key() + part, "");
            assertFalse(sentence.isBlank(), part);
            assertTrue(sentence.endsWith("."), sentence);
            assertFalse(sentence.contains("'"), "a straight apostrophe is swallowed: " + sentence);
            assertTrue(new MessageFormat(sentence).getFormatsByArgumentIndex().length <= trouble.places(), sentence);
            all.append(sentence);
        }
        for (int place = 0; place < trouble.places(); place++) {
            assertTrue(all.indexOf("{" + place + "}") >= 0, trouble + " does not use place " + place);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.hidewright.api.measure.RefusedText#all")
    void everyRefusalCanBeTold(RefusedText refused) {
        Unreadable<?> unreadable = Shop.refused(refused.reader.apply(refused.text));
        for (String part : PARTS) {
            String told = MessageFormat.format(
                    messages.getProperty(unreadable.key() + part),
                    unreadable.args().toArray());
            assertFalse(told.contains("{"), told);
        }
    }

    @Test
    void anOunceOutOfPlaceIsExplained() {
        assertTrue(messages.getProperty("reading.wrong-dimension.length.next").contains("oz (here a thickness"));
        assertTrue(messages.getProperty("reading.wrong-dimension.mass.next").contains("oz (here a mass"));
    }
}
