package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Fault;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.geometry.Spot;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Length;

/** What is wrong with one part. Distances count from the finished edge; their least are habits of the trade. */
final class PartChecks {
    /** Centre of a hole to the edge, in diameters (common practice: two to three). */
    private static final double EDGE_DIAMETERS = 2;
    /** Centre to centre, in diameters (the least in metal: US Navy 14018, FAA AC 43.13-1B). */
    private static final double PITCH_DIAMETERS = 3;
    /** Stitch holes to the edge (common practice: 2.5 to 3 mm). */
    private static final double STITCH_EDGE_MM = 2.5;
    /** Holes of two lines of stitches from each other (from memory). */
    private static final double STITCHES_MM = 1.5;
    /** A line of stitches beside the rim of a fitting’s hole, for its head and the needle (from memory). */
    private static final double FITTING_MM = 1.5;
    /** Leather between two windows, or between one and the edge (from memory). */
    private static final double LEFT_MM = 3;
    /** A hole that nothing is known to go through, and yet something may. */
    private static final double LARGEST_FREE_MM = 8;
    /** With the grain outside firm leather cracks below this share of its thickness (common practice). */
    private static final double FOLD_SHARE = 0.25;
    /** A strap is at least so many times as long as wide. */
    private static final double STRAP_FORMAT = 4;

    private static final int ROW = 3;
    private static final double STEP_MM = 0.5;

    private final Part part;
    private final List<String> held;
    private final Curve outline;
    private final List<Curve> cutOuts;
    private final Region leather;
    private final List<ItemCheck> checks = new ArrayList<>();

    private PartChecks(Part part, List<String> held) {
        this.part = part;
        this.held = held;
        this.outline = Curve.of(part.outline());
        this.cutOuts = part.cutOuts().stream().map(Curve::of).toList();
        this.leather = Region.of(outline, cutOuts);
    }

    /** @param held ids of the holes that a fitting goes through */
    static List<ItemCheck> of(Part part, List<String> held) {
        PartChecks checks = new PartChecks(part, held);
        checks.faults();
        if (checks.checks.isEmpty()) { // distances mean nothing on a part that comes apart
            checks.holes();
            checks.cutOuts();
            checks.folds();
            checks.stitches();
            checks.end();
        }
        return checks.checks;
    }

    private void faults() {
        for (Fault fault : Faults.of(leather)) {
            checks.add(
                    switch (fault.kind()) {
                        case HOLE_OUTSIDE, HOLE_CROSSES_EDGE ->
                            ItemCheck.of(ItemNotices.ITEM_HOLE_OUTSIDE, part, fault.place());
                        case HOLES_CROSS -> ItemCheck.of(ItemNotices.ITEM_HOLES_MEET, part, fault.place());
                        default -> ItemCheck.of(ItemNotices.ITEM_CROSSES, part, fault.place());
                    });
        }
    }

