package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.core.work.WorkedSlip;

/**
 * A slip as it is shown.
 *
 * @param id by which links name it
 * @param title the maker's, else the calculator's
 * @param purpose what the calculator is for, in one line
 * @param state how it stands
 * @param stateText how it stands, in a sentence; empty where it is worked
 * @param answers in the order declared, those that lead first
 * @param questions in the order asked
 * @param told checks, cautions and notes that belong to no single question
 * @param working formula, numbers and result, line by line
 * @param drawing what it draws; empty where it draws nothing
 * @param makes whether what it draws is a piece to make, with its parts
 */
public record SlipFace(
        String id,
        String title,
        String purpose,
        WorkedSlip.State state,
        String stateText,
        List<AnswerFace> answers,
        List<QuestionFace> questions,
        List<Told> told,
        List<String> working,
        Optional<Drawing> drawing,
        boolean makes) {
    /**
     * Something that is told on a slip.
     *
     * @param urgent whether it is to be looked at before leather is cut; a note is not
     * @param severity in words
     * @param what what is the matter
     * @param why why that matters
     * @param next what to do
     */
    public record Told(boolean urgent, String severity, String what, String why, String next) {}
}
