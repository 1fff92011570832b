package org.hidewright.window.slip;

import java.util.List;
import java.util.Optional;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.Searches;
import org.hidewright.window.words.WindowTexts;
import org.hidewright.window.workshop.Recordable;

/**
 * What every part of a slip needs.
 *
 * @param searches what is searched for on them
 * @param round what happens outside of the slips
 */
public record Desk(Inks inks, WindowTexts texts, OpenProject project, Searches searches, Round round) {
    /** What the editors of its questions need. */
    public Editing editing() {
        return new Editing(inks, texts, project, Optional.of(this));
    }

    /** What happens outside of the slips when something is asked for on one of them. */
    public interface Round {
        /** Whether a slip is folded to its title and what leads. */
        boolean isFolded(String slip);

        /** Folds a slip, or opens it. */
        void fold(String slip, boolean folded);

        /** Shows a slip beside the next of its kind; beside a copy to try something out on where there is none. */
        void compare(String slip);

        /** Makes a copy to try something out on, and shows it beside the slip. */
        void tryOut(String slip);

        /** Answers a question with a row of the workshop. */
        void take(String slip, AnswerPath path, StockLink row);

        /** Shows the drawings of a slip. */
        void draw(String slip);

        /** Shows the answers of a slip that are tables. */
        void tables(String slip);

        /** The answers of a slip that can be recorded in the workshop as measured. */
        List<Recordable> recordable(String slip);

        /** Records one of them. */
        void record(Recordable answer);

        /** Shows what is installed, the bundle that brings a calculator chosen. */
        void installed(String calculator);
    }
}