    private void holes() {
        List<Hole> holes = part.holes();
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            double edge = leather.edgeDistance(hole.centre());
            double least = isWindow(hole) ? hole.diameter() / 2 + LEFT_MM : EDGE_DIAMETERS * hole.diameter();
            if (!leather.contains(hole.centre())) {
                checks.add(ItemCheck.of(ItemNotices.ITEM_HOLE_OUTSIDE, part, hole.centre()));
            } else if (edge < least) {
                checks.add(ItemCheck.of(
                        ItemNotices.ITEM_HOLE_NEAR_EDGE,
                        part,
                        hole.centre(),
                        ItemCheck.on(hole.id()),
                        Length.ofMm(edge),
                        Length.ofMm(least)));
            }
            for (Hole other : holes.subList(i + 1, holes.size())) {
                between(hole, other);
            }
            part.folds().forEach(fold -> beside(hole, fold));
        }
    }

    /** Nothing holds in a large hole, so that it only must leave leather round it. */
    private boolean isWindow(Hole hole) {
        return hole.diameter() > LARGEST_FREE_MM && !held.contains(hole.id());
    }

    private void between(Hole hole, Hole other) {
        double apart = hole.centre().distanceTo(other.centre());
        double least = isWindow(hole) || isWindow(other)
                ? (hole.diameter() + other.diameter()) / 2 + LEFT_MM
                : PITCH_DIAMETERS * Math.max(hole.diameter(), other.diameter());
        if (apart < least) {
            checks.add(ItemCheck.of(
                    ItemNotices.ITEM_HOLES_NEAR,
                    part,
                    hole.centre(),
                    ItemCheck.on(hole.id()),
                    ItemCheck.on(other.id()),
                    Length.ofMm(apart),
                    Length.ofMm(least)));
        }
    }

    /** The bend is a quarter turn round the neutral line on either side of the fold; one thickness stays clear of it. */
    private void beside(Hole hole, Fold fold) {
        double thickness = part.thickness().orElse(0);
        double least = Math.PI / 4 * (fold.insideRadius() + thickness / 2) + thickness + hole.diameter() / 2;
        double apart = Curve.of(fold.line()).distanceTo(hole.centre());
        if (apart < least) {
            checks.add(ItemCheck.of(
                    ItemNotices.ITEM_HOLE_NEAR_FOLD,
                    part,
                    hole.centre(),
                    ItemCheck.on(hole.id()),
                    ItemCheck.on(fold.id()),
                    Length.ofMm(apart),
                    Length.ofMm(least)));
        }
    }

    private void cutOuts() {
        for (int i = 0; i < cutOuts.size(); i++) {
            left(cutOuts.get(i), outline);
            for (Curve other : cutOuts.subList(i + 1, cutOuts.size())) {
                left(cutOuts.get(i), other);
            }
        }
    }

    private void left(Curve one, Curve other) {
        Box box = one.bounds();
        Point middle = Point.of((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        double reach = Math.hypot(box.width(), box.height()) / 2;
        if (apart(box, other.bounds()) >= LEFT_MM || other.distanceTo(middle) - reach >= LEFT_MM) {
            return;
        }
        Spot nearest = spots(one).stream()
                .min(Comparator.comparingDouble(spot -> other.distanceTo(spot.point())))
                .orElseThrow();
        double left = other.distanceTo(nearest.point());
        if (left < LEFT_MM) {
            checks.add(ItemCheck.of(
                    ItemNotices.ITEM_LITTLE_LEFT, part, nearest.point(), Length.ofMm(left), Length.ofMm(LEFT_MM)));
        }
    }

    /** No two places of the boxes are nearer; an outline’s box holds those of its windows. */
    private static double apart(Box one, Box other) {
        double dx = Math.max(one.minX() - other.maxX(), other.minX() - one.maxX());
        double dy = Math.max(one.minY() - other.maxY(), other.minY() - one.maxY());
        return Math.max(dx, dy);
    }

    /** Its corners and what lies between them. */
    private static List<Spot> spots(Curve curve) {
        List<Spot> spots = new ArrayList<>();
        for (int segment = 0; segment < curve.segments().size(); segment++) {
            double from = curve.startOf(segment);
            double length = curve.startOf(segment + 1) - from;
            int steps = (int) Math.ceil(length / STEP_MM);
            for (int i = 0; i < steps; i++) {
                spots.add(curve.at(from + length * i / steps));
            }
        }
        return spots;
    }

    private void folds() {
        double thickness = part.thickness().orElse(0);
        for (Fold fold : part.folds()) {
            if (fold.outside() == Face.GRAIN && fold.insideRadius() < FOLD_SHARE * thickness) {
                checks.add(ItemCheck.of(
                        ItemNotices.ITEM_FOLD_TIGHT,
                        part,
                        Curve.of(fold.line()).at(0).point(),
                        ItemCheck.on(fold.id()),
                        Length.ofMm(fold.insideRadius()),
                        Length.ofMm(thickness)));
            }
        }
    }

    private void stitches() {
        List<StitchLine> lines = part.stitchLines();
        for (int i = 0; i < lines.size(); i++) {
            StitchLine line = lines.get(i);
            edge(line);
            List<Hole> holding = part.holes().stream()
                    .filter(hole -> held.contains(hole.id()))
                    .toList();
            if (!holding.isEmpty()) {
                Curve curve = Curve.of(line.line());
                holding.forEach(hole -> through(line, curve, hole));
            }
            for (StitchLine other : lines.subList(i + 1, lines.size())) {
                near(line, other);
            }
        }
    }

    /** The hole of a line that is nearest to the edge, or the first one off the part. */
    private void edge(StitchLine line) {
        Point nearest = null;
        double least = STITCH_EDGE_MM - 1e-6;
        Point before = null;
        double clear = 0;
        for (Point hole : line.holes()) {
            double edge = leather.edgeDistance(hole);
            // no edge runs between it and the hole before if it is nearer to that one than any edge
            boolean besideLast = before != null && before.distanceTo(hole) < clear;
            before = hole;
            clear = edge;
            if (!besideLast && !leather.contains(hole)) {
                checks.add(ItemCheck.of(ItemNotices.ITEM_STITCH_OFF_PART, part, hole, ItemCheck.on(line.id())));
                return;
            }
            if (edge < least && !isEnd(line, hole)) {
                least = edge;
                nearest = hole;
            }
        }
        if (nearest != null) {
            checks.add(ItemCheck.of(
                    ItemNotices.ITEM_STITCH_NEAR_EDGE,
                    part,
                    nearest,
                    ItemCheck.on(line.id()),
                    Length.ofMm(least),
                    Length.ofMm(STITCH_EDGE_MM)));
        }
    }

    /** A line that runs out to an edge, as across the mouth of a pocket, ends near it on purpose. */
    private static boolean isEnd(StitchLine line, Point hole) {
        List<Point> holes = line.holes();
        return !line.line().isClosed() && (hole.equals(holes.get(0)) || hole.equals(holes.get(holes.size() - 1)));
    }

    private void through(StitchLine line, Curve curve, Hole hole) {
        double clear = curve.distanceTo(hole.centre()) - hole.diameter() / 2;
        if (clear < FITTING_MM) {
            checks.add(ItemCheck.of(
                    ItemNotices.ITEM_STITCH_THROUGH_FITTING,
                    part,
                    hole.centre(),
                    ItemCheck.on(line.id()),
                    ItemCheck.on(hole.id()),
                    Length.ofMm(Math.max(0, clear)),
                    Length.ofMm(FITTING_MM)));
        }
    }

    private void near(StitchLine line, StitchLine other) {
        for (Point hole : line.holes()) {
            for (Point beside : other.holes()) {
                double apart = hole.distanceTo(beside);
                if (apart < STITCHES_MM && apart > 1e-6) { // lines may share a hole where they meet
                    checks.add(ItemCheck.of(
                            ItemNotices.ITEM_STITCHES_NEAR,
                            part,
                            hole,
                            ItemCheck.on(line.id()),
                            ItemCheck.on(other.id()),
                            Length.ofMm(apart),
                            Length.ofMm(STITCHES_MM)));
                    return;
                }
            }
        }
    }

    /** A strap with a row of holes: beyond the last one there is at least its width to go on through a keeper. */
    private void end() {
        Box box = outline.bounds();
        boolean upright = box.height() > box.width();
        double width = Math.min(box.width(), box.height());
        double length = Math.max(box.width(), box.height());
        if (length < STRAP_FORMAT * width || part.holes().size() < ROW) {
            return;
        }
        List<Hole> along = new ArrayList<>(part.holes());
        along.sort(Comparator.comparingDouble(hole -> along(hole, box, upright)));
        List<Hole> back = new ArrayList<>(along);
        Collections.reverse(back);
        row(along, width, hole -> along(hole, box, upright));
        row(back, width, hole -> length - along(hole, box, upright));
    }

    private static double along(Hole hole, Box box, boolean upright) {
        return upright ? hole.centre().y() - box.minY() : hole.centre().x() - box.minX();
    }

    /** Tells if the holes from this end begin with a row of equal gaps, and the row begins too soon. */
    private void row(List<Hole> holes, double width, ToDoubleFunction<Hole> fromEnd) {
        double gap = holes.get(0).centre().distanceTo(holes.get(1).centre());
        double next = holes.get(1).centre().distanceTo(holes.get(2).centre());
        boolean row = Math.abs(gap - next) < 0.1
                && holes.get(0).diameter() == holes.get(1).diameter();
        double left = fromEnd.applyAsDouble(holes.get(0));
        if (row && left < width) {
            checks.add(ItemCheck.of(
                    ItemNotices.ITEM_ENDS_SOON,
                    part,
                    holes.get(0).centre(),
                    ItemCheck.on(holes.get(0).id()),
                    Length.ofMm(left),
                    Length.ofMm(width)));
        }
    }
}
