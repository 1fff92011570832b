package org.hidewright.api.drawing;

import java.util.List;

/** Equality and a readable form from the parts a value is made of. */
abstract class Value {
    Value() {}

    abstract List<Object> parts();

    @Override
    public final boolean equals(Object other) {
        return this == other
                || other != null && other.getClass() == getClass() && parts().equals(((Value) other).parts());
    }

    @Override
    public final int hashCode() {
        return parts().hashCode();
    }

    @Override
    public final String toString() {
        return getClass().getSimpleName() + parts();
    }

    static double finite(double number, String name) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException(name + " must be a finite number, not " + number);
        }
        return number + 0.0; // turns -0.0 into 0.0, so that equal places are equal
    }

    static double above0(double number, String name) {
        if (!(finite(number, name) > 0)) {
            throw new IllegalArgumentException(name + " must be above 0, not " + number);
        }
        return number;
    }
}
