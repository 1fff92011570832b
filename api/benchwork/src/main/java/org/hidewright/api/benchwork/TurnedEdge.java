package org.hidewright.api.benchwork;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.geometry.Spot;

/**
 * An edge whose leather is skived, glued and turned over to the inside, all round an outline: the outline to cut, and where the
 * knife and the awl go.
 *
 * <p>At a sharp corner the turn is cut off square to the corner, a little outside of it, so that its two sides meet over the
 * corner and no raw edge shows. At a rounded corner there is too much leather; it is laid in pleats.
 */
public final class TurnedEdge {
    /** How far outside a sharp corner the turn is cut off, in thicknesses: common practice. */
    public static final double CUT_OFF_THICKNESSES = 1.5;

    /** What one pleat takes up, millimetres of the outer edge: from memory. */
    public static final double PLEAT_MM = 3;

    private final Curve outline;
    private final List<Curve> pleats;
    private final double turn;

    private TurnedEdge(Curve outline, List<Curve> pleats, double turn) {
        this.outline = outline;
        this.pleats = List.copyOf(pleats);
        this.turn = turn;
    }

    /**
     * The turn round a finished edge.
     *
     * @param finished counter-clockwise
     * @param turn width that is turned over, 8 to 12 mm in small goods (common practice)
     * @param skivedTo thickness of the turn where it bends
     * @throws NoRoom if the outline has no turn round it
     */
    public static TurnedEdge round(String part, Curve finished, double turn, double skivedTo) throws NoRoom {
        List<Region> grown = Region.of(finished).grown(turn, Corner.POINTED);
        for (Spot corner : finished.corners()) {
            double before = before(finished, corner);
            double bend = normal(corner.direction() - before);
            if (bend > 0 && !grown.isEmpty()) {
                grown = grown.get(0).minus(beyond(corner.point(), before + bend / 2 - Math.PI / 2, turn, skivedTo));
            }
        }
        if (grown.size() != 1) {
            throw new NoRoom(part, "turned-edge");
        }
        return new TurnedEdge(grown.get(0).outline(), pleats(finished, turn), turn);
    }

    private static double before(Curve finished, Spot corner) {
        double along = corner.along() - Flush.MM;
        return finished.at(along < 0 ? along + finished.length() : along).direction();
    }

    private static Region beyond(Point corner, double out, double turn, double skivedTo) {
        double far = 8 * turn;
        Point near = corner.towards(out, CUT_OFF_THICKNESSES * skivedTo);
        Point one = near.towards(out - Math.PI / 2, far);
        Point other = near.towards(out + Math.PI / 2, far);
        return Region.of(Outlines.polygon(one, one.towards(out, far), other.towards(out, far), other));
    }

    private static double normal(double angle) {
        return Math.atan2(Math.sin(angle), Math.cos(angle));
    }

    /** Short lines out from each rounded corner: where a pleat is pressed. */
    private static List<Curve> pleats(Curve finished, double turn) {
        List<Curve> pleats = new ArrayList<>();
        for (int i = 0; i < finished.segments().size(); i++) {
            if (finished.segments().get(i) instanceof Segment.Arc arc && arc.sweep() > 0) {
                double from = finished.startOf(i);
                double length = finished.startOf(i + 1) - from;
                int count = pleatsAt(arc.sweep(), turn);
                for (int nth = 0; nth < count; nth++) {
                    Spot at = finished.at(from + length * (nth + 0.5) / count);
                    Point start = at.beside(-turn / 3);
                    pleats.add(Curve.open(List.of(Segment.line(start, at.beside(-turn)))));
                }
            }
        }
        return pleats;
    }

    /**
     * How many pleats a rounded corner takes. Its outer edge is longer by twice the turn times the angle than the line it comes
     * to lie on; that much is taken up.
     */
    public static int pleatsAt(double angleRad, double turn) {
        return Math.max(3, (int) Math.ceil(2 * turn * angleRad / PLEAT_MM));
    }

    /** The outline to cut. */
    public Curve outline() {
        return outline;
    }

    /** Lines to mark, from the turn outwards. */
    public List<Curve> pleats() {
        return pleats;
    }

    /** What is turned over, in millimetres. */
    public double turn() {
        return turn;
    }
}
