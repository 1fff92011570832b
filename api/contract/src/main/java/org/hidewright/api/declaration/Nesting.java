package org.hidewright.api.declaration;

import java.util.LinkedHashSet;
import java.util.Set;

/** The records that hold the one being read, so that one which holds itself is found before it is read for ever. */
final class Nesting {
    private final Set<Class<?>> around = new LinkedHashSet<>();

    void into(Class<?> type) {
        if (!around.add(type)) {
            throw new InvalidDeclaration(type, "it holds itself, so its form would have no end");
        }
    }

    void outOf(Class<?> type) {
        around.remove(type);
    }
}
