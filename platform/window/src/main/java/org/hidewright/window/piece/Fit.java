package org.hidewright.window.piece;

import java.util.List;
import org.hidewright.api.drawing.Box;

/** How several drawings stand in a view: beside each other or under each other, all in one size, as large as they can be. */
final class Fit {
    /** Between two drawings, and round them, in millimetres of the screen. */
    static final double GAP_MM = 6;

    private Fit() {}

    /** Whether drawings are larger beside each other than under each other. */
    static boolean isBeside(List<Box> boxes, double width, double height) {
        return factor(boxes, width, height, true) >= factor(boxes, width, height, false);
    }

    /**
     * The largest factor at which all fit.
     *
     * @param width of the view, in millimetres of the screen
     */
    static double factor(List<Box> boxes, double width, double height) {
        return factor(boxes, width, height, isBeside(boxes, width, height));
    }

    private static double factor(List<Box> boxes, double width, double height, boolean beside) {
        double sum = 0;
        double most = 0;
        for (Box box : boxes) {
            sum += beside ? box.width() : box.height();
            most = Math.max(most, beside ? box.height() : box.width());
        }
        double gaps = GAP_MM * (boxes.size() + 1);
        double along = ((beside ? width : height) - gaps) / Math.max(1, sum);
        double across = ((beside ? height : width) - 2 * GAP_MM) / Math.max(1, most);
        return Math.max(0.001, Math.min(along, across));
    }
}
