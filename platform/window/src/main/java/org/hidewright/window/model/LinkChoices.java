package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hidewright.core.jobcard.LinkText;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Linkable;
import org.hidewright.core.work.SuitableRows;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.StockLink;

/** What a question of a project can take its answer from: other slips, and the workshop. */
public final class LinkChoices {
    private final Shelf shelf;
    private final Optional<WorkedProject> worked;
    private final Optional<ProjectFace> shown;
    private final Wording wording;

    LinkChoices(Shelf shelf, Optional<WorkedProject> worked, Optional<ProjectFace> shown, Wording wording) {
        this.shelf = shelf;
        this.worked = worked;
        this.shown = shown;
        this.wording = wording;
    }

    /** The rows of the workshop that a question could take, the best first. */
    public List<SuitableRows.Fit> rows(QuestionFace question) {
        return new SuitableRows(shelf).of(question.question());
    }

    /**
     * The rows of the workshop that all that is asked together with a question could take, as a hide is taken with its flaws: those that
     * suit the question, where others beside it name columns of the same table.
     */
    public List<SuitableRows.Fit> wholeRows(String slip, QuestionFace question) {
        Set<String> tables = question.path().group().stream()
                .flatMap(group -> shown.flatMap(face -> face.slip(slip)).stream()
                        .flatMap(face -> face.inside(group))
                        .filter(beside -> !beside.path().equals(question.path())))
                .flatMap(beside -> beside.question().stock().stream())
                .map(LinkChoices::table)
                .collect(Collectors.toSet());
        return rows(question).stream()
                .filter(row -> tables.contains(row.link().table()))
                .map(row -> new SuitableRows.Fit(
                        new StockLink(row.link().table(), row.link().row(), ""), row.name(), row.text(), row.usual()))
                .toList();
    }

    private static String table(String column) {
        return column.substring(0, column.indexOf('.'));
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
