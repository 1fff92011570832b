package org.hidewright.documents.pdf;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.BigAnswer;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.document.Working;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Label;

/** Every text a document holds, to look for on its pages. */
final class DocumentTexts {
    private final List<String> texts = new ArrayList<>();

    static List<String> of(Document document) {
        DocumentTexts all = new DocumentTexts();
        all.add(document.title());
        document.meta().forEach(all::add);
        document.sections().forEach(section -> {
            all.add(section.title());
            section.blocks().forEach(all::block);
        });
        return all.texts;
    }

    private void add(String... more) {
        for (String text : more) {
            String solid = text.replaceAll("[\\s\\p{Z}]", "");
            if (!solid.isEmpty()) {
                texts.add(solid);
            }
        }
    }

    private void block(Block block) {
        if (block instanceof Paragraph paragraph) {
            add(paragraph.text());
        } else if (block instanceof BigAnswer answer) {
            add(answer.label(), answer.value(), answer.unit(), answer.fromTo(), answer.reason());
        } else if (block instanceof Table table) {
            table.columns().forEach(column -> add(column.title()));
            table.rows().forEach(row -> row.forEach(this::add));
        } else if (block instanceof Working working) {
            working.lines()
                    .forEach(line -> add(line.what(), line.formula(), line.numbers(), line.result(), line.source()));
        } else if (block instanceof Checks checks) {
            checks.checks().forEach(check -> add(check.severityText(), check.what(), check.why(), check.next()));
        } else if (block instanceof Sources sources) {
            sources.entries().forEach(entry -> add(entry.kind(), entry.text()));
        } else if (block instanceof TickList list) {
            list.steps().forEach(step -> add(step.text(), step.detail()));
        } else if (block instanceof NoteSpace space) {
            add(space.label());
        } else if (block instanceof Figure figure) {
            figure(figure);
        }
    }

    private void figure(Figure figure) {
        add(figure.caption(), figure.trueSizeText());
        figure.drawing().shapes().forEach(shape -> {
            if (shape instanceof Label label) {
                add(label.text());
            } else if (shape instanceof DimensionLine line) {
                add(line.text());
            }
        });
    }
}
