package org.hidewright.core.jobcard;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Section;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;

/** The documents of a worked project: the job card, and what bundles bring that stands apart from it. */
public final class Packet {
    /** Name of the job card among the documents. */
    public static final String JOB_CARD = "job-card";

    private final WorkedProject worked;
    private final Wording wording;
    private final Patterns patterns;

    public Packet(WorkedProject worked, Wording wording) {
        this.worked = worked;
        this.wording = wording;
        this.patterns = new Patterns(worked, wording);
    }

    /**
     * The documents by the name their file takes: the job card, the patterns, what bundles bring.
     *
     * @param date the day printed on every page
     * @param contributors what adds sections; one that fails is told on the job card in place of its sections
     * @param told hears of those that failed
     */
    public Map<String, Document> documents(LocalDate date, List<Contributor> contributors, Consumer<Remark> told) {
        JobCard card = new JobCard(worked, wording);
        List<Section> sections = new ContributedSections(worked, wording, card).sections(contributors, told);
        Map<String, Document> documents = new LinkedHashMap<>();
        documents.put(
                JOB_CARD,
                card.document(
                        date,
                        sections.stream()
                                .filter(section -> !section.standsApart())
                                .toList()));
        patterns.document(date).ifPresent(document -> documents.put(Patterns.NAME, document));
        sections.stream()
                .filter(Section::standsApart)
                .forEach(section -> documents.put(free(nameOf(section), documents), apart(section, date)));
        return documents;
    }

    /** Name of the project. */
    public String project() {
        return worked.project().name();
    }

    /** The parts of all items, and what else is cut by, as drawings for machines, by the name their files begin with. */
    public Map<String, List<DrawingWriter.Named>> drawings() {
        Map<String, List<DrawingWriter.Named>> drawings = new LinkedHashMap<>(patterns.drawings());
        worked.slips()
                .values()
                .forEach(slip -> new DrawnFiles(slip, wording)
                        .byName()
                        .forEach((name, drawn) -> drawings.put(free(name, drawings), List.of(drawn))));
        return drawings;
    }

    /** Whether a document is the patterns, which may be wanted on a larger paper. */
    public static boolean isPatterns(String document) {
        return document.equals(Patterns.NAME);
    }

    /** The name of the file of a section that stands apart: the last part of its id. */
    public static String nameOf(Section section) {
        return section.id().substring(section.id().lastIndexOf('.') + 1);
    }

    /** Two bundles may have the same name for a document, or a slip the name of another file; neither is lost. */
    private static String free(String name, Map<String, ?> taken) {
        String free = name;
        for (int i = 2; taken.containsKey(free); i++) {
            free = name + "-" + i;
        }
        return free;
    }

    private Document apart(Section section, LocalDate date) {
        return Document.of(worked.project().name(), section.title())
                .dated(date, wording.date(date))
                .pageText(wording.host("job-card.page", "{0}", "{1}"))
                .language(wording.language())
                .section(Section.of(section.id(), "", section.blocks()))
                .build();
    }
}
