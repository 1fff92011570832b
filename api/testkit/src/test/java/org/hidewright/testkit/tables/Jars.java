package org.hidewright.testkit.tables;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** A table whose texts are not as they should be: a help is missing, a purpose is, and one text is of no column. */
@Tabulates("jars")
public final class Jars implements WorkshopTable<Jars.Row> {
    /** What its glass is. */
    public enum Glass {
        CLEAR,
        BROWN
    }

    /** One row. */
    public record Row(
            @Asked(unit = "mm", min = "10 mm", max = "400 mm", example = "65 mm")
            Length diameter,

            @Asked(example = "clear") Glass glass) {}

    /** A table with a column that every row has. */
    @Tabulates("tins")
    public static final class Tins implements WorkshopTable<Tins.Row> {
        /** One row. */
        public record Row(@Asked(example = "lid") String id) {}
    }

    /** A table of nothing. */
    @Tabulates("boxes")
    public static final class Boxes implements WorkshopTable<Boxes.Row> {
        /** One row. */
        public record Row() {}
    }
}
