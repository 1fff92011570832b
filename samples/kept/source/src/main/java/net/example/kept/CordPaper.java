package net.example.kept;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.SectionContributor;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.osgi.service.component.annotations.Component;

/** What to cut from the reel, a document of its own. */
@Component(service = SectionContributor.class)
public final class CordPaper implements SectionContributor {
    private static final Texts TEXTS = Texts.beside(CordPaper.class);

    @Override
    public List<Section> sections(JobView job) {
        List<Block> blocks = new ArrayList<>();
        for (JobView.Slip slip : job.worked("kept-cord")) {
            blocks.add(Paragraph.of(TEXTS.filled(
                    "reel.of", job.language(), slip.title(), slip.answers().get("cord").inline())));
            Table.Builder table = Table.builder()
                    .column(TEXTS.filled("reel.thing", job.language()))
                    .numbers(TEXTS.filled("reel.each", job.language()));
            List<TickList.Step> ticks = new ArrayList<>();
            for (JobView.Row row : slip.answers().get("lines").rows()) {
                table.row(row.id(), row.cells().get("each").inline());
                ticks.add(TickList.Step.of(row.id(), row.cells().get("together").inline()));
            }
            blocks.add(table.build());
            blocks.add(TickList.of(ticks));
        }
        return blocks.isEmpty()
                ? List.of()
                : List.of(Section.of("net.example.kept.reel", TEXTS.filled("reel.title", job.language()), blocks)
                        .apart());
    }
}
