package org.hidewright.layout.engine;

/** On which side of a sheet most of it is to be left in one piece. */
enum Side {
    RIGHT,
    LEFT,
    TOP,
    BOTTOM;

    /** How far the parts of a crowd reach towards this side, from the other end of a ground. */
    double reach(Crowd crowd, Ground whole) {
        double reach = 0;
        for (int part = 0; part < crowd.parts; part++) {
            double own = switch (this) {
                case RIGHT -> crowd.right[part] - whole.minX();
                case LEFT -> whole.maxX() - crowd.left[part];
                case TOP -> crowd.high[part] - whole.minY();
                case BOTTOM -> whole.maxY() - crowd.low[part];
            };
            reach = Math.max(reach, own);
        }
        return reach;
    }

    /** What of a ground is within such a reach. */
    Rectangle within(Ground whole, double reach) {
        return switch (this) {
            case RIGHT -> new Rectangle(whole.minX(), whole.minY(), whole.minX() + reach, whole.maxY());
            case LEFT -> new Rectangle(whole.maxX() - reach, whole.minY(), whole.maxX(), whole.maxY());
            case TOP -> new Rectangle(whole.minX(), whole.minY(), whole.maxX(), whole.minY() + reach);
            case BOTTOM -> new Rectangle(whole.minX(), whole.maxY() - reach, whole.maxX(), whole.maxY());
        };
    }
}
