package org.hidewright.straps.slices;

import java.util.ArrayList;
import java.util.List;

/**
 * Folds a flat strap at the bench, so to say: slice after slice of material is carried on by small rigid steps, and a
 * fitting's axis is laid through what has been folded. It knows nothing of how the bundle works places out.
 *
 * <p>The flat strap lies grain up and starts at s = 0. In a straight run each slice is shifted; in a bend each slice
 * turns about the centre by the angle its neutral line asks for. What is kept of a slice is its grain point and the
 * direction in which the strap runs on.
 */
public final class Folder {
    private static final double STEP_MM = 0.01;
    private static final double STEP_RAD = Math.toRadians(0.1);

    /** A slice of material: its place on the flat strap, and where folding has brought it. */
    private static final class Slice {
        final double s;
        final double x;
        final double y;
        final double heading;
        final double outside;

        Slice(double s, double x, double y, double heading, double outside) {
            this.s = s;
            this.x = x;
            this.y = y;
            this.heading = heading;
            this.outside = outside;
        }
    }

    private static final class Folded {
        final String id;
        final boolean straight;
        final List<Slice> slices = new ArrayList<>();
        double middle = -1;

        Folded(String id, boolean straight) {
            this.id = id;
            this.straight = straight;
        }

        double outside() {
            return slices.get(slices.size() - 1).outside;
        }
    }

    private final List<Folded> sections = new ArrayList<>();
    private double s;
    private double x;
    private double y;
    private double heading;
    private double outside;

    private Folded begin(String id, boolean straight) {
        outside = 0;
        Folded folded = new Folded(id, straight);
        sections.add(folded);
        keep(folded);
        return folded;
    }

    private void keep(Folded folded) {
        folded.slices.add(new Slice(s, x, y, heading, outside));
    }

    /** A straight run. */
    public Folder straight(String id, double length) {
        run(begin(id, true), length);
        return this;
    }

    private void run(Folded folded, double length) {
        int steps = (int) Math.max(1, Math.ceil(length / STEP_MM));
        for (int i = 0; i < steps; i++) {
            double step = length / steps;
            s += step;
            x += step * Math.cos(heading);
            y += step * Math.sin(heading);
            outside += step;
            keep(folded);
        }
    }

    /**
     * Carries the strap on sideways, towards its grain where positive, no material being used: what ramps do that lead
     * from legs to a thinner fold.
     */
    public Folder aside(double mm) {
        x -= mm * Math.sin(heading);
        y += mm * Math.cos(heading);
        return this;
    }

    /** A bend round one centre. */
    public Folder bend(String id, double turn, double insideRadius, double thickness, double k, boolean grainOutside) {
        turn(begin(id, false), turn, insideRadius, thickness, k, grainOutside);
        return this;
    }

    /** Corners of a quarter turn with straight sides between them. */
    public Folder corners(
            String id, double cornerRadius, double thickness, double k, boolean grainOutside, double... sidesBetween) {
        Folded folded = begin(id, false);
        turn(folded, Math.PI / 2, cornerRadius, thickness, k, grainOutside);
        for (double side : sidesBetween) {
            run(folded, side);
            turn(folded, Math.PI / 2, cornerRadius, thickness, k, grainOutside);
        }
        return this;
    }

    private void turn(
            Folded folded, double turn, double insideRadius, double thickness, double k, boolean grainOutside) {
        double grainRadius = grainOutside ? insideRadius + thickness : insideRadius;
        double sense = grainOutside ? -1 : 1; // to the flesh, on the right, or to the grain, on the left
        double centreX = x - sense * grainRadius * Math.sin(heading);
        double centreY = y + sense * grainRadius * Math.cos(heading);
        double neutral = insideRadius + k * thickness;
        double left = turn;
        while (left > 1e-13) {
            double step = Math.min(left, Math.min(STEP_RAD, STEP_MM / (insideRadius + thickness)));
            double cos = Math.cos(sense * step);
            double sin = Math.sin(sense * step);
            double beforeX = outsideX(thickness, grainOutside);
            double beforeY = outsideY(thickness, grainOutside);
            double dx = x - centreX;
            double dy = y - centreY;
            x = centreX + cos * dx - sin * dy;
            y = centreY + sin * dx + cos * dy;
            heading += sense * step;
            s += step * neutral;
            outside += Math.hypot(
                    outsideX(thickness, grainOutside) - beforeX, outsideY(thickness, grainOutside) - beforeY);
            left -= step;
            keep(folded);
        }
    }

    private double outsideX(double thickness, boolean grainOutside) {
        return grainOutside ? x : x + thickness * Math.sin(heading);
    }

    private double outsideY(double thickness, boolean grainOutside) {
        return grainOutside ? y : y - thickness * Math.cos(heading);
    }

    /**
     * A turn-back: straight to the bar, round it, straight back to where both legs lie on each other. How much flat
     * strap that takes is found by laying the neutral line of each leg from the contact against the bar.
     */
    public Folder turnBack(
            String id, double bar, double contact, double before, double after, double k, boolean grainOutside) {
        Folded folded = begin(id, false);
        leg(folded, bar / 2, contact, before, k, false);
        folded.middle = outside;
        leg(folded, bar / 2, contact, after, k, true);
        double across = grainOutside ? before + after : 0; // flesh faces meet, or grain faces do
        x += across * Math.sin(heading);
        y -= across * Math.cos(heading);
        heading += Math.PI;
        keep(folded);
        return this;
    }

