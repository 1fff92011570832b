package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.junit.jupiter.api.Test;

/** The documents of a packet, and what those see who add to it. */
class PacketTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    private final List<JobView> seen = new ArrayList<>();

    private static WorkedProject worked(String... questions) {
        List<String> slips = new ArrayList<>();
        for (String of : questions) {
            slips.add(Shop.slip("s" + slips.size(), "sampler", Shop.json(of)));
        }
        return new Shop(new Sampler()).work(slips.toArray(String[]::new));
    }

    private static Map<String, Document> documents(WorkedProject worked, Contributor... contributors) {
        return new Packet(worked, Shop.ENGLISH).documents(DAY, List.of(contributors), fault -> {
            throw new AssertionError(fault);
        });
    }

    private static Contributor giving(Section... sections) {
        return new Contributor("org.example.kit", job -> List.of(sections));
    }

    private JobView.Slip seen(WorkedProject worked, Wording wording) {
        Contributor looking = new Contributor("org.example.kit", job -> {
            seen.add(job);
            return List.of();
        });
        new Packet(worked, wording).documents(DAY, List.of(looking), fault -> {
            throw new AssertionError(fault);
        });
        return seen.get(seen.size() - 1).slips().get(0);
    }

    @Test
    void aSectionThatStandsApartIsADocumentOfItsOwnAndNotOnTheJobCard() {
        Map<String, Document> documents = documents(
                worked(""),
                giving(
                        Section.of("org.example.kit.note", "Note", Paragraph.of("stays")),
                        Section.of("org.example.kit.fair-copy", "Fair copy", Paragraph.of("goes"))
                                .apart()));
        assertEquals(List.of("job-card", "fair-copy"), List.copyOf(documents.keySet()));
        assertEquals(
                List.of("overview", "s0", "org.example.kit.note"),
                documents.get("job-card").sections().stream().map(Section::id).toList());
        Document apart = documents.get("fair-copy");
        assertEquals("Fair copy", apart.title());
        assertEquals("Kit", apart.project());
        assertEquals(DAY, apart.date());
        assertEquals("Page 1 of 2", apart.pageText(1, 2));
        assertEquals(1, apart.sections().size());
        assertEquals("", apart.sections().get(0).title(), "the title stands above it already");
        assertEquals("goes", ((Paragraph) apart.sections().get(0).blocks().get(0)).text());
    }

    @Test
    void twoOfOneNameAreBothThereAndTheJobCardKeepsItsOwn() {
        Map<String, Document> documents = documents(
                worked(""),
                giving(
                        Section.of("org.example.kit.quote", "A").apart(),
                        Section.of("net.example.quote", "B").apart(),
                        Section.of("job-card", "C").apart()));
        assertEquals(List.of("job-card", "quote", "quote-2", "job-card-2"), List.copyOf(documents.keySet()));
        assertEquals("B", documents.get("quote-2").title());
    }

    @Test
    void whatASlipWasWorkedFromIsSeenInWordsAndAsNumbers() {
        JobView.Slip slip = seen(worked("'thickness': '2 mm'"), Shop.ENGLISH);
        Map<String, JobView.Answer> asked = slip.questions();
        assertEquals("2\u00A0mm", asked.get("thickness").value());
        assertEquals("", asked.get("thickness").unit());
        assertEquals(2, asked.get("thickness").number().orElseThrow());
        assertEquals("7", asked.get("holes").value());
        assertEquals(7, asked.get("holes").number().orElseThrow());
        assertTrue(asked.get("stamp").number().isEmpty());
        assertEquals("plain", asked.get("stamp").value());
        assertEquals(Optional.empty(), Optional.ofNullable(asked.get("glue")));
        JobView.Row layer = asked.get("layers").rows().get(0);
        assertEquals("strap", layer.id());
        assertEquals("3\u00A0mm", layer.cells().get("thickness").value());
        JobView.Row bend = asked.get("sections").rows().get(0);
        assertEquals("b1", bend.id());
        assertEquals("180\u00A0deg", bend.cells().get("turn").value());
    }

    @Test
    void rowsOfAnswersAreSeenCellByCell() {
        JobView.Slip slip = seen(
                worked("'thickness': '2 mm', 'layers': [{'id': 'a', 'thickness': '3 mm'},"
                        + " {'id': 'b', 'thickness': '4 mm', 'note': 'thin'}]"),
                new Wording(Locale.GERMAN, UnitSystem.METRIC));
        assertEquals(JobView.State.WORKED, slip.state());
        JobView.Answer rows = slip.answers().get("rows");
        assertEquals(2, rows.rows().size());
        assertEquals("a", rows.rows().get(0).id());
        assertEquals("3,0", rows.rows().get(0).cells().get("at").value());
        assertEquals("mm", rows.rows().get(0).cells().get("at").unit());
        assertEquals(3, rows.rows().get(0).cells().get("at").number().orElseThrow());
        assertEquals(
                List.of("at", "factor"), List.copyOf(rows.rows().get(0).cells().keySet()));
        assertEquals(
                List.of("at", "remark", "factor"),
                List.copyOf(rows.rows().get(1).cells().keySet()));
    }

    @Test
    void aSlipThatWasNotWorkedShowsNeitherQuestionsNorAnswers() {
        JobView.Slip slip = seen(worked("'thickness': '2 mm', 'stamp': 'refuse'"), Shop.ENGLISH);
        assertEquals(JobView.State.REFUSED, slip.state());
        assertEquals(Map.of(), slip.questions());
        assertEquals(Map.of(), slip.answers());
    }
}
