package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The launcher speaks the language that the commands are asked to speak. */
class MessagesTest {
    @AfterEach
    void asBefore() {
        Messages.speak(new String[] {"--language", Locale.getDefault().toLanguageTag()});
    }

    private static String told(String... arguments) {
        Messages.speak(arguments);
        return Messages.text("bundle.waits-for-word", "sleeve.jar", "addons");
    }

    @Test
    void theArgumentsNameTheLanguage() {
        String english = told("--language", "en");
        String german = told("make", "a.json", "--language", "de");
        assertTrue(german.startsWith("sleeve.jar ist neu hier"), german);
        assertTrue(english.startsWith("sleeve.jar is new here"), english);
        assertEquals(german, told("--language=de-AT", "make"));
        assertEquals(english, told("--language", "fr"));
    }
}