    /** Lays half of a turn-back: a ray from (contact, half the thickness), lowered until it just touches the bar. */
    private void leg(Folded folded, double barRadius, double contact, double thickness, double k, boolean reversed) {
        double neutral = barRadius + k * thickness;
        double startX = contact;
        double startY = thickness / 2;
        double low = Math.atan2(-startY, -startX); // straight at the centre
        low = low < 0 ? low + 2 * Math.PI : low;
        double high = low - Math.PI / 2; // square away from it
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            double miss = Math.abs(startX * Math.sin(middle) - startY * Math.cos(middle));
            if (miss < neutral) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double direction = (low + high) / 2;
        double px = startX;
        double py = startY;
        double straight = 0;
        while (px * Math.cos(direction) + py * Math.sin(direction) < 0) { // still coming nearer to the centre
            double step = Math.min(STEP_MM, -(px * Math.cos(direction) + py * Math.sin(direction)));
            px += step * Math.cos(direction);
            py += step * Math.sin(direction);
            straight += step;
            if (step < 1e-9) {
                break;
            }
        }
        double wrap = 0;
        double angle = Math.atan2(py, px);
        while (angle + wrap < Math.PI - 1e-13) { // on to the far side of the bar
            wrap += Math.min(STEP_MM / (barRadius + thickness), Math.PI - angle - wrap);
        }
        if (reversed) {
            advance(folded, wrap * neutral, wrap * (barRadius + thickness));
            advance(folded, straight, straight);
        } else {
            advance(folded, straight, straight);
            advance(folded, wrap * neutral, wrap * (barRadius + thickness));
        }
    }

    private void advance(Folded folded, double flat, double onOutside) {
        s += flat;
        outside += onOutside;
        keep(folded);
    }

    /** Flat length that went into the fold. */
    public double flatLength() {
        return s;
    }

    /** Where a section starts and ends on the flat strap. */
    public double[] flatEnds(String section) {
        Folded folded = section(section);
        return new double[] {folded.slices.get(0).s, folded.slices.get(folded.slices.size() - 1).s};
    }

    private Folded section(String id) {
        return sections.stream()
                .filter(folded -> folded.id.equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Outside length of a section. */
    public double outsideLength(String section) {
        return section(section).outside();
    }

    /** Outside length from the start of a section to its middle. */
    public double middle(String section) {
        Folded folded = section(section);
        return folded.middle >= 0 ? folded.middle : folded.outside() / 2;
    }

    /** Place on the flat strap of the material that lies a distance along the outside face of a section. */
    public double material(String section, double outsideMm) {
        return at(section, outsideMm).s;
    }

    private Slice at(String section, double outsideMm) {
        List<Slice> slices = section(section).slices;
        for (int i = 1; i < slices.size(); i++) {
            if (slices.get(i).outside >= outsideMm - 1e-12) {
                Slice one = slices.get(i - 1);
                Slice next = slices.get(i);
                double share =
                        next.outside > one.outside ? (outsideMm - one.outside) / (next.outside - one.outside) : 0;
                return between(one, next, share);
            }
        }
        return slices.get(slices.size() - 1);
    }

    private static Slice between(Slice one, Slice next, double share) {
        return new Slice(
                one.s + share * (next.s - one.s),
                one.x + share * (next.x - one.x),
                one.y + share * (next.y - one.y),
                one.heading + share * (next.heading - one.heading),
                one.outside + share * (next.outside - one.outside));
    }

    /** How square a fitting's axis meets a straight section: 1 square, 0 along it. */
    public double squareness(String section, double outsideMm, String mate) {
        return Math.abs(
                Math.cos(at(section, outsideMm).heading - section(mate).slices.get(0).heading));
    }

    /** Whether the axis of a fitting, square to a section, goes through a straight section. */
    public boolean meets(String section, double outsideMm, String mate) {
        Slice fitting = at(section, outsideMm);
        List<Slice> slices = section(mate).slices;
        return along(fitting, slices.get(0)) * along(fitting, slices.get(slices.size() - 1)) < 0;
    }

    /**
     * How far the hole punched at a flat place of a straight section is from the axis of a fitting that stands square
     * on a section, once folded.
     */
    public double missMm(String section, double outsideMm, String mate, double flatPlace) {
        List<Slice> slices = section(mate).slices;
        Slice hole = slices.get(0);
        double off = flatPlace - hole.s;
        for (int i = 1; i < slices.size(); i++) {
            if (slices.get(i).s >= flatPlace || i == slices.size() - 1) {
                Slice one = slices.get(i - 1);
                hole = between(one, slices.get(i), (flatPlace - one.s) / (slices.get(i).s - one.s));
                off = flatPlace - hole.s;
                break;
            }
        }
        return Math.abs(along(at(section, outsideMm), hole)) + Math.abs(off);
    }

    private static double along(Slice fitting, Slice other) {
        return (other.x - fitting.x) * Math.cos(fitting.heading) + (other.y - fitting.y) * Math.sin(fitting.heading);
    }

    /** Whether a section is straight. */
    public boolean isStraight(String section) {
        return section(section).straight;
    }
}
