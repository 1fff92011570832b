package org.hidewright.window.look;

import org.eclipse.swt.graphics.GC;

/** Text that is painted, in as many lines as it needs. */
public final class Wrapped {
    private Wrapped() {}

    /** A text with breaks between words, so that each line has room in a width with the font that is set. */
    public static String within(GC gc, String text, int width) {
        StringBuilder lines = new StringBuilder();
        for (String paragraph : text.split("\n", -1)) {
            String line = "";
            for (String word : paragraph.split(" ")) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (!line.isEmpty() && gc.textExtent(longer).x > width) {
                    lines.append(line).append('\n');
                    longer = word;
                }
                line = longer;
            }
            lines.append(line).append('\n');
        }
        return lines.substring(0, lines.length() - 1);
    }
}
