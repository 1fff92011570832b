package org.hidewright.straps.folding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Folds a strip of leather in small rigid steps, point by point, and looks up in the folded strip where a fitting meets
 * it. It knows nothing of the bundle it checks: no formula for the length of a bend or for the mate of a hole stands here,
 * only how a strip moves when it is bent a little.
 *
 * <p>The strip lies grain up and runs to the right; its flesh is to the right of its heading. In a bend the points at the
 * depth of the neutral line keep their distance, whatever the other points do.
 */
public final class StripFolder {
    private static final double TURN_STEP_RAD = Math.toRadians(0.1);
    private static final double STRAIGHT_STEP_MM = 0.5;

    private final Map<String, List<MaterialPoint>> sections = new LinkedHashMap<>();
    private double flat;
    private double x;
    private double y;
    private double heading;
    private double outside;
    private List<MaterialPoint> open;

    /** A straight run: every depth keeps its length. */
    public void straight(String id, double lengthMm) {
        begin(id);
        go(lengthMm);
    }

    /**
     * A bend.
     *
     * @param insideRadiusMm of the face inside
     * @param turnRad how far the strap turns
     * @param grainOutside whether the grain is the face outside; then the strap turns towards its flesh
     * @param neutral place of the neutral line, from the inside face as a share of the thickness
     * @param thicknessMm of the leather that bends
     */
    public void bend(
            String id,
            double insideRadiusMm,
            double turnRad,
            boolean grainOutside,
            double neutral,
            double thicknessMm) {
        begin(id);
        turn(insideRadiusMm, turnRad, grainOutside, neutral, thicknessMm);
    }

    /** Half a turn round a rectangular bar: a quarter turn at each corner, and the bar's thickness between them. */
    public void flatBar(
            String id,
            double barThicknessMm,
            double cornerRadiusMm,
            boolean grainOutside,
            double neutral,
            double thicknessMm) {
        begin(id);
        turn(cornerRadiusMm, Math.PI / 2, grainOutside, neutral, thicknessMm);
        go(barThicknessMm - 2 * cornerRadiusMm);
        turn(cornerRadiusMm, Math.PI / 2, grainOutside, neutral, thicknessMm);
    }

    /**
     * A turn-back: the legs touch at a distance behind the bar and leave the touch in straight lines that just clear the
     * bar. The angle at which a leg leaves is found by trying, not by a formula.
     *
     * @param contactMm from the bar's centre to where the legs touch
     */
    public void turnBack(
            String id,
            double barDiameterMm,
            double contactMm,
            boolean grainOutside,
            double neutral,
            double thicknessMm) {
        begin(id);
        double axisX = x + (grainOutside ? 1 : 0) * thicknessMm * Math.cos(heading - Math.PI / 2);
        double axisY = y + (grainOutside ? 1 : 0) * thicknessMm * Math.sin(heading - Math.PI / 2);
        double arrival = heading;
        double radius = barDiameterMm / 2 + neutral * thicknessMm;
        double away = thicknessMm / 2;
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            // distance from the bar's centre to a line from the touch that opens by this angle
            double passes = contactMm * Math.sin(middle) + away * Math.cos(middle);
            if (passes < radius) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double opening = (low + high) / 2;
        double leg = contactMm * Math.cos(opening) - away * Math.sin(opening);
        double arc = Math.PI + 2 * opening;
        walk(leg);
        int steps = (int) Math.ceil(arc / TURN_STEP_RAD);
        for (int i = 0; i < steps; i++) {
            walk(2 * radius * Math.sin(arc / steps / 2));
        }
        walk(leg);
        heading = arrival + (grainOutside ? -Math.PI : Math.PI);
        x = axisX - (grainOutside ? 1 : 0) * thicknessMm * Math.cos(heading - Math.PI / 2);
        y = axisY - (grainOutside ? 1 : 0) * thicknessMm * Math.sin(heading - Math.PI / 2);
        mark();
    }

    /** The whole strap laid flat, millimetres. */
    public double flatLength() {
        return flat;
    }

    /** Place on the flat strap of a point that lies a distance from the start of a section, along its outside face. */
    public double fromStart(String id, double distanceMm) {
        List<MaterialPoint> points = sections.get(id);
        for (int i = 1; i < points.size(); i++) {
            MaterialPoint before = points.get(i - 1);
            MaterialPoint after = points.get(i);
            if (after.outside() >= distanceMm - 1e-12) {
                double share = (distanceMm - before.outside()) / (after.outside() - before.outside());
                return before.flat() + share * (after.flat() - before.flat());
            }
        }
        throw new IllegalArgumentException(distanceMm + " mm is past the end of " + id);
    }

