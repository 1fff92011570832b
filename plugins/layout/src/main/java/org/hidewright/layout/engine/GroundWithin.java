package org.hidewright.layout.engine;

/** A ground as large as another of which less may be used. */
abstract class GroundWithin implements Ground {
    final Ground whole;

    GroundWithin(Ground whole) {
        this.whole = whole;
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
        return whole.maxX();
    }

    @Override
    public double maxY() {
        return whole.maxY();
    }
}
