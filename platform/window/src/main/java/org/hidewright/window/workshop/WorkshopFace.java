package org.hidewright.window.workshop;

import java.util.List;
import java.util.Optional;
import org.hidewright.window.model.QuestionFace;

/**
 * A workshop as it is shown.
 *
 * @param name the maker’s
 * @param head what is asked of the whole: its name, and the currency of amounts that name none
 * @param told what is wrong with the file, cells aside, in sentences
 * @param tables all that are installed
 */
record WorkshopFace(String name, List<QuestionFace> head, List<String> told, List<Shown> tables) {
    /**
     * A table.
     *
     * @param purpose what it is for, in a line
     * @param columns its columns; what a row has in them stands in the same order
     * @param lines the maker’s rows in the order of the file, then those of bundles
     */
    record Shown(String id, String title, String purpose, List<Head> columns, List<Line> lines) {
        /** How many rows are the maker’s. */
        long own() {
            return lines.stream().filter(Line::own).count();
        }

        /** How many things are wrong in its rows. */
        long wrong() {
            return lines.stream().mapToLong(Line::wrong).sum();
        }

        Optional<Line> line(String row) {
            return lines.stream().filter(line -> line.key().equals(row)).findFirst();
        }
    }

    /**
     * The head of a column.
     *
     * @param unit empty where it has none
     */
    record Head(String key, String label, String unit, String help) {
        String text() {
            return unit.isEmpty() ? label : label + ", " + unit;
        }
    }

    /**
     * A row.
     *
     * @param id by which links name it
     * @param from the bundle that brings it and where its sizes are from, in words; empty for the maker’s own
     * @param cells as they are read, in the order of the columns
     * @param questions its cells, to be typed over where it is the maker’s
     */
    record Line(String id, String from, List<String> cells, List<QuestionFace> questions) {
        boolean own() {
            return from.isEmpty();
        }

        /** What tells it from all other lines of its table: a bundle may bring a row under an id the maker has too. */
        String key() {
            return own() ? id : id + " " + from;
        }

        long wrong() {
            return own()
                    ? questions.stream()
                            .mapToLong(question -> question.wrong().size())
                            .sum()
                    : 0;
        }
    }

    Optional<Shown> table(String id) {
        return tables.stream().filter(table -> table.id().equals(id)).findFirst();
    }
}
