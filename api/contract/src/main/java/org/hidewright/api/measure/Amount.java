package org.hidewright.api.measure;

/** One quantity as written: a side, or two sides and how they stand to each other; {@code second} may be null. */
record Amount(Spelling spelling, Side first, Side second) {
    int start() {
        return first.start();
    }

    int end() {
        return second == null ? first.end() : second.end();
    }

    /** The place after its last number, where a missing unit would be written. */
    int unitPlace(Dimension asked) {
        return second == null || relative(asked)
                ? first.count().end()
                : second.count().end();
    }

    /** Whether the spread is a share of the nominal value: {@code 31 mm ± 2 %}. */
    boolean relative(Dimension asked) {
        return spelling == Spelling.PLUS_MINUS && asked != Dimension.NUMBER && Units.PERCENT.equals(second.unit());
    }

    /** The unit written for its first number, or for its second one if that holds for both; null if none is. */
    Unit unit(Dimension asked) {
        if (first.hasUnit() || second == null || relative(asked)) {
            return first.unit();
        }
        return second.unit();
    }
}
