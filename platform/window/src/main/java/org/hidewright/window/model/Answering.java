package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;
import org.hidewright.core.project.AnswerPath;

/** What editors of questions do with what is typed into them, wherever the questions stand. */
public interface Answering {
    /** Answers a question as it was typed; nothing typed lets the preset stand. */
    void type(String slip, AnswerPath path, String text);

    /** Chooses a variant; what was typed for the others stays. */
    void choose(String slip, AnswerPath path, String variant);

    /** Takes a question’s answer away, typed or linked, so that its preset stands. */
    void clear(String slip, AnswerPath path);

    /** What was answered for a question, as it stands in the file; empty where nothing was. */
    Optional<String> typed(String slip, AnswerPath path);

    /** Says that what is typed next is another change, as when a field is left. */
    void settle();

    /** Adds a row to a table, as its last. */
    void addRow(String slip, AnswerPath table);

    /**
     * Adds rows to a table, after its last: lines of cells as a spreadsheet gives them, in the order of the questions of a
     * row. A line that says what the columns are is passed over.
     */
    void addRows(String slip, AnswerPath table, List<List<String>> lines);

    /** Takes a row out of its table. */
    void removeRow(String slip, AnswerPath table, String row);

    /** Moves a row of a table up or down; one that is at its end already stays. */
    void moveRow(String slip, AnswerPath table, String row, int by);
}
