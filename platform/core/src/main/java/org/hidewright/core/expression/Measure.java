package org.hidewright.core.expression;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Unit;

/**
 * What an amount measures, by its powers of length, mass, duration and angle; amounts are counted in millimetres, grams,
 * seconds and radians.
 *
 * <p>An angle is no plain number, so that degrees cannot be taken for one: the length of an arc is {@code radius * (turn / 1 rad)}.
 * Money is not reckoned with.
 */
public record Measure(int length, int mass, int duration, int angle) implements Sort {
    public static final Measure NUMBER = new Measure(0, 0, 0, 0);

    private static final Map<Dimension, Measure> OF = Map.of(
            Dimension.LENGTH, new Measure(1, 0, 0, 0),
            Dimension.AREA, new Measure(2, 0, 0, 0),
            Dimension.VOLUME, new Measure(3, 0, 0, 0),
            Dimension.MASS, new Measure(0, 1, 0, 0),
            Dimension.DENSITY, new Measure(-3, 1, 0, 0),
            Dimension.DURATION, new Measure(0, 0, 1, 0),
            Dimension.ANGLE, new Measure(0, 0, 0, 1),
            Dimension.NUMBER, NUMBER);

    /** Of a dimension; empty for money. */
    public static Optional<Measure> of(Dimension dimension) {
        return Optional.ofNullable(OF.get(dimension));
    }

    /** How many of ours an amount in the base unit of its dimension is: a millilitre is a thousand cubic millimetres. */
    public static double perBase(Dimension dimension) {
        return switch (dimension) {
            case VOLUME -> 1000;
            case DENSITY -> 1.0 / 1000;
            default -> 1;
        };
    }

    /** The dimension that this measures; empty where there is none. */
    public Optional<Dimension> dimension() {
        return OF.entrySet().stream()
                .filter(entry -> entry.getValue().equals(this))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    static double amount(double number, Unit unit) {
        return unit.toBase(number) * perBase(unit.dimension());
    }

    Measure times(Measure other) {
        return new Measure(length + other.length, mass + other.mass, duration + other.duration, angle + other.angle);
    }

    Measure over(Measure other) {
        return new Measure(length - other.length, mass - other.mass, duration - other.duration, angle - other.angle);
    }

    /** Of what has this one as its square; empty if nothing has. */
    Optional<Measure> root() {
        return length % 2 == 0 && mass % 2 == 0 && duration % 2 == 0 && angle % 2 == 0
                ? Optional.of(new Measure(length / 2, mass / 2, duration / 2, angle / 2))
                : Optional.empty();
    }

    @Override
    public Phrase words() {
        return dimension()
                .map(dimension -> Phrase.of("sort-" + dimension.name().toLowerCase(Locale.ROOT)))
                .orElseGet(() -> Phrase.of("sort-other", length, mass, duration, angle));
    }
}
