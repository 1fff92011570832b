package org.hidewright.core.work;

import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Volume;

/** Numbers as calculators take them. */
public final class Quantities {
    private Quantities() {}

    /**
     * A quantity of a dimension, of a number in its base unit; a plain number stays one.
     *
     * @throws IllegalArgumentException for money, which needs its currency
     */
    public static Object of(Dimension dimension, double base) {
        return switch (dimension) {
            case LENGTH -> Length.ofMm(base);
            case ANGLE -> Angle.ofRadians(base);
            case AREA -> Area.ofMm2(base);
            case MASS -> Mass.ofGrams(base);
            case DENSITY -> Density.ofGramsPerCm3(base);
            case VOLUME -> Volume.ofMl(base);
            case DURATION -> Duration.ofSeconds(base);
            case NUMBER -> base;
            case MONEY -> throw new IllegalArgumentException("money needs its currency");
        };
    }
}
