package org.hidewright.layout.engine;

/** A sheet of which only what lies left of a line may be used. */
final class Narrowed implements Ground {
    private final Ground whole;
    private final Rectangle used;

    Narrowed(Ground whole, double right) {
        this.whole = whole;
        this.used = new Rectangle(whole.minX(), whole.minY(), right, whole.maxY());
    }

    @Override
    public double minX() {
        return whole.minX();
    }

    @Override
    public double minY() {
        return whole.minY();
    }

    @Override
    public double maxX() {
        return used.maxX();
    }

    @Override
    public double maxY() {
        return whole.maxY();
    }

    @Override
    public double outside(Turned part, double x, double y) {
        return whole.outside(part, x, y) + used.outside(part, x, y);
    }
}
