package org.hidewright.api.benchwork;

import java.util.List;
import java.util.Objects;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Parallel;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.geometry.Spacing;
import org.hidewright.api.geometry.Spot;
import org.hidewright.api.item.Edge;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.StitchLine;

/** A part while it is drawn: its finished outline, and what goes on it. Not for use by several threads. */
public final class Piece {
    private final String id;
    private final Curve outline;
    private final double thickness;
    private final Part.Builder builder;

    private Piece(String id, String name, Curve outline, double thickness) {
        this.id = id;
        this.outline = outline.area() > 0 ? outline : outline.reversed();
        this.thickness = thickness;
        this.builder = Part.of(id, name, this.outline.path(Role.CUT));
        if (thickness > 0) {
            builder.thickness(thickness);
        }
    }

    /**
     * A piece by its finished outline.
     *
     * @param outline closed; it is turned counter-clockwise, so that the leather is to its left
     * @param thickness of its leather; 0 where nothing is said
     * @throws NoRoom if the outline crosses itself or has no inside
     */
    public static Piece of(String id, String name, Curve outline, double thickness) throws NoRoom {
        if (!outline.isClosed() || !Faults.of(outline).isEmpty()) {
            throw new NoRoom(id, id);
        }
        return new Piece(id, name, outline, thickness);
    }

    /** Its name among the parts. */
    public String id() {
        return id;
    }

    /** Counter-clockwise. */
    public Curve outline() {
        return outline;
    }

    /** Of its leather, in millimetres. */
    public double thickness() {
        return thickness;
    }

    /** The middle of the smallest upright box round it. */
    public Point middle() {
        Box box = outline.bounds();
        return Point.of((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    }

    /** Which leather it is cut from, as the maker calls it. */
    public Piece leather(String called) {
        builder.leather(called);
        return this;
    }

    /** Leather left standing outside the outline, trimmed after gluing. */
    public Piece oversize(double mm) {
        builder.oversize(mm);
        return this;
    }

    /** How many are cut as drawn, and how many turned over. */
    public Piece pieces(int asDrawn, int turnedOver) {
        builder.pieces(asDrawn, turnedOver);
        return this;
    }

    /** Direction of the backbone from the x axis: least stretch along it. */
    public Piece backbone(double angleRad) {
        builder.direction(angleRad);
        return this;
    }

    /** Faces that are seen on the finished item. */
    public Piece shows(Face... faces) {
        List.of(faces).forEach(builder::shows);
        return this;
    }

    /** The one line at a margin inside the whole outline. */
    public Curve inside(double margin) throws NoRoom {
        return one(Parallel.of(outline, margin, Corner.ROUND), "margin");
    }

    /** The one line at a margin inside a stretch of the outline, from one length along it to another. */
    public Curve inside(double from, double to, double margin) throws NoRoom {
        return one(Parallel.of(outline.between(from, to), margin, Corner.ROUND), "margin");
    }

    private Curve one(List<Curve> found, String what) throws NoRoom {
        if (found.size() != 1) {
            throw new NoRoom(id, what);
        }
        return found.get(0);
    }

    /** A row along a line, spaced evenly to a pitch with a hole on each corner. */
    public StitchRow stitches(String row, Curve line, double pitch) throws NoRoom {
        return row(row, line, points(Spacing.of(line, pitch, AtCorners.MARK)));
    }

    /**
     * A row with as many holes, run by run, as another has.
     *
     * @throws NoRoom if both lines do not have as many runs
     */
    public StitchRow stitchesLike(String row, Curve line, StitchRow mate, double pitch) throws NoRoom {
        try {
            return row(
                    row,
                    line,
                    points(Spacing.of(mate.line(), pitch, AtCorners.MARK).on(line, AtCorners.MARK)));
        } catch (IllegalArgumentException e) {
            throw new NoRoom(id, row);
        }
    }

    /** The row of another piece that lies on this one, pierced through: the same holes, moved as that piece is laid. */
    public StitchRow stitchedThrough(String row, StitchRow other, Motion laid) throws NoRoom {
        return row(
                row,
                other.line().moved(laid),
                other.holes().stream().map(laid::apply).toList());
    }

    private StitchRow row(String row, Curve line, List<Point> holes) throws NoRoom {
        if (holes.stream().anyMatch(hole -> !outline.surrounds(hole))) {
            throw new NoRoom(id, row);
        }
        builder.stitchLine(StitchLine.of(row, line.path(Role.STITCH), holes));
        return new StitchRow(new OnPart(id, row), line, holes);
    }

    private static List<Point> points(Spacing spacing) {
        return spacing.marks().stream().map(Spot::point).toList();
    }

    /** A round hole, wholly on the piece. */
    public OnPart hole(String hole, Point centre, double diameter) throws NoRoom {
        if (!outline.surrounds(centre) || outline.distanceTo(centre) < diameter / 2) {
            throw new NoRoom(id, hole);
        }
        builder.hole(Hole.of(hole, centre, diameter));
        return new OnPart(id, hole);
    }

    /** A window or slot, wholly on the piece. */
    public Piece window(String window, Curve cut) throws NoRoom {
        if (!Faults.of(Region.of(outline, List.of(cut))).isEmpty()) {
            throw new NoRoom(id, window);
        }
        builder.cutOut(cut.path(Role.INNER_CUT));
        return this;
    }

    /**
     * A straight fold.
     *
     * @param insideRadius radius of what it is folded round, 0 for flat on itself
     * @param outside the face that is seen
     */
    public Piece fold(String fold, Point from, Point to, double insideRadius, Face outside) {
        builder.fold(Fold.of(fold, Path.line(Role.FOLD, from, to), insideRadius, outside));
        return this;
    }

    /** A stretch of the outline that is finished in one way. */
    public Piece edge(String edge, String kind, double from, double to) {
        builder.edge(Edge.of(edge, kind, from, Math.min(to, outline.length())));
        return this;
    }

    /** A line to scratch or prick: where another piece is laid, where to aim at. */
    public Piece mark(Curve line) {
        builder.mark(line.path(Role.MARK));
        return this;
    }

    /** What is on it so far, for what has no method here. */
    public Part.Builder builder() {
        return builder;
    }

    /** The part as it is drawn so far. */
    public Part part() {
        return builder.build();
    }

    /**
     * Sees that what is cut into it so far stays above a height, such as that of the seam along its bottom.
     *
     * @param what is cut into it, as it is told
     * @throws NoRoom if a hole or window does not
     */
    public void cutAbove(double height, String what) throws NoRoom {
        Part part = part();
        if (part.cutOuts().stream().anyMatch(window -> window.bounds().minY() < height)
                || part.holes().stream().anyMatch(hole -> hole.centre().y() - hole.diameter() / 2 < height)) {
            throw new NoRoom(id, what);
        }
    }

    /**
     * The part as it is drawn so far, of which no stitch is cut away.
     *
     * @throws NoRoom naming a line of stitches that a window or a hole is cut into
     */
    public Part wholePart() throws NoRoom {
        Part part = part();
        Region leather =
                Region.of(outline, part.cutOuts().stream().map(Curve::of).toList());
        for (StitchLine line : part.stitchLines()) {
            boolean cut = line.holes().stream()
                    .anyMatch(stitch -> !leather.contains(stitch)
                            || part.holes().stream()
                                    .anyMatch(hole -> hole.centre().distanceTo(stitch) < hole.diameter() / 2));
            if (cut) {
                throw new NoRoom(id, line.id());
            }
        }
        return part;
    }

    @Override
    public String toString() {
        return Objects.toString(id);
    }
}
