package org.hidewright.distribution;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Document;
import org.hidewright.api.drawing.Drawing;

/** Every text of a document in the order of its pages: whatever its blocks and drawings give out as words. */
final class ReadTexts {
    /** What is for machines: where a block is found, in which language it is. */
    private static final List<String> UNREAD = List.of("id", "language", "toString", "name");

    private final List<String> texts = new ArrayList<>();

    private ReadTexts() {}

    static List<String> of(Document document) throws Exception {
        ReadTexts read = new ReadTexts();
        read.add(document);
        read.texts.removeIf(String::isBlank);
        return read.texts;
    }

    private static boolean mayHold(Class<?> type) {
        return type == String.class
                || type == List.class
                || type == Optional.class
                || type == Drawing.class
                || type.getPackage() == Block.class.getPackage();
    }

    private void add(Object value) throws Exception {
        if (value instanceof String text) {
            texts.add(text);
        } else if (value instanceof Optional<?> maybe) {
            if (maybe.isPresent()) {
                add(maybe.get());
            }
        } else if (value instanceof List<?> several) {
            for (Object one : several) {
                add(one);
            }
        } else if (value != null
                && !(value instanceof Enum)
                && value.getClass().getName().startsWith("org.hidewright.api.d")) {
            for (Method method : value.getClass().getMethods()) {
                if (method.getParameterCount() == 0
                        && !Modifier.isStatic(method.getModifiers())
                        && !UNREAD.contains(method.getName())
                        && method.getReturnType() != value.getClass() // the same again, otherwise
                        && mayHold(method.getReturnType())) {
                    add(method.invoke(value));
                }
            }
        }
    }
}
