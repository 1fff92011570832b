package org.hidewright.layout.engine;

/** A sheet of which only what lies left of a line may be used. */
final class Narrowed extends GroundWithin {
    private final Rectangle used;

    Narrowed(Ground whole, double right) {
        super(whole);
        this.used = new Rectangle(whole.minX(), whole.minY(), right, whole.maxY());
    }

    @Override
    public double maxX() {
        return used.maxX();
    }

    @Override
    public double outside(Turned part, double x, double y) {
        return whole.outside(part, x, y) + used.outside(part, x, y);
    }
}
