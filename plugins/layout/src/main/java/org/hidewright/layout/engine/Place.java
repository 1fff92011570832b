package org.hidewright.layout.engine;

/** A place that is being tried for a part, and what it costs. Used over and over, so that trying makes no garbage. */
final class Place {
    double angle;
    double x;
    double y;
    double cost;

    void set(double newAngle, double newX, double newY, double newCost) {
        angle = newAngle;
        x = newX;
        y = newY;
        cost = newCost;
    }

    void take(Place other) {
        set(other.angle, other.x, other.y, other.cost);
    }
}
