package org.hidewright.core.wording;

import java.util.BitSet;
import java.util.Locale;
import java.util.regex.Pattern;

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

    /** What is typed or written in a file, and so is the same in every language: commands, options, JSON, names. */
    private static final Pattern TYPED = Pattern.compile("(?<=^Example: ).*"
            + "|--[a-z-]+"
            + "|\\bhidewright(?: [a-z]+(?: (?:install|check|update|back|remove|on|off|index|apply|profile|trust|distrust)\\b)?)?"
            + "|\\b[a-z]+(?= (?:NAME|FILE)\\b)|\\bindex(?= FOLDER\\b)|\\bupdate(?= --from\\b)|(?<=\\| )back\\b"
            + "|(?:[a-z-]+=)?\"[^\"]*\""
            + "|[\\w-]+(?:[./][\\w-]+)+"
            + "|\\bHidewright\\b"
            + "|\\b[A-Z][A-Z0-9]+\\b");

    private PseudoLanguage() {}

    static boolean is(Locale language) {
        return TAG.equals(language);
    }

    /** A message pattern in the pseudo-language; what stands in braces, or is typed, is left alone. */
    static String of(String pattern) {
        StringBuilder strange = new StringBuilder("[");
        BitSet typed = new BitSet();
        TYPED.matcher(pattern).results().forEach(found -> typed.set(found.start(), found.end()));
        int depth = 0;
        int letters = 0;
        for (int i = 0; i < pattern.length(); i++) {
            char c = pattern.charAt(i);
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            int plain = depth > 0 || typed.get(i) ? -1 : PLAIN.indexOf(c);
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
