package org.hidewright.api.declaration;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Values under the keys of a declaration, in its order: what a calculator is given and what it gives back.
 *
 * <p>A value is a {@code Quantity}, a {@code Size}, {@code Money}, a {@code LocalDate}, an {@code Integer} (count), a {@code Double} (ratio), a
 * {@code String} (choice key or text), a {@code Boolean}, a {@code Phrase}, a {@code Drawing}, an
 * {@code Item}, a {@code List} of any of
 * these, {@code Values} (group or row) or {@link Chosen} (variant). An optional question left open has no entry.
 */
public final class Values {
    private final String rowId;
    private final Map<String, Object> entries;

    private Values(String rowId, Map<String, Object> entries) {
        this.rowId = rowId;
        this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    /** Values by the keys of their questions. */
    public static Values of(Map<String, ?> entries) {
        return new Values("", new LinkedHashMap<>(entries));
    }

    /** The values of one row of a table. */
    public static Values row(String rowId, Map<String, ?> entries) {
        return new Values(Objects.requireNonNull(rowId, "rowId"), new LinkedHashMap<>(entries));
    }

    /** The stable id when these are the values of a row, otherwise empty. */
    public String rowId() {
        return rowId;
    }

    /** By key, in the order of the questions; one that stays open is not there. */
    public Map<String, Object> entries() {
        return entries;
    }

    /** The value of one question; empty where it stays open. */
    public Optional<Object> get(String key) {
        return Optional.ofNullable(entries.get(key));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Values
                && ((Values) other).rowId.equals(rowId)
                && ((Values) other).entries.equals(entries);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rowId, entries);
    }

    @Override
    public String toString() {
        return (rowId.isEmpty() ? "" : rowId + ": ") + entries;
    }
}
