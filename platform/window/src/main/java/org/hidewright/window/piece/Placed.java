package org.hidewright.window.piece;

import java.util.List;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.documents.page.FigurePlan;
import org.hidewright.window.model.DrawingFace;

/** A drawing at its size and place in a view. */
record Placed(DrawingFace face, Drawing drawing, FigurePlan plan, Sheet sheet) {
    /** What the numbers in it stand for. */
    List<String> legend() {
        return IntStream.range(0, plan.legend().size())
                .mapToObj(i -> (i + 1) + "\u00A0" + plan.legend().get(i).replace(' ', '\u00A0'))
                .toList();
    }

    /** The same further right and down, in pixels. */
    Placed shifted(double right, double down) {
        return new Placed(
                face,
                drawing,
                plan,
                new Sheet(sheet.factor(), sheet.pixelsPerMm(), sheet.box(), sheet.left() + right, sheet.top() + down));
    }
}
