package org.hidewright.launcher;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.ResourceBundle;

/** The launcher’s few sentences. Read only when one is needed: most starts say nothing. */
final class Messages {

    private Messages() {}

    static String text(String key, Object... values) {
        String pattern =
                ResourceBundle.getBundle("org.hidewright.launcher.messages").getString(key);
        return MessageFormat.format(
                pattern, Arrays.stream(values).map(String::valueOf).toArray());
    }
}
