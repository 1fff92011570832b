package org.hidewright.layout.engine;

/** A strip from x = 0 to its length, of a given height. */
final class Strip implements Ground {
    /** Share of the part's box that counts as outside as soon as anything does. */
    private static final double STEP = 1e-4;

    private static final double WEIGHT = 2;

    private final double height;
    private double length;

    Strip(double length, double height) {
        this.length = length;
        this.height = height;
    }

    void length(double newLength) {
        length = newLength;
    }

    @Override
    public double minX() {
        return 0;
    }

    @Override
    public double minY() {
        return 0;
    }

    @Override
    public double maxX() {
        return length;
    }

    @Override
    public double maxY() {
        return height;
    }

    @Override
    public double outside(Turned part, double x, double y) {
        double left = part.minX + x;
        double right = part.maxX + x;
        double low = part.minY + y;
        double high = part.maxY + y;
        if (left >= 0 && right <= length && low >= 0 && high <= height) {
            return 0;
        }
        double width = Math.max(0, Math.min(right, length) - Math.max(left, 0));
        double tall = Math.max(0, Math.min(high, height) - Math.max(low, 0));
        double whole = (right - left) * (high - low);
        double off = whole - width * tall;
        if (off >= whole) {
            // wholly off: the farther, the worse
            double away = Math.max(Math.max(-right, left - length), Math.max(-high, low - height));
            off = whole + Math.max(0, away) * part.form.diameter;
        }
        return WEIGHT * Math.sqrt(off + STEP * whole) * Meeting.scale(part.form, part.form);
    }
}
