package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;
import org.hidewright.core.jobcard.LinkText;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Linkable;
import org.hidewright.core.work.SuitableRows;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.workshop.Shelf;

/** What a question of a project can take its answer from: other slips, and the workshop. */
public final class LinkChoices {
    private final Shelf shelf;
    private final Optional<WorkedProject> worked;
    private final Wording wording;

    LinkChoices(Shelf shelf, Optional<WorkedProject> worked, Wording wording) {
        this.shelf = shelf;
        this.worked = worked;
        this.wording = wording;
    }

    /** The rows of the workshop that a question could take, the best first. */
    public List<SuitableRows.Fit> rows(QuestionFace question) {
        return new SuitableRows(shelf).of(question.question());
    }

    /** What a question could be linked to, as far as the project is worked out. */
    public List<Link> links(String slip, QuestionFace question) {
        return worked.map(known -> Linkable.to(known, slip, question.question()))
                .orElse(List.of());
    }

    /** A link in words. */
    public String told(Link link) {
        return worked.map(known -> LinkText.of(link, known, wording)).orElseGet(link::toString);
    }
}
