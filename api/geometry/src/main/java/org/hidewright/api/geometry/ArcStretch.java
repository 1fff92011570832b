package org.hidewright.api.geometry;

import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

final class ArcStretch extends Stretch {
    private final Segment.Arc arc;

    ArcStretch(Segment.Arc arc) {
        this.arc = arc;
    }

    Segment.Arc arc() {
        return arc;
    }

    @Override
    double swing(double from, double to) {
        return Math.abs((to - from) * arc.sweep()) / 2;
    }

    @Override
    double turning() {
        return Math.abs(arc.sweep());
    }

    @Override
    Segment segment() {
        return arc;
    }

    private double angle(double t) {
        return arc.startAngle() + t * arc.sweep();
    }

    @Override
    Point at(double t) {
        return t == 0 ? arc.start() : t == 1 ? arc.end() : arc.centre().towards(angle(t), arc.radius());
    }

    @Override
    Vector velocity(double t) {
        double speed = arc.radius() * arc.sweep();
        return new Vector(-speed * Math.sin(angle(t)), speed * Math.cos(angle(t)));
    }

    @Override
    Vector acceleration(double t) {
        double pull = -arc.radius() * arc.sweep() * arc.sweep();
        return new Vector(pull * Math.cos(angle(t)), pull * Math.sin(angle(t)));
    }

    @Override
    double length(double from, double to) {
        return (to - from) * arc.radius() * Math.abs(arc.sweep());
    }

    @Override
    double parameterAt(double lengthMm) {
        return inside(lengthMm / length());
    }

    @Override
    Stretch part(double from, double to) {
        return new ArcStretch(Segment.arc(at(from), arc.centre(), (to - from) * arc.sweep()));
    }

    @Override
    Stretch reversed() {
        return new ArcStretch(Segment.arc(arc.end(), arc.centre(), -arc.sweep()));
    }

    /** The parameter of a place as it is seen from the centre; outside 0 to 1 when the arc does not go there. */
    double parameterTowards(Point point) {
        double toMiddle = arc.centre().directionTo(point) - angle(0.5);
        return 0.5 + Math.IEEEremainder(toMiddle, 2 * Math.PI) / arc.sweep();
    }

    @Override
    double nearest(Point point) {
        return inside(parameterTowards(point));
    }

    @Override
    double sweptArea() {
        Point a = arc.start();
        Point b = arc.end();
        double segment = arc.radius() * arc.radius() * (arc.sweep() - Math.sin(arc.sweep())) / 2;
        return (a.x() * b.y() - b.x() * a.y()) / 2 + segment;
    }

    @Override
    Box boxAround(double from, double to) {
        return part(from, to).box();
    }

    @Override
    double sagitta(double from, double to) {
        return arc.radius() * (1 - Math.cos(swing(from, to)));
    }
}
