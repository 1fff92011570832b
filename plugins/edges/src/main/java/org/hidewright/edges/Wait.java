package org.hidewright.edges;

import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Units;

/** How long work is left alone, at the least and at the most that is usual. */
record Wait(Duration least, Duration most) {
    static final Wait NONE = new Wait(Duration.ZERO, Duration.ZERO);

    static Wait hours(double least, double most) {
        return new Wait(Duration.of(least, Units.HOUR), Duration.of(most, Units.HOUR));
    }

    static Wait minutes(double least, double most) {
        return new Wait(Duration.of(least, Units.MINUTE), Duration.of(most, Units.MINUTE));
    }

    Wait times(double factor) {
        return new Wait(least.times(factor), most.times(factor));
    }

    Wait plus(Wait other) {
        return new Wait(least.plus(other.least), most.plus(other.most));
    }

    /** The same, and never shorter than a label asks for. */
    Wait notUnder(Duration label) {
        return new Wait(longer(least, label), longer(most, label));
    }

    private static Duration longer(Duration one, Duration other) {
        return one.seconds() >= other.seconds() ? one : other;
    }

    boolean isNone() {
        return most.seconds() == 0;
    }
}
