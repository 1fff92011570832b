package org.hidewright.api.declaration;

import java.util.Locale;

/** Keys from Java names: {@code insideRadius}, {@code RoundBar} and {@code WILL_NOT} in lower-case words with hyphens. */
final class Keys {
    private Keys() {}

    static String of(String javaName) {
        if (javaName.equals(javaName.toUpperCase(Locale.ROOT))) {
            return javaName.toLowerCase(Locale.ROOT).replace('_', '-');
        }
        StringBuilder key = new StringBuilder();
        for (int i = 0; i < javaName.length(); i++) {
            char c = javaName.charAt(i);
            if (Character.isUpperCase(c)) {
                if (i > 0) {
                    key.append('-');
                }
                key.append(Character.toLowerCase(c));
            } else {
                key.append(c);
            }
        }
        return key.toString();
    }

    static String of(Class<?> type) {
        return of(type.getSimpleName());
    }
}