    /** The length of a section's outside face in the folded strap. */
    public double outsideLength(String id) {
        List<MaterialPoint> points = sections.get(id);
        return points.get(points.size() - 1).outside();
    }

    public double flatStart(String id) {
        return sections.get(id).get(0).flat();
    }

    public double flatEnd(String id) {
        List<MaterialPoint> points = sections.get(id);
        return points.get(points.size() - 1).flat();
    }

    /**
     * Where a fitting that stands square on one section goes through another, as a place on the flat strap; empty where
     * it misses it.
     */
    public OptionalDouble mate(String id, double flatPlace, String other) {
        MaterialPoint foot = at(id, flatPlace);
        double alongX = Math.cos(foot.heading());
        double alongY = Math.sin(foot.heading());
        List<MaterialPoint> points = sections.get(other);
        for (int i = 1; i < points.size(); i++) {
            MaterialPoint a = points.get(i - 1);
            MaterialPoint b = points.get(i);
            double before = (a.x() - foot.x()) * alongX + (a.y() - foot.y()) * alongY;
            double after = (b.x() - foot.x()) * alongX + (b.y() - foot.y()) * alongY;
            if (before == 0) {
                return OptionalDouble.of(a.flat());
            }
            if (before * after <= 0) {
                return OptionalDouble.of(a.flat() + before / (before - after) * (b.flat() - a.flat()));
            }
        }
        return OptionalDouble.empty();
    }

    private MaterialPoint at(String id, double flatPlace) {
        List<MaterialPoint> points = sections.get(id);
        for (int i = 1; i < points.size(); i++) {
            MaterialPoint a = points.get(i - 1);
            MaterialPoint b = points.get(i);
            if (flatPlace <= b.flat() + 1e-9) {
                double share = (flatPlace - a.flat()) / (b.flat() - a.flat());
                return new MaterialPoint(
                        flatPlace, a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()), b.heading(), 0);
            }
        }
        throw new IllegalArgumentException(flatPlace + " mm is not on " + id);
    }

    private void begin(String id) {
        open = new ArrayList<>();
        outside = 0;
        if (sections.put(id, open) != null) {
            throw new IllegalArgumentException(id + " is there already");
        }
        mark();
    }

    private void mark() {
        open.add(new MaterialPoint(flat, x, y, heading, outside));
    }

    private void go(double lengthMm) {
        int steps = Math.max(1, (int) Math.ceil(lengthMm / STRAIGHT_STEP_MM));
        double step = lengthMm / steps;
        for (int i = 0; i < steps; i++) {
            x += step * Math.cos(heading);
            y += step * Math.sin(heading);
            walk(step);
        }
    }

    /** Goes on along leather that is not looked up in the picture afterwards. */
    private void walk(double step) {
        flat += step;
        outside += step;
        mark();
    }

    private void turn(double insideRadiusMm, double turnRad, boolean grainOutside, double neutral, double thicknessMm) {
        double side = grainOutside ? -1 : 1;
        double depth = grainOutside ? thicknessMm * (1 - neutral) : thicknessMm * neutral;
        double outsideDepth = grainOutside ? 0 : thicknessMm;
        double radius = insideRadiusMm + neutral * thicknessMm;
        int steps = (int) Math.ceil(turnRad / TURN_STEP_RAD);
        double step = turnRad / steps;
        // the rigid step between two points of the neutral line that turns by one step about the bar
        double chord = 2 * radius * Math.sin(step / 2);
        for (int i = 0; i < steps; i++) {
            double neutralX = x + depth * Math.cos(heading - Math.PI / 2);
            double neutralY = y + depth * Math.sin(heading - Math.PI / 2);
            double outX = x + outsideDepth * Math.cos(heading - Math.PI / 2);
            double outY = y + outsideDepth * Math.sin(heading - Math.PI / 2);
            double middle = heading + side * step / 2;
            neutralX += chord * Math.cos(middle);
            neutralY += chord * Math.sin(middle);
            heading += side * step;
            x = neutralX - depth * Math.cos(heading - Math.PI / 2);
            y = neutralY - depth * Math.sin(heading - Math.PI / 2);
            flat += chord;
            outside += Math.hypot(
                    x + outsideDepth * Math.cos(heading - Math.PI / 2) - outX,
                    y + outsideDepth * Math.sin(heading - Math.PI / 2) - outY);
            mark();
        }
    }
}
