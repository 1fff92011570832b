package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;

/** All parts of an item side by side in rows, each with its name: to look at, not to cut by. */
public final class ItemPicture {
    private static final double GAP_MM = 12;
    private static final double LETTERS_MM = 2.6;
    /** Rows are about this much wider than high. */
    private static final double FORMAT = 1.6;

    private ItemPicture() {}

    public static Drawing of(Item item) {
        List<Placed> parts = new ArrayList<>();
        item.parts().forEach(part -> parts.add(new Placed(part, PartDrawing.of(part))));
        parts.sort(Comparator.comparingDouble(part -> -part.box().height()));
        double area = parts.stream()
                .mapToDouble(part -> (part.box().width() + GAP_MM) * (part.box().height() + GAP_MM))
                .sum();
        double across = Math.max(
                Math.sqrt(area * FORMAT),
                parts.stream().mapToDouble(part -> part.box().width()).max().orElseThrow());
        Drawing.Builder picture = Drawing.builder();
        double x = 0;
        double y = 0;
        double rowHeight = 0;
        for (Placed part : parts) {
            if (x > 0 && x + part.box().width() > across) {
                x = 0;
                y -= rowHeight + GAP_MM;
                rowHeight = 0;
            }
            part.draw(
                    picture, Motion.shift(x - part.box().minX(), y - part.box().maxY()));
            x += part.box().width() + GAP_MM;
            rowHeight = Math.max(rowHeight, part.box().height());
        }
        return picture.build();
    }

    private record Placed(Part part, Drawing drawing) {
        Box box() {
            return drawing.bounds();
        }

        void draw(Drawing.Builder picture, Motion motion) {
            drawing.shapes().forEach(shape -> picture.add(moved(shape, motion)));
            Point middle = motion.apply(Region.of(Curve.of(part.outline())).roomiest());
            picture.add(Label.of(part.name(), middle, Anchor.CENTRE, LETTERS_MM));
        }

        private static Shape moved(Shape shape, Motion motion) {
            return shape instanceof Circle circle
                    ? Circle.of(circle.role(), motion.apply(circle.centre()), circle.diameter())
                    : Curve.of((Path) shape).moved(motion).path(shape.role());
        }
    }
}
