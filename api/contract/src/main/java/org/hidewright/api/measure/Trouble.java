package org.hidewright.api.measure;

/**
 * Everything that can be wrong with a typed text. Each has its sentences in {@code messages.properties}; the number is
 * how many places they may fill.
 */
enum Trouble {
    EMPTY("empty", 0),
    TOO_LONG("too-long", 1),
    NOT_A_NUMBER("not-a-number", 1),
    MISSING_NUMBER("missing-number", 1),
    TWO_MARKS("two-marks", 1),
    GROUPING("grouping", 1),
    COMMA_BEFORE_THREE("comma-before-three", 3),
    TWO_NUMBERS("two-numbers", 2),
    FRACTION("fraction", 1),
    LABEL_AS_FRACTION("label-as-fraction", 3),
    ZERO_DENOMINATOR("zero-denominator", 1),
    IMPROPER_MIXED("improper-mixed", 2),
    TOO_LARGE("too-large", 1),
    NO_UNIT("no-unit", 2),
    UNIT_BEFORE("unit-before", 2),
    UNKNOWN_UNIT("unknown-unit", 2),
    NOT_A_LENGTH("wrong-dimension.length", 1),
    NOT_AN_ANGLE("wrong-dimension.angle", 1),
    NOT_AN_AREA("wrong-dimension.area", 1),
    NOT_A_MASS("wrong-dimension.mass", 1),
    NOT_A_DENSITY("wrong-dimension.density", 1),
    NOT_A_VOLUME("wrong-dimension.volume", 1),
    NOT_A_DURATION("wrong-dimension.duration", 1),
    NOT_MONEY("wrong-dimension.money", 1),
    NOT_A_PLAIN_NUMBER("wrong-dimension.number", 1),
    TOO_MANY_SMALL_UNITS("too-many-small-units", 3),
    REVERSED_RANGE("reversed-range", 2),
    NEGATIVE_SPREAD("negative-spread", 1),
    SEVERAL("several", 1),
    ONE_SIDE("one-side", 0),
    THREE_SIDES("three-sides", 1),
    EMPTY_PART("empty-part", 1),
    LEFT_OVER("left-over", 1);

    private final String key;
    private final int places;

    Trouble(String name, int places) {
        this.key = "reading." + name;
        this.places = places;
    }

    /** The unit measures something other than what is asked. */
    static Trouble notA(Dimension asked) {
        switch (asked) {
            case LENGTH:
                return NOT_A_LENGTH;
            case ANGLE:
                return NOT_AN_ANGLE;
            case AREA:
                return NOT_AN_AREA;
            case MASS:
                return NOT_A_MASS;
            case DENSITY:
                return NOT_A_DENSITY;
            case VOLUME:
                return NOT_A_VOLUME;
            case DURATION:
                return NOT_A_DURATION;
            case MONEY:
                return NOT_MONEY;
            default:
                return NOT_A_PLAIN_NUMBER;
        }
    }

    /** The message key, without its part. */
    String key() {
        return key;
    }

    /** How many arguments its sentences may name. */
    int places() {
        return places;
    }
}
