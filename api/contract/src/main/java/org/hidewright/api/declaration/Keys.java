package org.hidewright.api.declaration;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

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

    /** @throws InvalidDeclaration if an id is not lower-case words joined by hyphens */
    static void checkId(Class<?> where, String id) {
        if (!id.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
            throw new InvalidDeclaration(where, "the id \"" + id + "\" must be lower-case words joined by hyphens");
        }
    }

    /** @throws InvalidDeclaration if a key stands twice among what is named */
    static void checkDistinct(Class<?> where, String named, List<String> keys) {
        Set<String> seen = new HashSet<>();
        for (String key : keys) {
            if (!seen.add(key)) {
                throw new InvalidDeclaration(where, "two " + named + " have the key " + key);
            }
        }
    }

    static String of(Class<?> type) {
        return of(type.getSimpleName());
    }
}
