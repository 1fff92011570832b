package org.hidewright.core.wording;

import java.util.Locale;

/**
 * English made strange and two fifths longer, for finding texts that were not translated or do not fit.
 *
 * <p>The tag is {@code en-XA}, the private-use region that CLDR keeps for accented English.
 */
final class PseudoLanguage {
    static final Locale TAG = Locale.forLanguageTag("en-XA");
    private static final String PLAIN = "aceinosuyACEINOSUY";
    private static final String ACCENTED = "àçéîñöšûýÀÇÉÎÑÖŠÛÝ";
    private static final double LONGER = 0.4;

    private PseudoLanguage() {}

    static boolean is(Locale language) {
        return TAG.equals(language);
    }

    /** A message pattern in the pseudo-language; what stands in braces is left alone. */
    static String of(String pattern) {
        StringBuilder strange = new StringBuilder("[");
        int depth = 0;
        int letters = 0;
        for (char c : pattern.toCharArray()) {
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            int plain = depth > 0 ? -1 : PLAIN.indexOf(c);
            letters += depth > 0 ? 0 : 1;
            strange.append(plain < 0 ? c : ACCENTED.charAt(plain));
        }
        int more = (int) Math.ceil(letters * LONGER);
        for (int i = 0; i < more; i++) {
            strange.append(i % 8 == 0 ? ' ' : 'ë');
        }
        return strange.append(']').toString();
    }
}
