package net.example.fieldkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.JobView.Answer;
import org.hidewright.api.document.JobView.Slip;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.SectionContributor;
import org.hidewright.api.document.TickList;
import org.osgi.service.component.annotations.Component;

/** The list that goes into the bag, to be ticked off before one leaves: a document of its own beside the job card. */
@Component(service = SectionContributor.class)
public final class KitPaper implements SectionContributor {
    private static final String ID = "net.example.fieldkit.kit-list.packing-list";
    private static final Texts TEXTS = Texts.beside(KitPaper.class);

    @Override
    public List<Section> sections(JobView job) {
        List<Block> blocks = new ArrayList<>();
        for (Slip slip : job.worked("kit-list")) {
            blocks.add(Paragraph.of(text(
                    job.language(),
                    "packing-list.of",
                    slip.title(),
                    slip.answers().get("count").value(),
                    slip.answers().get("together").inline())));
            blocks.add(TickList.of(slip.questions().get("things").rows().stream()
                    .map(row -> step(row.id(), row.cells()))
                    .toList()));
        }
        return blocks.isEmpty()
                ? List.of()
                : List.of(Section.of(ID, text(job.language(), "packing-list.title"), blocks)
                        .apart());
    }

    private static TickList.Step step(String thing, Map<String, Answer> cells) {
        return TickList.Step.of(
                cells.get("count").value() + " × " + thing.replace('-', ' '),
                cells.get("mass").inline());
    }

    private static String text(Locale language, String key, String... words) {
        return TEXTS.filled(key, language, words);
    }
}
