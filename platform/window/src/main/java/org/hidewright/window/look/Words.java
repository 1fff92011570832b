package org.hidewright.window.look;

import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Label;

/** What the words of a label need: it can break between them, but not inside one. */
public final class Words {
    /** So many letters have room anywhere: measuring takes its time. */
    private static final int SHORT = 5;

    private Words() {}

    /** How wide the longest word of a label is; 0 where all are short. */
    public static int longest(Label label) {
        List<String> words = Arrays.stream(label.getText().split("\\s+"))
                .filter(word -> word.length() > SHORT)
                .toList();
        if (words.isEmpty()) {
            return 0;
        }
        GC gc = new GC(label);
        gc.setFont(label.getFont());
        int longest =
                words.stream().mapToInt(word -> gc.textExtent(word).x).max().orElse(0);
        gc.dispose();
        return longest;
    }
}
