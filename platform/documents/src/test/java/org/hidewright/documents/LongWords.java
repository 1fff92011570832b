package org.hidewright.documents;

/** A language nobody speaks: every word 40% longer, with accents above and below. */
final class LongWords {
    private static final String PLAIN = "aeioucnsyAEIOUCNS";
    private static final String ACCENTED = "åéîøüçñšýÄÉÎÖÜÇÑŠ";

    private LongWords() {}

    static String of(String text) {
        StringBuilder longer = new StringBuilder();
        int owed = 0;
        for (char c : text.toCharArray()) {
            int accent = PLAIN.indexOf(c);
            char shown = accent < 0 ? c : ACCENTED.charAt(accent);
            longer.append(shown);
            if (Character.isLetter(c)) {
                owed += 4;
                if (owed >= 10) {
                    longer.append(Character.toLowerCase(shown));
                    owed -= 10;
                }
            }
        }
        return longer.toString();
    }
}
