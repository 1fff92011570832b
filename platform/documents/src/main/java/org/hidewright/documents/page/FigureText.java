package org.hidewright.documents.page;

import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;

/** One text of a drawing at its place on paper: the foot of its first letter, its turn, the box round its letters. */
record FigureText(String text, Style style, Point foot, double turn, Box box) {
    /** Letters below the foot line, as a share of a capital. */
    private static final double BELOW = 0.4;

    /** A label in its size on paper, turned round if it would stand on its head. */
    static FigureText of(Label label, String text, Typeface typeface) {
        double turn = Math.IEEEremainder(label.turn(), 2 * Math.PI);
        Label upright = label;
        if (turn > Math.PI / 2 + 1e-9 || turn <= -Math.PI / 2 + 1e-9) {
            Anchor opposite =
                    Anchor.values()[Anchor.values().length - 1 - label.anchor().ordinal()];
            turn = Math.IEEEremainder(turn + Math.PI, 2 * Math.PI);
            upright = Label.of(label.text(), label.at(), opposite, label.height());
        }
        upright = upright.turned(turn);
        Style style = Style.ofCapitals(label.height(), Tone.INK);
        double length = typeface.widthMm(style, text);
        Point foot = upright.foot(length);
        double up = turn + Math.PI / 2;
        Point low = foot.towards(up, -BELOW * label.height());
        double height = (1.15 + BELOW) * label.height();
        Box box = Box.around(
                low,
                low.towards(turn, length),
                low.towards(up, height),
                low.towards(turn, length).towards(up, height));
        return new FigureText(text, style, foot, turn, box);
    }

    boolean meets(List<FigureText> others) {
        return others.stream().anyMatch(other -> meet(box, other.box));
    }

    static boolean meet(Box box, Box other) {
        return box.minX() < other.maxX()
                && other.minX() < box.maxX()
                && box.minY() < other.maxY()
                && other.minY() < box.maxY();
    }
}
