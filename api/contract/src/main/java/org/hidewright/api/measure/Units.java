package org.hidewright.api.measure;

import java.util.List;
import java.util.Optional;

/**
 * The units a maker may write, each with its exact definition.
 *
 * <p>Sources: inch, foot and yard, international yard and pound agreement of 1959 (25.4 mm, 0.3048 m and 0.9144 m
 * exactly); avoirdupois pound 453.59237 g (the same agreement); leather ounce 1/64 in and iron 1/48 in, ASTM D1814-70,
 * 1.2 (a thickness, not a mass); US fluid ounce 1/128 of a gallon of 231 in³ (NIST Handbook 44, appendix C); minute, hour
 * and day, SI brochure, table 8; currencies by their ISO 4217 codes. Sizes stand as a numerator and a denominator: 25.4 is 127/5.
 */
public final class Units {
    /** Millimetre, the base unit of lengths. */
    public static final Unit MM =
            Unit.of(Dimension.LENGTH, "mm", 1, 1, "millimetre", "millimetres", "millimeter", "millimeters");
    /** Centimetre. */
    public static final Unit CM =
            Unit.of(Dimension.LENGTH, "cm", 10, 1, "centimetre", "centimetres", "centimeter", "centimeters");
    /** Metre. */
    public static final Unit M = Unit.of(Dimension.LENGTH, "m", 1000, 1, "metre", "metres", "meter", "meters");
    /** Inch, 25.4 mm by definition. */
    public static final Unit INCH = Unit.of(Dimension.LENGTH, "in", 127, 5, "inch", "inches", "Zoll", "\"", "″", "''");
    /** Foot of 12 inches. */
    public static final Unit FOOT = Unit.of(Dimension.LENGTH, "ft", 1524, 5, "foot", "feet", "Fuß", "Fuss", "'", "′");
    /** Yard of 36 inches. */
    public static final Unit YARD = Unit.of(Dimension.LENGTH, "yd", 4572, 5, "yard", "yards");
    /** Leather ounce: 1/64 inch of thickness, not a mass. */
    public static final Unit OUNCE = Unit.of(Dimension.LENGTH, "oz", 127, 5 * 64, "ounce", "ounces");
    /** Iron, for sole leather: 1/48 inch of thickness. */
    public static final Unit IRON = Unit.of(Dimension.LENGTH, "iron", 127, 5 * 48, "irons");

    /** Degree, 1/360 of a turn. */
    public static final Unit DEGREE = Unit.of(Dimension.ANGLE, "deg", Math.PI, 180, "°", "degree", "degrees", "Grad");
    /** Radian, the base unit of angles. */
    public static final Unit RADIAN = Unit.of(Dimension.ANGLE, "rad", 1, 1, "radian", "radians");
    /** A full turn of 360 degrees. */
    public static final Unit TURN = Unit.of(Dimension.ANGLE, "turn", 2 * Math.PI, 1, "turns");

    /** Square millimetre, the base unit of areas. */
    public static final Unit MM2 = Unit.of(
            Dimension.AREA,
            "mm²",
            1,
            1,
            "mm2",
            "mm^2",
            "sq mm",
            "square millimetre",
            "square millimetres",
            "square millimeter",
            "square millimeters");
    /** Square centimetre. */
    public static final Unit CM2 = Unit.of(
            Dimension.AREA,
            "cm²",
            100,
            1,
            "cm2",
            "cm^2",
            "sq cm",
            "square centimetre",
            "square centimetres",
            "square centimeter",
            "square centimeters");
    /** Square decimetre. */
    public static final Unit DM2 = Unit.of(
            Dimension.AREA,
            "dm²",
            10_000,
            1,
            "dm2",
            "dm^2",
            "sq dm",
            "square decimetre",
            "square decimetres",
            "square decimeter",
            "square decimeters");
    /** Square metre. */
    public static final Unit M2 = Unit.of(
            Dimension.AREA,
            "m²",
            1_000_000,
            1,
            "m2",
            "m^2",
            "sq m",
            "square metre",
            "square metres",
            "square meter",
            "square meters");
    /** Square inch. */
    public static final Unit IN2 =
            Unit.of(Dimension.AREA, "in²", 127 * 127, 25, "in2", "in^2", "sq in", "square inch", "square inches");
    /** Square foot. */
    public static final Unit FT2 =
            Unit.of(Dimension.AREA, "ft²", 1524 * 1524, 25, "ft2", "ft^2", "sq ft", "square foot", "square feet");

    /** Gram. */
    public static final Unit GRAM = Unit.of(Dimension.MASS, "g", 1, 1, "gram", "grams", "gramme", "grammes");
    /** Kilogram. */
    public static final Unit KILOGRAM = Unit.of(Dimension.MASS, "kg", 1000, 1, "kilogram", "kilograms");
    /** Pound avoirdupois, 0.45359237 kg by definition. */
    public static final Unit POUND = Unit.of(Dimension.MASS, "lb", 45_359_237, 100_000, "lbs", "pound", "pounds");
    /** Avoirdupois ounce, a mass; where a length is asked, {@code oz} is the leather ounce instead. */
    public static final Unit OUNCE_MASS = Unit.of(Dimension.MASS, "oz", 45_359_237, 100_000 * 16, "ounce", "ounces");

