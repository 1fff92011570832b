package org.hidewright.window.workshop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.Slip;
import org.hidewright.core.project.StockUses;
import org.hidewright.core.wording.FieldWording;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.window.words.WindowTexts;

/** Says which questions of projects take a row, and how the copies they keep stand to the row as it is now. */
public record RowUses(Catalogue catalogue, Wording wording, WindowTexts texts) {
    private static final String NOTHING = "–";

    /** One line for each project and question, in the order of the projects. */
    public List<RowUse> of(Table table, Row row, Map<Path, Project> projects) {
        List<RowUse> uses = new ArrayList<>();
        projects.forEach((file, project) -> {
            for (StockUses.Use use : StockUses.of(project)) {
                String wanted = use.link().row();
                if (use.link().table().equals(row.table()) && (wanted.isEmpty() || wanted.equals(row.id()))) {
                    uses.add(use(table, row, file, project, use));
                }
            }
        });
        return List.copyOf(uses);
    }

    private RowUse use(Table table, Row row, Path file, Project project, StockUses.Use use) {
        Optional<Row> kept = project.kept().flatMap(copies -> copy(copies, row));
        List<String> differences = new ArrayList<>();
        kept.ifPresent(copy -> table.columns().stream()
                .filter(column ->
                        use.link().column().isEmpty() || use.link().column().equals(column.key()))
                .forEach(column -> difference(column, copy, row).ifPresent(differences::add)));
        String said = kept.isEmpty()
                ? texts.text("uses.no-copy")
                : differences.isEmpty() ? texts.text("uses.same") : String.join("; ", differences);
        String name = project.name().isEmpty() ? String.valueOf(file.getFileName()) : project.name();
        return new RowUse(file, name, where(use), said, !differences.isEmpty());
    }

    private static Optional<Row> copy(Workshop copies, Row row) {
        return copies.row(row.table(), row.id());
    }

    private Optional<String> difference(Column column, Row kept, Row now) {
        String was = kept.cell(column.key()).orElse(NOTHING);
        String is = now.cell(column.key()).orElse(NOTHING);
        return was.equals(is)
                ? Optional.empty()
                : Optional.of(texts.text(
                        "uses.differs",
                        new FieldWording(Optional.of(column.texts()), wording).label(column.question()),
                        was,
                        is));
    }

    private String where(StockUses.Use use) {
        Slip slip = use.slip();
        Optional<Installed> known = catalogue.find(slip.calculator());
        String title = slip.title()
                .or(() -> known.map(installed -> wording.text(
                        installed.calculator().texts(),
                        installed.calculator().declaration().titleKey())))
                .orElse(slip.calculator());
        String inside = use.path().toString();
        Optional<Question> question = known.flatMap(installed ->
                installed.calculator().declaration().question(use.path().question()));
        String label = question.map(asked -> new FieldWording(
                                known.map(installed -> installed.calculator().texts()), wording)
                        .label(asked))
                .orElse(use.path().question());
        String deeper = inside.substring(use.path().question().length()).replaceFirst("^\\.", "");
        return wording.host("job-card.linked", title, label) + (deeper.isEmpty() ? "" : " " + deeper);
    }
}
