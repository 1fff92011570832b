package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;

/**
 * A flat piece: what is inside an outline and outside its holes.
 *
 * <p>The outline runs counter-clockwise, the holes clockwise, so that the leather is to the left of every line.
 */
public final class Region {
    private final Curve outline;
    private final List<Curve> holes;
    private final List<Curve> edges;

    private Region(Curve outline, List<Curve> holes) {
        this.outline = outline.area() > 0 ? outline : outline.reversed();
        this.holes = holes.stream()
                .map(hole -> hole.area() < 0 ? hole : hole.reversed())
                .toList();
        List<Curve> all = new ArrayList<>(List.of(this.outline));
        all.addAll(this.holes);
        this.edges = List.copyOf(all);
    }

    /**
     * A piece without holes.
     *
     * @throws IllegalStateException if the curve is open
     */
    public static Region of(Curve outline) {
        return new Region(outline, List.of());
    }

    /**
     * A piece with holes, which must be inside and apart from each other; {@link Faults} tells where they are not.
     *
     * @throws IllegalStateException if a curve is open
     */
    public static Region of(Curve outline, List<Curve> holes) {
        return new Region(outline, holes);
    }

    /** Its outer edge. */
    public Curve outline() {
        return outline;
    }

    /** What is cut out of it. */
    public List<Curve> holes() {
        return holes;
    }

    /** The outline and the holes. */
    public List<Curve> edges() {
        return edges;
    }

    /** Square millimetres of leather. */
    public double area() {
        return edges().stream().mapToDouble(Curve::area).sum();
    }

    /** Millimetres of all edges, holes included. */
    public double edgeLength() {
        return edges().stream().mapToDouble(Curve::length).sum();
    }

    /** The box around its outline. */
    public Box bounds() {
        return outline.bounds();
    }

    /** Whether a place is in the leather; one on an edge is not. */
    public boolean contains(Point place) {
        return edgeDistance(place) > Stretch.NOTHING_MM && Sides.isLeftOf(edges(), place);
    }

    /** Millimetres from a place, inside or outside, to the nearest edge. */
    public double edgeDistance(Point place) {
        double least = Double.POSITIVE_INFINITY;
        for (Curve edge : edges) {
            if (Curve.boxDistance(edge.bounds(), place) < least) {
                least = Math.min(least, edge.distanceTo(place));
            }
        }
        return least;
    }

    /**
     * The place in the leather that is farthest from all edges, as near as a thousandth of the piece’s size: where there is
     * most room for a name.
     *
     * <p>Squares are halved where they may still hold a better place than the best one found; none can be better than its
     * middle by more than half its diagonal.
     */
    public Point roomiest() {
        Box box = bounds();
        double size = Math.max(box.width(), box.height());
        PriorityQueue<Square> open = new PriorityQueue<>(Comparator.comparingDouble(square -> -square.most()));
        Square best = square(Point.of((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2), size / 2);
        open.add(best);
        while (!open.isEmpty() && open.peek().most() > best.room() + size / 1000) {
            Square square = open.remove();
            double half = square.half() / 2;
            for (double dx : new double[] {-half, half}) {
                for (double dy : new double[] {-half, half}) {
                    Square part = square(square.middle().plus(dx, dy), half);
                    open.add(part);
                    best = part.room() > best.room() ? part : best;
                }
            }
        }
        return best.middle();
    }

    /** Room is the distance of the middle to the nearest edge, negative outside the leather. */
    private record Square(Point middle, double half, double room) {
        double most() {
            return room + half * Math.sqrt(2);
        }
    }

    private Square square(Point middle, double half) {
        return new Square(middle, half, contains(middle) ? edgeDistance(middle) : -edgeDistance(middle));
    }

    /** What is left when the other piece is cut away. */
    public List<Region> minus(Region other) {
        return Overlay.minus(this, other);
    }

    /** Both pieces together: one, or two that do not touch. */
    public List<Region> plus(Region other) {
        return Overlay.plus(this, other);
    }

    /** What is in both pieces. */
    public List<Region> common(Region other) {
        return Overlay.common(this, other);
    }

    /**
     * The piece with a margin taken off all its edges, those of holes too.
     *
     * @param marginMm 0 or more
     * @return none if nothing is left, several where a narrow place parts them
     */
    public List<Region> shrunk(double marginMm, Corner corner) {
        return sorted(Parallel.of(edges(), marginMm, corner));
    }

    /** The piece with a margin added along all its edges; holes become smaller. */
    public List<Region> grown(double marginMm, Corner corner) {
        return sorted(Parallel.of(edges(), -marginMm, corner));
    }

    /** The same at another place. */
    public Region moved(Motion motion) {
        return new Region(
                outline.moved(motion),
                holes.stream().map(hole -> hole.moved(motion)).toList());
    }

    /** Regions from edges that have their leather to the left. */
    static List<Region> sorted(List<Curve> edges) {
        List<Curve> outlines = edges.stream().filter(edge -> edge.area() > 0).toList();
        List<Region> regions = new ArrayList<>();
        for (Curve outline : outlines) {
            List<Curve> holes = edges.stream()
                    .filter(edge -> !outlines.contains(edge) && smallestRound(edge, outlines) == outline)
                    .toList();
            regions.add(new Region(outline, holes));
        }
        return List.copyOf(regions);
    }

    private static Curve smallestRound(Curve hole, List<Curve> outlines) {
        return outlines.stream()
                .filter(outline -> isRound(outline, hole))
                .min(Comparator.comparingDouble(Curve::area))
                .orElse(null);
    }

    /** Judged at the place of the hole that is farthest from the outline, of some: it may touch it. */
    private static boolean isRound(Curve outline, Curve hole) {
        return IntStream.range(0, 8)
                .mapToObj(i -> hole.at(hole.length() * i / 8).point())
                .max(Comparator.comparingDouble(outline::distanceTo))
                .filter(outline::surrounds)
                .isPresent();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Region region && outline.equals(region.outline) && holes.equals(region.holes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(outline, holes);
    }

    @Override
    public String toString() {
        return "Region[" + outline + ", " + holes.size() + " holes]";
    }
}
