package org.hidewright.api.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Rows of cells under headings; without any heading text it is a plain list of names and values. */
public final class Table implements Block {
    /** Where the texts of a column stand. */
    public enum Align {
        /** At the beginning of its column. */
        START,
        /** In the middle of its column. */
        CENTRE,
        /** For numbers. */
        END
    }

    private final String caption;
    private final List<Column> columns;
    private final List<List<String>> rows;

    private Table(Builder from) {
        if (from.columns.isEmpty()) {
            throw new IllegalArgumentException("a table needs at least one column");
        }
        caption = from.caption;
        columns = List.copyOf(from.columns);
        rows = List.copyOf(from.rows);
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "a row of " + row.size() + " cells in a table of " + columns.size() + " columns: " + row);
            }
        }
    }

    /** A table to be filled, without a column. */
    public static Builder builder() {
        return new Builder();
    }

    /** What the table shows; empty for none. */
    public String caption() {
        return caption;
    }

    /** From left to right. */
    public List<Column> columns() {
        return columns;
    }

    /** Cells from left to right, row by row, as they are printed. */
    public List<List<String>> rows() {
        return rows;
    }

    /** Heading and alignment of a column. */
    public static final class Column {
        private final String title;
        private final Align align;

        private Column(String title, Align align) {
            this.title = Objects.requireNonNull(title, "title");
            this.align = Objects.requireNonNull(align, "align");
        }

        /** What stands over it. */
        public String title() {
            return title;
        }

        /** How its cells stand. */
        public Align align() {
            return align;
        }
    }

    /** Not for use by several threads. */
    public static final class Builder {
        private final List<Column> columns = new ArrayList<>();
        private final List<List<String>> rows = new ArrayList<>();

        private String caption = "";

        private Builder() {}

        /** Says what the table shows; it stays with the first rows. */
        public Builder caption(String text) {
            caption = Objects.requireNonNull(text, "text");
            return this;
        }

        /** Adds a column behind the others. */
        public Builder column(String title, Align align) {
            columns.add(new Column(title, align));
            return this;
        }

        /** A column of words. */
        public Builder column(String title) {
            return column(title, Align.START);
        }

        /** A column of numbers. */
        public Builder numbers(String title) {
            return column(title, Align.END);
        }

        /** Adds a row with a cell for each column. */
        public Builder row(List<String> cells) {
            rows.add(List.copyOf(cells));
            return this;
        }

        /** Adds a row with a cell for each column. */
        public Builder row(String... cells) {
            return row(List.of(cells));
        }

        /** @throws IllegalArgumentException if there is no column, or a row has not one cell for each */
        public Table build() {
            return new Table(this);
        }
    }
}
