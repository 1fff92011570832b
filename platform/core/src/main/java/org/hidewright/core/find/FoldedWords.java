package org.hidewright.core.find;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The words of a text without what is easily typed otherwise: large letters, accents, and the umlauts, which may be typed as two
 * letters (Naehte, DIN 5007-2) or without their dots (DIN 5007-1).
 */
final class FoldedWords {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");

    private final List<String> dotless;
    private final List<String> twoLetters;

    private FoldedWords(List<String> dotless, List<String> twoLetters) {
        this.dotless = dotless;
        this.twoLetters = twoLetters;
    }

    static FoldedWords of(String text) {
        String small = Normalizer.normalize(text, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replace("ß", "ss");
        return new FoldedWords(
                words(small), words(small.replace("ä", "ae").replace("ö", "oe").replace("ü", "ue")));
    }

    private static List<String> words(String text) {
        String plain =
                MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
        return BETWEEN.splitAsStream(plain).filter(word -> !word.isEmpty()).toList();
    }

    boolean isEmpty() {
        return dotless.isEmpty();
    }

    int count() {
        return dotless.size();
    }

    /** Whether these are the same words in the same order. */
    boolean same(FoldedWords other) {
        return dotless.equals(other.dotless) || twoLetters.equals(other.twoLetters);
    }

    /** How a word of a search is met in these words. */
    Met met(FoldedWords search, int word) {
        Met first = met(dotless, search.dotless.get(word));
        Met second = met(twoLetters, search.twoLetters.get(word));
        return first.compareTo(second) <= 0 ? first : second;
    }

    private static Met met(List<String> words, String sought) {
        return words.stream()
                .map(word -> Met.of(word, sought))
                .min(Met::compareTo)
                .orElse(Met.NOT);
    }

    /** How near a word comes to the one that is sought, the nearest first. */
    enum Met {
        /** The very word. */
        WORD,
        /** The word begins so. */
        START,
        /** The word ends so, as a compound with the thing itself: Gürtelschnalle. */
        END,
        /** It stands inside the word. */
        INSIDE,
        NOT;

        /** So few letters stand inside too many words. */
        private static final int TOO_SHORT_INSIDE = 3;

        private static Met of(String word, String sought) {
            if (word.equals(sought)) {
                return WORD;
            } else if (word.startsWith(sought)) {
                return START;
            } else if (sought.length() < TOO_SHORT_INSIDE) {
                return NOT;
            } else if (word.endsWith(sought)) {
                return END;
            }
            return word.contains(sought) ? INSIDE : NOT;
        }
    }
}
