package org.hidewright.layout.engine;

/** Where parts lie: angle in radians and the place of the point of reference. */
final class Places {
    final double[] angle;
    final double[] x;
    final double[] y;

    Places(int parts) {
        angle = new double[parts];
        x = new double[parts];
        y = new double[parts];
    }

    void take(Places other) {
        System.arraycopy(other.angle, 0, angle, 0, angle.length);
        System.arraycopy(other.x, 0, x, 0, x.length);
        System.arraycopy(other.y, 0, y, 0, y.length);
    }
}
