package org.hidewright.api.trials;

import java.util.OptionalDouble;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;

/** Values of one number, to the number in base units and back. */
public final class Measures {
    private Measures() {}

    /**
     * The value of a kind that is one number.
     *
     * @param like gives an amount of money its currency
     */
    public static Object of(Kind kind, double base, Object like) {
        return switch (kind) {
            case COUNT -> (int) Math.rint(base);
            case RATIO -> base;
            case MONEY -> Money.of(base, ((Money) like).currency());
            default -> quantity(kind, base);
        };
    }

    static Quantity<?> quantity(Kind kind, double base) {
        Unit unit = Units.base(kind.dimension().orElseThrow());
        return switch (kind) {
            case LENGTH -> Length.of(base, unit);
            case ANGLE -> Angle.of(base, unit);
            case AREA -> Area.of(base, unit);
            case MASS -> Mass.of(base, unit);
            case DENSITY -> Density.of(base, unit);
            case VOLUME -> Volume.of(base, unit);
            case DURATION -> Duration.of(base, unit);
            default -> throw new IllegalArgumentException(kind + " is no quantity");
        };
    }

    /** The number of a value; empty where it is not one. */
    public static OptionalDouble number(Object value) {
        if (value instanceof Quantity<?> quantity) {
            return OptionalDouble.of(quantity.base());
        } else if (value instanceof Money money) {
            return OptionalDouble.of(money.amount().doubleValue());
        }
        return value instanceof Number number ? OptionalDouble.of(number.doubleValue()) : OptionalDouble.empty();
    }
}
