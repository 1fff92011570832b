package org.hidewright.documents.dxf;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.documents.FlatLine;

/** Entities as lines in millimetres (DXF Reference, ENTITIES section). */
final class DxfLines {
    private static final int CLOSED = 1;
    /** Flags of a POLYLINE that is one in space, a mesh or a body. */
    private static final int NOT_FLAT = 8 | 16 | 64;
    /** Flag of a VERTEX that the curve is only drawn towards. */
    private static final int CONTROL = 16;

    private final double unitMm;

    DxfLines(double unitMm) {
        this.unitMm = unitMm;
    }

    /**
     * The line of an entity.
     *
     * @param vertices the records that belong to a POLYLINE
     * @return empty where it is none, or does not lie in the plane of the drawing
     */
    Optional<DrawnLine> of(DxfRecord entity, List<DxfRecord> vertices) throws FileTrouble {
        return switch (entity.type()) {
            case "LINE" -> line(entity);
            case "ARC" -> arc(entity, entity.number(50, 0), entity.number(51, 360));
            case "CIRCLE" -> arc(entity, 0, 360);
            case "ELLIPSE" -> ellipse(entity);
            case "SPLINE" -> spline(entity);
            case "LWPOLYLINE" -> polyline(entity, entity.whole(70, 0), vertices(entity));
            case "POLYLINE" -> polyline(entity, entity.whole(70, 0), vertices(vertices));
            default -> Optional.empty();
        };
    }

    private Optional<DrawnLine> line(DxfRecord entity) throws FileTrouble {
        Point start = Point.of(entity.needed(10), entity.needed(20));
        Point end = Point.of(entity.needed(11), entity.needed(21));
        return drawn(entity, List.of(Segment.line(start, end)), false, scale());
    }

    private AffineTransform scale() {
        return AffineTransform.getScaleInstance(unitMm, unitMm);
    }

    /** Some entities are seen from above or from below, and lie mirrored then; seen from a side they are no outline. */
    private Optional<AffineTransform> seen(DxfRecord entity) throws FileTrouble {
        double up = entity.number(230, 1);
        if (Math.abs(Math.abs(up) - 1) > 1e-6) {
            return Optional.empty();
        }
        return Optional.of(AffineTransform.getScaleInstance(up < 0 ? -unitMm : unitMm, unitMm));
    }

    private static Optional<DrawnLine> drawn(
            DxfRecord entity, List<Segment> segments, boolean closed, AffineTransform toMm) throws FileTrouble {
        if (segments.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(FlatLine.of(
                segments, closed, new FlatLine.Whose(entity.name(), entity.at(), List.of(entity.layer()), toMm)));
    }

    private Optional<DrawnLine> arc(DxfRecord entity, double fromDegrees, double toDegrees) throws FileTrouble {
        Optional<AffineTransform> seen = seen(entity);
        double radius = entity.needed(40);
        if (seen.isEmpty() || radius <= 0) {
            return Optional.empty();
        }
        Point centre = Point.of(entity.needed(10), entity.needed(20));
        double from = Math.toRadians(fromDegrees);
        Segment arc = Segment.arc(centre.towards(from, radius), centre, sweep(from, Math.toRadians(toDegrees)));
        return drawn(entity, List.of(arc), false, seen.get());
    }

    /** Counter-clockwise, and a whole turn where both are the same. */
    private static double sweep(double from, double to) {
        double turns = (to - from) / (2 * Math.PI);
        double share = turns - Math.floor(turns);
        return share < 1e-12 ? 2 * Math.PI : share * 2 * Math.PI;
    }

    /** A circle of radius 1, laid into the two axes of the ellipse. */
    private Optional<DrawnLine> ellipse(DxfRecord entity) throws FileTrouble {
        Optional<AffineTransform> seen = seen(entity);
        double x = entity.needed(11);
        double y = entity.needed(21);
        double ratio = entity.needed(40) * (seen.isPresent() && seen.get().getScaleX() < 0 ? -1 : 1);
        if (seen.isEmpty() || ratio == 0 || x == 0 && y == 0) {
            return Optional.empty();
        }
        AffineTransform toMm = scale();
        toMm.concatenate(new AffineTransform(x, y, -y * ratio, x * ratio, entity.needed(10), entity.needed(20)));
        double from = entity.number(41, 0);
        Point centre = Point.of(0, 0);
        Segment arc = Segment.arc(centre.towards(from, 1), centre, sweep(from, entity.number(42, 2 * Math.PI)));
        return drawn(entity, List.of(arc), false, toMm);
    }

    private Optional<DrawnLine> spline(DxfRecord entity) throws FileTrouble {
        double[] xs = entity.numbers(10);
        double[] ys = entity.numbers(20);
        double[] weights = entity.numbers(41);
        if (xs.length == 0) {
            return Optional.empty(); // given by places it passes through, which does not say how
        }
        if (xs.length != ys.length || weights.length > 0 && weights.length != xs.length) {
            throw unreadable(entity);
        }
        Spline spline = new Spline(entity.whole(71, 3), entity.numbers(40), xs, ys, weights);
        if (!spline.isWhole()) {
            throw unreadable(entity);
        }
        List<Point> controls = new ArrayList<>();
        for (int i = 0; i < xs.length; i++) {
            controls.add(Point.of(xs[i], ys[i]));
        }
        chain(entity, controls); // no place of the curve lies outside its control points
        return chain(entity, spline.places(DrawingReader.NEAR_MM / unitMm / 2));
    }

    private static FileTrouble unreadable(DxfRecord entity) {
        return OutlineNotices.trouble(OutlineNotices.DRAWN_UNREADABLE.with(entity.name(), "knots"), entity.at());
    }

    private Optional<DrawnLine> chain(DxfRecord entity, List<Point> places) throws FileTrouble {
        List<Segment> segments = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            segments.add(Segment.line(places.get(i - 1), places.get(i)));
        }
        return drawn(entity, segments, false, scale());
    }

    private Optional<DrawnLine> polyline(DxfRecord entity, int flags, Bulges bulges) throws FileTrouble {
        Optional<AffineTransform> seen = seen(entity);
        boolean flat = entity.type().equals("LWPOLYLINE") || (flags & NOT_FLAT) == 0;
        if (seen.isEmpty() || !flat) {
            return Optional.empty();
        }
        boolean closed = (flags & CLOSED) != 0;
        return drawn(entity, bulges.segments(closed), closed, seen.get());
    }

    /** Each vertex begins with its x. */
    private static Bulges vertices(DxfRecord entity) throws FileTrouble {
        Bulges bulges = new Bulges();
        double x = 0;
        double y = 0;
        double bulge = 0;
        boolean begun = false;
        for (DxfRecord.Pair pair : entity.pairs()) {
            if (pair.code() == 10) {
                if (begun) {
                    bulges.add(x, y, bulge);
                }
                begun = true;
                x = pair.number(entity.name());
                bulge = 0;
            } else if (pair.code() == 20) {
                y = pair.number(entity.name());
            } else if (pair.code() == 42) {
                bulge = pair.number(entity.name());
            }
        }
        if (begun) {
            bulges.add(x, y, bulge);
        }
        return bulges;
    }

    private static Bulges vertices(List<DxfRecord> vertices) throws FileTrouble {
        Bulges bulges = new Bulges();
        for (DxfRecord vertex : vertices) {
            if ((vertex.whole(70, 0) & CONTROL) == 0) {
                bulges.add(vertex.needed(10), vertex.needed(20), vertex.number(42, 0));
            }
        }
        return bulges;
    }
}
