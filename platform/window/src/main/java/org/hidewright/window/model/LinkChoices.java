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
     * The rows of the workshop that all that is asked in a chosen variant could take, as a hide is taken with its flaws: those that suit
     * one of its questions, where others beside it are called as columns of the same table are.
     */
    public List<SuitableRows.Fit> wholeRows(String slip, QuestionFace question) {
        Optional<SlipFace> face = shown.flatMap(known -> known.slip(slip));
        Set<String> tables = question.path().group().stream()
                .flatMap(group -> face.stream().flatMap(known -> known.insideVariant(group)))
                .filter(beside -> !beside.path().equals(question.path()))
                .flatMap(beside -> tableOf(beside).stream())
                .collect(Collectors.toSet());
        return rows(question).stream()
                .filter(row -> tableOf(question).equals(Optional.of(row.link().table())))
                .filter(row -> tables.contains(row.link().table()))
                .map(row -> new SuitableRows.Fit(
                        new StockLink(row.link().table(), row.link().row(), ""), row.name(), row.text(), row.usual()))
                .toList();
    }

    /** The table from which a question is answered with others; by their keys, so one that is called otherwise is not. */
    private static Optional<String> tableOf(QuestionFace face) {
        String column = "." + face.question().key();
        return face.question()
                .stock()
                .filter(stock -> stock.endsWith(column))
                .map(stock -> stock.substring(0, stock.length() - column.length()));
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
