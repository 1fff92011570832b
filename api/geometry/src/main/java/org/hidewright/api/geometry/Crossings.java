package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;

/**
 * The places where two stretches meet. Lines and arcs are met in closed form; where they lie on each other, the ends of
 * what they share are given. With a cubic, both are halved until they are nearly straight, and Newton's method finishes.
 */
final class Crossings {
    /** Two places nearer than this are one. */
    static final double SAME_MM = 1e-8;

    private static final int MOST_LOOKS = 4000;
    private static final double TINY_MM = 1e-6;
    /** Curves that only touch are within {@link #SAME_MM} of each other over about this length. */
    private static final double TOUCH_MM = 2e-5;

    private final Stretch a;
    private final Stretch b;
    private final List<Crossing> found = new ArrayList<>();
    private int looks;

    private Crossings(Stretch a, Stretch b) {
        this.a = a;
        this.b = b;
    }

    static List<Crossing> of(Stretch a, Stretch b) {
        if (apart(a.box(), b.box())) {
            return List.of();
        }
        Crossings crossings = new Crossings(a, b);
        crossings.ends();
        if (a instanceof LineStretch line && b instanceof LineStretch other) {
            crossings.lines(line, other);
        } else if (a instanceof LineStretch line && b instanceof ArcStretch arc) {
            crossings.lineAndArc(line, arc);
        } else if (a instanceof ArcStretch arc && b instanceof LineStretch line) {
            return of(line, arc).stream().map(Crossing::swapped).toList();
        } else if (a instanceof ArcStretch arc && b instanceof ArcStretch other) {
            crossings.arcs(arc, other);
        } else {
            crossings.search(0, 1, 0, 1);
        }
        return crossings.found;
    }

    static boolean apart(Box one, Box other) {
        double acrossX = Math.max(one.minX() - other.maxX(), other.minX() - one.maxX());
        double acrossY = Math.max(one.minY() - other.maxY(), other.minY() - one.maxY());
        return Math.max(acrossX, acrossY) > SAME_MM;
    }

    /** Keeps a meeting if it is on both stretches and not known yet. */
    private void add(double t, double s) {
        add(t, s, 10 * SAME_MM);
    }

    private void add(double t, double s, double oneMm) {
        Crossing crossing = new Crossing(Stretch.inside(t), Stretch.inside(s));
        Point onA = a.at(crossing.first());
        Point onB = b.at(crossing.second());
        boolean known = found.stream()
                .anyMatch(other -> Stretch.within(oneMm, a.at(other.first()), onA)
                        && Stretch.within(oneMm, b.at(other.second()), onB));
        if (!known && Stretch.within(SAME_MM, onA, onB)) {
            found.add(crossing);
        }
    }

    /** Ends of one that lie on the other. */
    private void ends() {
        for (int end = 0; end <= 1; end++) {
            add(end, b.nearest(a.at(end)));
            add(a.nearest(b.at(end)), end);
        }
    }

    private void lines(LineStretch one, LineStretch other) {
        Vector u = one.velocity(0);
        Vector v = other.velocity(0);
        double cross = u.cross(v);
        Vector between = Vector.between(one.start(), other.start());
        add(between.cross(v) / cross, between.cross(u) / cross);
    }

    private void lineAndArc(LineStretch line, ArcStretch arc) {
        Vector along = line.velocity(0).unit();
        Vector toCentre = Vector.between(line.start(), arc.arc().centre());
        double foot = toCentre.dot(along);
        double off = along.cross(toCentre);
        double radius = arc.arc().radius();
        double half = Math.sqrt(Math.max(0, (radius - off) * (radius + off)));
        for (double at : new double[] {foot - half, foot + half}) {
            Point place = along.times(at).from(line.start());
            add(at / line.length(), arc.parameterTowards(place));
        }
    }

    private void arcs(ArcStretch one, ArcStretch other) {
        Point c1 = one.arc().centre();
        Point c2 = other.arc().centre();
        double r1 = one.arc().radius();
        double r2 = other.arc().radius();
        double apart = c1.distanceTo(c2);
        if (apart == 0) {
            return;
        }
        double along = (apart * apart + r1 * r1 - r2 * r2) / (2 * apart);
        double half = Math.sqrt(Math.max(0, (r1 - along) * (r1 + along)));
        Vector towards = Vector.between(c1, c2).unit();
        for (double side : new double[] {-half, half}) {
            Point place = towards.left().times(side).from(towards.times(along).from(c1));
            add(one.parameterTowards(place), other.parameterTowards(place));
        }
    }

    private void search(double t0, double t1, double s0, double s1) {
        if (++looks > MOST_LOOKS || apart(a.boxAround(t0, t1), b.boxAround(s0, s1))) {
            return;
        }
        double chordA = a.at(t0).distanceTo(a.at(t1));
        double chordB = b.at(s0).distanceTo(b.at(s1));
        double offA = a.sagitta(t0, t1);
        double offB = b.sagitta(s0, s1);
        Vector u = Vector.between(a.at(t0), a.at(t1));
        Vector v = Vector.between(b.at(s0), b.at(s1));
        Vector between = Vector.between(a.at(t0), b.at(s0));
        if (isBeside(u, between, v, offA + offB)) {
            return;
        }
        double cross = u.cross(v);
        double sine = Math.abs(cross) / (chordA * chordB);
        boolean clear = sine > 10 * (offA / chordA + offB / chordB) + 1e-9;
        if (clear && Math.asin(Math.min(1, sine)) > a.swing(t0, t1) + b.swing(s0, s1)) {
            // chords that part by more than both curves point away from them: these meet once or not at all
            double along = between.cross(v) / cross;
            double other = between.cross(u) / cross;
            double off = 2 * (offA + offB) / sine;
            if (Math.max(beyond(along) * chordA, beyond(other) * chordB) < off) {
                refine(t0 + Stretch.inside(along) * (t1 - t0), s0 + Stretch.inside(other) * (s1 - s0));
            }
            return;
        }
        if (chordA < TINY_MM && chordB < TINY_MM) {
            add((t0 + t1) / 2, (s0 + s1) / 2, TOUCH_MM);
            return;
        }
        double tm = (t0 + t1) / 2;
        double sm = (s0 + s1) / 2;
        if (chordA + offA > chordB + offB) {
            search(t0, tm, s0, s1);
            search(tm, t1, s0, s1);
        } else {
            search(t0, t1, s0, sm);
            search(t0, t1, sm, s1);
        }
    }

    /** Whether all of the second chord is on one side of the first, farther away than the curves leave their chords. */
    private static boolean isBeside(Vector chord, Vector toOther, Vector other, double off) {
        double length = chord.length();
        double start = chord.cross(toOther) / length;
        double end = start + chord.cross(other) / length;
        return Math.min(start, end) > off + SAME_MM || Math.max(start, end) < -off - SAME_MM;
    }

    /** By how much a share is outside 0 to 1, but for a tenth. */
    private static double beyond(double share) {
        return Math.abs(share - 0.5) - 0.6;
    }

    private void refine(double t, double s) {
        double atA = t;
        double atB = s;
        for (int step = 0; step < 20; step++) {
            Vector gap = Vector.between(a.at(atA), b.at(atB));
            Vector u = a.velocity(atA);
            Vector v = b.velocity(atB);
            double cross = u.cross(v);
            if (gap.length() < 1e-12) {
                break;
            }
            atA = Stretch.inside(atA + gap.cross(v) / cross);
            atB = Stretch.inside(atB + gap.cross(u) / cross);
        }
        add(atA, atB);
    }
}
