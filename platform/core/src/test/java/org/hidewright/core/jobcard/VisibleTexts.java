package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.BigAnswer;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.document.Working;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Shape;

/** Every text a reader of a document can see. */
final class VisibleTexts {
    private final List<String> texts = new ArrayList<>();

    private VisibleTexts() {}

    static List<String> of(Document document) {
        VisibleTexts visible = new VisibleTexts();
        visible.add(document.title(), document.project(), document.dateText(), document.pageText(1, 2));
        document.meta().forEach(visible::add);
        document.sections().forEach(visible::section);
        visible.texts.removeIf(String::isBlank);
        return visible.texts;
    }

    private void add(String... more) {
        texts.addAll(List.of(more));
    }

    private void section(Section section) {
        add(section.title());
        section.blocks().forEach(this::block);
    }

    private void block(Block block) {
        if (block instanceof Paragraph paragraph) {
            add(paragraph.text());
        } else if (block instanceof BigAnswer big) {
            add(big.label(), big.value(), big.unit(), big.fromTo(), big.reason());
        } else if (block instanceof Table table) {
            table.columns().forEach(column -> add(column.title()));
            table.rows().forEach(texts::addAll);
        } else if (block instanceof Working working) {
            working.lines()
                    .forEach(line -> add(line.what(), line.formula(), line.numbers(), line.result(), line.source()));
        } else if (block instanceof Checks checks) {
            checks.checks().forEach(check -> add(check.severityText(), check.what(), check.why(), check.next()));
        } else if (block instanceof Sources sources) {
            sources.entries().forEach(entry -> add(entry.kind(), entry.text()));
        } else if (block instanceof Figure figure) {
            add(figure.caption(), figure.trueSizeText(), figure.reducedText());
            figure.drawing().shapes().forEach(this::shape);
        } else if (block instanceof TickList ticks) {
            ticks.steps().forEach(step -> add(step.text(), step.detail()));
        } else if (block instanceof NoteSpace space) {
            add(space.label());
        } else {
            throw new AssertionError("a block that is not looked at: " + block);
        }
    }

    private void shape(Shape shape) {
        if (shape instanceof Label label) {
            add(label.text());
        } else if (shape instanceof DimensionLine dimension) {
            add(dimension.text());
        }
    }
}
