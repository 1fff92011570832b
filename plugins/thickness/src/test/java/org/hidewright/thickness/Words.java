package org.hidewright.thickness;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Texts;

/** Puts message keys into words for a test; a missing key is a failure. */
final class Words {
    private Words() {}

    static String of(Texts texts, String key, List<Object> args) {
        String pattern = texts.find(key, Locale.ENGLISH).orElseThrow(() -> new AssertionError("no text for " + key));
        Object[] words = args.stream().map(arg -> word(texts, arg)).toArray();
        return new MessageFormat(pattern, Locale.ROOT).format(words);
    }

    private static Object word(Texts texts, Object arg) {
        if (arg instanceof Phrase phrase) {
            return of(texts, "phrase." + phrase.key(), phrase.args());
        } else if (arg instanceof Enum<?> constant) {
            String type = constant.getDeclaringClass().getSimpleName().replaceAll("(?<!^)([A-Z])", "-$1");
            return of(texts, (type + "." + constant.name().replace('_', '-')).toLowerCase(Locale.ROOT), List.of());
        }
        return String.valueOf(arg);
    }
}
