package org.hidewright.documents.page;

import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.drawing.Shape;

/**
 * Brings a drawing to the size it has on paper, perhaps turned by a quarter counter-clockwise. Shapes are scaled; letters
 * and the distance of a dimension line keep their size.
 */
record PaperScale(double factor, boolean quarterTurn) {
    Point of(Point point) {
        double x = point.x() * factor;
        double y = point.y() * factor;
        return quarterTurn ? Point.of(-y, x) : Point.of(x, y);
    }

    /** What a way on paper is in the drawing. */
    Point back(Point onPaper) {
        double x = onPaper.x() / factor;
        double y = onPaper.y() / factor;
        return quarterTurn ? Point.of(y, -x) : Point.of(x, y);
    }

    Shape of(Shape shape) {
        if (shape instanceof Path path) {
            return of(path);
        }
        if (shape instanceof Circle circle) {
            return Circle.of(circle.role(), of(circle.centre()), circle.diameter() * factor);
        }
        if (shape instanceof DimensionLine line) {
            return DimensionLine.of(of(line.from()), of(line.to()), line.offset(), line.text(), line.height());
        }
        Label label = (Label) shape;
        double turn = label.turn() + (quarterTurn ? Math.PI / 2 : 0);
        return Label.of(label.text(), of(label.at()), label.anchor(), label.height())
                .turned(turn);
    }

    private Path of(Path path) {
        Path.Builder scaled = Path.from(of(path.segments().get(0).start()));
        for (Segment segment : path.segments()) {
            if (segment instanceof Segment.Arc arc) {
                scaled.arcAround(of(arc.centre()), arc.sweep());
            } else if (segment instanceof Segment.Cubic cubic) {
                scaled.cubicTo(of(cubic.control1()), of(cubic.control2()), of(cubic.end()));
            } else {
                scaled.lineTo(of(segment.end()));
            }
        }
        return path.isClosed() ? scaled.closed(path.role()) : scaled.open(path.role());
    }

    /** The box of the shapes alone, with the weight of their lines and the points of arrows. */
    static Box inked(Shape shape) {
        if (shape instanceof DimensionLine line) {
            return Box.around(line.from(), line.to(), line.lineStart(), line.lineEnd())
                    .grown(DimensionPainter.REACH);
        }
        RoleLine look = RoleLine.of(shape.role());
        return shape.bounds()
                .grown(look.arrows() ? Arrowhead.HALF_WIDTH : look.line().widthMm() / 2);
    }
}
