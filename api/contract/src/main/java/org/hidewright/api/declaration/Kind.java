package org.hidewright.api.declaration;

import java.util.Optional;
import org.hidewright.api.measure.Dimension;

/** The kinds of question and answer; the host owns one reader, one editor and one printer for each. */
public enum Kind {
    /** A length or thickness. */
    LENGTH(Dimension.LENGTH),
    /** An angle. */
    ANGLE(Dimension.ANGLE),
    /** An area. */
    AREA(Dimension.AREA),
    /** A mass. */
    MASS(Dimension.MASS),
    /** Mass for a volume. */
    DENSITY(Dimension.DENSITY),
    /** A volume. */
    VOLUME(Dimension.VOLUME),
    /** How long something takes. */
    DURATION(Dimension.DURATION),
    /** An amount of money; its unit is its currency, which is not declared. */
    MONEY(Dimension.MONEY),
    /** A whole number, an {@code Integer}. */
    COUNT(Dimension.NUMBER),
    /** A plain number or share, a {@code Double}. */
    RATIO(Dimension.NUMBER),
    /** Two lengths typed together. */
    SIZE(null),
    /** One of several keys, a {@code String}. */
    CHOICE(null),
    /** Yes or no. */
    FLAG(null),
    /** Any text. */
    TEXT(null),
    /** A day, a {@code LocalDate}, typed as ISO 8601 writes it: {@code 2026-03-01}. */
    DATE(null),
    /** Several values of one scalar kind, typed with {@code ;} between them. */
    LIST(null),
    /** A table: rows with ids, each holding the same questions or one of several variants. */
    ROWS(null),
    /** One of several variants, each with its own questions. */
    VARIANTS(null),
    /** Questions that belong together. */
    GROUP(null),
    /** A text by key; answers only. */
    PHRASE(null),
    /** A drawing; answers only. */
    DRAWING(null),
    /**
     * An item to make. As an answer its columns are those of {@link org.hidewright.api.item.ItemFact}; as a question it is
     * never typed but linked to such an answer, whole.
     */
    ITEM(null);

    private final Dimension dimension;

    Kind(Dimension dimension) {
        this.dimension = dimension;
    }

    /** What a scalar of this kind measures; empty for the kinds that are not one number. */
    public Optional<Dimension> dimension() {
        return Optional.ofNullable(dimension);
    }
}
