package org.hidewright.launcher;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;

/** The launcher’s few sentences. Read only when one is needed: most starts say nothing. */
final class Messages {
    private static final String LANGUAGE = "--language";
    private static volatile Locale asked = Locale.getDefault();

    private Messages() {}

    /** From here on in the language that the arguments name, as the commands read it: {@code --language de}. */
    static void speak(String[] arguments) {
        for (int i = 0; i < arguments.length; i++) {
            if (arguments[i].equals(LANGUAGE) && i + 1 < arguments.length) {
                asked = Locale.forLanguageTag(arguments[i + 1]);
                return;
            } else if (arguments[i].startsWith(LANGUAGE + "=")) {
                asked = Locale.forLanguageTag(arguments[i].substring(LANGUAGE.length() + 1));
                return;
            }
        }
    }

    static String text(String key, Object... values) {
        String pattern = ResourceBundle.getBundle(
                        "org.hidewright.launcher.messages",
                        asked,
                        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES))
                .getString(key);
        return MessageFormat.format(
                pattern, Arrays.stream(values).map(String::valueOf).toArray());
    }
}
