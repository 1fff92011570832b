package org.hidewright.core.work;

import java.util.List;
import java.util.Map;
import org.hidewright.api.measure.Typed;
import org.hidewright.api.measure.TypedSize;
import org.hidewright.core.json.Place;
import org.hidewright.core.project.Link;

/** How one question stands: what was typed, understood but not yet checked against limits or followed to its source. */
sealed interface Entry {
    /**
     * A quantity or number.
     *
     * @param typed as typed and as understood
     */
    record Quantity(Typed typed) implements Entry {}

    /**
     * A size.
     *
     * @param typed as typed and as understood
     */
    record TwoSides(TypedSize typed) implements Entry {}

    /**
     * Several values of one kind.
     *
     * @param items each of them: a quantity, a size or a plain value
     */
    record Several(List<Entry> items) implements Entry {}

    /**
     * A choice's key, a flag or a text.
     *
     * @param value ready for the calculator
     */
    record Plain(Object value) implements Entry {}

    /**
     * A link.
     *
     * @param link where to
     * @param place where it stands in the file
     */
    record Linked(Link link, Place place) implements Entry {}

    /**
     * Questions that belong together.
     *
     * @param answers by key
     */
    record Group(Map<String, Answered> answers) implements Entry {}

    /**
     * The variant chosen.
     *
     * @param variant its key
     * @param answers by key
     */
    record OneOf(String variant, Map<String, Answered> answers) implements Entry {}

    /**
     * Rows.
     *
     * @param rows in order
     */
    record Table(List<Row> rows) implements Entry {}

    /**
     * A row.
     *
     * @param id stable id
     * @param entry a group or a variant
     */
    record Row(String id, Entry entry) {}

    /**
     * Taken from the workshop.
     *
     * @param cell where it lies there: {@code table[row].column}, or less for what holds others
     * @param entry as it is written there
     */
    record Stocked(String cell, Entry entry) implements Entry {}

    /** An optional question left open. */
    record Open() implements Entry {}

    /** A question whose trouble has been said. */
    record Bad() implements Entry {}

    /** Where an entry comes from. */
    enum Origin {
        TYPED,
        PRESET,
        LINKED,
        WORKSHOP
    }

    /**
     * An entry with what is shown of it.
     *
     * @param entry what was understood
     * @param origin where it comes from
     * @param text as typed; empty for rows and groups
     * @param place where it stands in the file; null for a preset
     */
    record Answered(Entry entry, Origin origin, String text, Place place) {}
}
