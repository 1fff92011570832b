package org.hidewright.layout.engine;

/** A sheet of which only an upright rectangle may be used. */
final class Narrowed extends GroundWithin {
    private final Rectangle used;

    Narrowed(Ground whole, Rectangle used) {
        super(whole);
        this.used = used;
    }

    @Override
    public double minX() {
        return used.minX();
    }

    @Override
    public double minY() {
        return used.minY();
    }

    @Override
    public double maxX() {
        return used.maxX();
    }

    @Override
    public double maxY() {
        return used.maxY();
    }

    @Override
    public double outside(Turned part, double x, double y) {
        return whole.outside(part, x, y) + used.outside(part, x, y);
    }
}
