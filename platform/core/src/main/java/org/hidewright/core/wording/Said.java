package org.hidewright.core.wording;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.declaration.Texts;

/**
 * A word of an item as the maker reads it: the text with its key, else the one whose key has {@code nth} where this one has a
 * number, with that number put into it, else as the item says it.
 *
 * @param texts those of the bundle that answered the item
 * @param key such as {@code item.part.pocket-2}, which {@code item.part.pocket-nth} says too
 * @param otherwise as the item says it
 */
public record Said(Texts texts, String key, String otherwise) {
    private static final Pattern NUMBER = Pattern.compile("(?<![a-z0-9])[0-9]+(?![a-z0-9])");
    private static final String NTH = "nth";

    String in(Locale language) {
        return texts.find(key, language)
                .map(text -> filled(text, ""))
                .or(() -> numbered(language))
                .orElse(otherwise);
    }

    /** The key that says this and all that differ from it by the number, with {@code nth} in its place; this one where it has none. */
    public String numberless() {
        return NUMBER.matcher(key).replaceFirst(NTH);
    }

    private Optional<String> numbered(Locale language) {
        Matcher number = NUMBER.matcher(key);
        return number.find()
                ? texts.find(number.replaceFirst(NTH), language).map(text -> filled(text, number.group()))
                : Optional.empty();
    }

    private static String filled(String text, String number) {
        return text.replace("''", "'").replace("{0}", number);
    }

    /** As where nobody says in which language. */
    @Override
    public String toString() {
        return otherwise;
    }
}