    /** Gram for a cubic centimetre. */
    public static final Unit G_PER_CM3 =
            Unit.of(Dimension.DENSITY, "g/cm³", 1, 1, "g/cm3", "g/cm^3", "g/cc", "g/ml", "kg/dm³", "kg/dm3");
    /** Kilogram for a cubic metre. */
    public static final Unit KG_PER_M3 = Unit.of(Dimension.DENSITY, "kg/m³", 1, 1000, "kg/m3", "kg/m^3");

    /** Millilitre. */
    public static final Unit ML = Unit.of(
            Dimension.VOLUME, "ml", 1, 1, "millilitre", "millilitres", "milliliter", "milliliters", "cm³", "cm3", "cc");
    /** Litre. */
    public static final Unit LITRE = Unit.of(Dimension.VOLUME, "l", 1000, 1, "litre", "litres", "liter", "liters");
    /** US fluid ounce, 29.5735295625 ml; where a length is asked, {@code oz} is the leather ounce instead. */
    public static final Unit FLUID_OUNCE =
            Unit.of(Dimension.VOLUME, "fl oz", 473_176_473, 16_000_000, "oz", "fluid ounce", "fluid ounces");

    /** Minute. */
    public static final Unit MINUTE = Unit.of(Dimension.DURATION, "min", 60, 1, "minute", "minutes", "Minuten");
    /** Hour. */
    public static final Unit HOUR =
            Unit.of(Dimension.DURATION, "h", 3600, 1, "hour", "hours", "hr", "hrs", "Std", "Stunde", "Stunden");
    /** Day of 24 hours. */
    public static final Unit DAY = Unit.of(Dimension.DURATION, "d", 86_400, 1, "day", "days", "Tag", "Tage");
    /** Second, the base unit of times. */
    public static final Unit SECOND = Unit.of(Dimension.DURATION, "s", 1, 1, "second", "seconds", "sec");

    /** What is only counted has no unit. */
    public static final Unit ONE = Unit.of(Dimension.NUMBER, "", 1, 1);
    /** Hundredth part. */
    public static final Unit PERCENT = Unit.of(Dimension.NUMBER, "%", 1, 100, "percent", "per cent", "Prozent");

    private static final List<Unit> ALL = List.of(
            MM,
            CM,
            M,
            INCH,
            FOOT,
            YARD,
            OUNCE,
            IRON,
            DEGREE,
            RADIAN,
            TURN,
            MM2,
            CM2,
            DM2,
            M2,
            IN2,
            FT2,
            GRAM,
            KILOGRAM,
            POUND,
            OUNCE_MASS,
            G_PER_CM3,
            KG_PER_M3,
            ML,
            LITRE,
            FLUID_OUNCE,
            MINUTE,
            HOUR,
            DAY,
            SECOND,
            ONE,
            PERCENT);

    private Units() {}

    /** Every unit but the currencies, in the order documented. */
    public static List<Unit> all() {
        return ALL;
    }

    /** The unit of a dimension with this symbol or spelling; letters may be of either case. */
    public static Optional<Unit> find(Dimension dimension, String spelling) {
        return of(dimension).stream()
                .filter(unit -> unit.symbol().equalsIgnoreCase(spelling)
                        || unit.spellings().stream().anyMatch(other -> other.equalsIgnoreCase(spelling)))
                .findFirst();
    }

    /** The units of a dimension; of money the currencies. */
    static List<Unit> of(Dimension dimension) {
        return dimension == Dimension.MONEY
                ? Currencies.ALL
                : ALL.stream().filter(unit -> unit.dimension() == dimension).toList();
    }

    /**
     * A currency.
     *
     * @param code of ISO 4217, letters of either case
     * @throws IllegalArgumentException if there is no such currency
     */
    public static Unit currency(String code) {
        return find(Dimension.MONEY, code)
                .orElseThrow(() -> new IllegalArgumentException("no currency of ISO 4217: " + code));
    }

    /**
     * The base unit of a dimension, in which values are held.
     *
     * @throws IllegalArgumentException for money, which has one in each currency
     */
    public static Unit base(Dimension dimension) {
        switch (dimension) {
            case LENGTH:
                return MM;
            case ANGLE:
                return RADIAN;
            case AREA:
                return MM2;
            case MASS:
                return GRAM;
            case DENSITY:
                return G_PER_CM3;
            case VOLUME:
                return ML;
            case DURATION:
                return SECOND;
            case MONEY:
                throw new IllegalArgumentException("money has no unit but its currency");
            default:
                return ONE;
        }
    }
}
