package com.example.feldbuch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.text.MessageFormat;
import java.util.Properties;
import org.junit.jupiter.api.Test;

/** Every text is there in both languages, and says what it is given in both. */
class GermanTextsTest {
    private static Properties texts(String file) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = BookStrap.class.getResourceAsStream(file)) {
            texts.load(new java.io.InputStreamReader(in, java.nio.charset.StandardCharsets.UTF_8));
        }
        return texts;
    }

    @Test
    void germanIsComplete() throws IOException {
        Properties english = texts("messages.properties");
        Properties german = texts("messages_de.properties");
        assertEquals(english.stringPropertyNames(), german.stringPropertyNames());
        for (String key : english.stringPropertyNames()) {
            assertFalse(german.getProperty(key).equals(english.getProperty(key)), key + " is not translated");
            assertEquals(places(english.getProperty(key)), places(german.getProperty(key)), key);
        }
    }

    private static int places(String pattern) {
        return new MessageFormat(pattern).getFormatsByArgumentIndex().length;
    }
}
