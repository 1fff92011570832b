package org.hidewright.window.papers;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.hidewright.core.paper.Paper;

/** Where a page lies on a sheet that a printer prints, so that a millimetre is one. */
public final class OnPaper {
    private static final double MM_PER_INCH = 25.4;

    private OnPaper() {}

    /**
     * The place of a page, in dots of the printer.
     *
     * @param trim the sheet, seen from where the printer can begin to print: its left and top are not positive
     * @param dpi dots for an inch, across and down
     */
    public static Rectangle of(Paper paper, Rectangle trim, Point dpi) {
        return new Rectangle(trim.x, trim.y, (int) Math.round(paper.widthMm() / MM_PER_INCH * dpi.x), (int)
                Math.round(paper.heightMm() / MM_PER_INCH * dpi.y));
    }

    /** Whether the sheet in the printer is as large as the page, to a few millimetres. */
    public static boolean isSheet(Paper paper, Rectangle trim, Point dpi) {
        Rectangle page = of(paper, trim, dpi);
        int slack = dpi.x / 5;
        return Math.abs(page.width - trim.width) <= slack && Math.abs(page.height - trim.height) <= slack;
    }
}
