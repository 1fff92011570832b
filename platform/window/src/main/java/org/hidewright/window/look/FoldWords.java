package org.hidewright.window.look;

import org.eclipse.swt.widgets.Link;

/** Words that open and fold what stands below them: a mark before them says how it stands, and words do for those who hear them. */
public final class FoldWords {
    private static final String OPEN = "▾ ";
    private static final String SHUT = "▸ ";
    private static final String KEY = "folds";
    private static final String TITLE = "fold title";
    private static final String STANDS = "fold stands";

    private FoldWords() {}

    /**
     * Gives words their text and the mark of how it stands.
     *
     * @param stands how it stands, in words
     */
    public static void say(Link link, String text, boolean open, String stands) {
        if (!are(link)) {
            Spoken.name(link, () -> String.valueOf(link.getData(TITLE)));
            Spoken.about(link, () -> String.valueOf(link.getData(STANDS)));
        }
        link.setData(KEY, open);
        link.setData(TITLE, text);
        link.setData(STANDS, stands);
        Inks.say(link, (open ? OPEN : SHUT) + text);
    }

    /** Whether words are such. */
    public static boolean are(Link link) {
        return link.getData(KEY) != null;
    }
}
