package org.hidewright.window.look;

import java.util.HashSet;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** A letter for each line of a menu, none twice, in whichever language it is written: with it the line is chosen by one key. */
public final class Mnemonics {
    private static final char MARK = '&';

    private Mnemonics() {}

    /** Gives each line a letter of its own, as far as there are letters: the first of a word where it is free. */
    public static void give(Menu menu) {
        Set<Character> taken = new HashSet<>();
        for (MenuItem item : menu.getItems()) {
            if ((item.getStyle() & SWT.SEPARATOR) == 0) {
                item.setText(marked(plain(item.getText()), taken));
            }
        }
    }

    /** A text with a letter that no menu of a bar has: there the letter would open the menu. */
    public static String beside(Menu bar, String text) {
        Set<Character> taken = new HashSet<>();
        if (bar != null) {
            for (MenuItem item : bar.getItems()) {
                int at = item.getText().indexOf(MARK);
                if (at >= 0 && at + 1 < item.getText().length()) {
                    taken.add(lower(item.getText().charAt(at + 1)));
                }
            }
        }
        return marked(text, taken);
    }

    /** A text as it is read, without its mark. */
    public static String plain(String text) {
        return text.replaceAll("&(.)", "$1");
    }

    private static String marked(String text, Set<Character> taken) {
        int end = text.indexOf('\t') < 0 ? text.length() : text.indexOf('\t');
        OptionalInt place = IntStream.range(0, end)
                .filter(i -> i == 0 || text.charAt(i - 1) == ' ')
                .filter(i -> isFree(text.charAt(i), taken))
                .findFirst();
        if (place.isEmpty()) {
            place = IntStream.range(0, end)
                    .filter(i -> isFree(text.charAt(i), taken))
                    .findFirst();
        }
        if (place.isEmpty()) {
            return doubled(text);
        }
        int at = place.getAsInt();
        taken.add(lower(text.charAt(at)));
        return doubled(text.substring(0, at)) + MARK + text.charAt(at) + doubled(text.substring(at + 1));
    }

    private static boolean isFree(char letter, Set<Character> taken) {
        return Character.isLetterOrDigit(letter) && !taken.contains(lower(letter));
    }

    private static char lower(char letter) {
        return String.valueOf(letter).toLowerCase(Locale.ROOT).charAt(0);
    }

    private static String doubled(String text) {
        return text.replace("&", "&&");
    }
}
