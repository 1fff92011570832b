package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.BigAnswer;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.PatternSheets;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.document.Working;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Shape;

/** Whether what a bundle gave as its sections of a job card are sections, and no more of them than can be shown. */
public final class GivenSections {
    static final int MOST_LINES = 2000;
    static final int MOST_COLUMNS = 40;
    /** A figure takes more time than lines of text do. */
    private static final int LINES_OF_A_FIGURE = 100;

    /** Square millimetres of a pattern that nobody would print and paste together: some hundred sheets. */
    public static final double LARGEST_PATTERN_MM2 = 4e6;

    static final int MOST_CHARACTERS = 200_000;

    /** The id of a section that stands apart: its last part is safe as the name of a file everywhere. */
    private static final Pattern FILE_NAME = Pattern.compile("(.*\\.)?[a-z0-9]+(-[a-z0-9]+){0,9}");

    private final List<Section> sections = new ArrayList<>();
    private long lines;
    private long characters;

    private GivenSections() {}

    /**
     * The sections given.
     *
     * @param given what the bundle gave, copied already, so that reading it runs no code of the bundle; may be null
     * @throws org.hidewright.core.catalogue.BundleFault if something in it is no section or cannot be shown
     */
    public static List<Section> of(List<?> given) {
        if (given == null) {
            throw Nonsense.of("section-none");
        }
        GivenSections checked = new GivenSections();
        given.forEach(checked::section);
        return checked.sections;
    }

    private void section(Object given) {
        if (!(given instanceof Section section)) { // as raw types allow
            throw Nonsense.of(
                    "section", given == null ? "null" : given.getClass().getName());
        }
        lines(1);
        texts(section.id(), section.title());
        if (section.standsApart() && !FILE_NAME.matcher(section.id()).matches()) {
            throw Nonsense.of("section-apart", section.id());
        }
        section.blocks().forEach(this::block);
        sections.add(section);
    }

    private void lines(int more) {
        lines += Math.max(0, more);
        if (lines > MOST_LINES) {
            throw Nonsense.of("section-lines", MOST_LINES);
        }
    }

    private void texts(String... texts) {
        for (String text : texts) {
            text(text);
        }
    }

    private void text(String text) {
        if (text.length() > Sayable.LONGEST_TEXT) {
            throw Nonsense.of("section-text", text.length(), Sayable.LONGEST_TEXT);
        }
        characters += text.length();
        if (characters > MOST_CHARACTERS) {
            throw Nonsense.of("section-characters", MOST_CHARACTERS);
        }
    }

    private void block(Block block) {
        lines(1);
        if (block instanceof Paragraph paragraph) {
            text(paragraph.text());
        } else if (block instanceof BigAnswer big) {
            texts(big.label(), big.value(), big.unit(), big.fromTo(), big.reason());
        } else if (block instanceof Table table) {
            table(table);
        } else if (block instanceof Bars bars) {
            lines(bars.bars().size());
            text(bars.caption());
            bars.bars().forEach(this::bar);
        } else if (block instanceof Working working) {
            lines(working.lines().size());
            working.lines()
                    .forEach(line -> texts(line.what(), line.formula(), line.numbers(), line.result(), line.source()));
        } else if (block instanceof Checks checks) {
            lines(checks.checks().size());
            checks.checks().forEach(check -> texts(check.severityText(), check.what(), check.why(), check.next()));
        } else if (block instanceof Sources sources) {
            lines(sources.entries().size());
            sources.entries().forEach(entry -> texts(entry.kind(), entry.text()));
        } else if (block instanceof TickList list) {
            lines(list.steps().size());
            list.steps().forEach(step -> texts(step.text(), step.detail()));
        } else if (block instanceof NoteSpace space) {
            lines(space.lines());
            text(space.label());
        } else if (block instanceof Figure figure) {
            texts(figure.caption(), figure.trueSizeText(), figure.reducedText());
            drawing(figure.caption(), figure.drawing());
        } else if (block instanceof PatternSheets sheets) {
            texts(sheets.trueSizeText(), sheets.behindText(), sheets.tileText("", 1, 1, 1, 1));
            sheets.patterns().forEach(this::pattern);
        }
    }

    private void bar(Bars.Bar bar) {
        lines(bar.stretches().size());
        texts(bar.label(), bar.text());
    }

    private void table(Table table) {
        if (table.columns().size() > MOST_COLUMNS) {
            throw Nonsense.of("section-columns", table.columns().size(), MOST_COLUMNS);
        }
        lines(table.rows().size());
        text(table.caption());
        table.columns().forEach(column -> text(column.title()));
        table.rows().forEach(row -> row.forEach(this::text));
    }

    private void pattern(PatternSheets.Pattern pattern) {
        text(pattern.name());
        drawing(pattern.name(), pattern.drawing());
        Box box = pattern.drawing().bounds();
        double area = box.width() * box.height();
        if (area > LARGEST_PATTERN_MM2) {
            throw Nonsense.of("section-pattern", pattern.name(), LARGEST_PATTERN_MM2 / 1e6);
        }
    }

    private void drawing(String name, Drawing drawing) {
        lines(LINES_OF_A_FIGURE);
        Drawable.check(name, drawing);
        for (Shape shape : drawing.shapes()) {
            Object words = shape instanceof Label label
                    ? label.words()
                    : shape instanceof DimensionLine line ? line.words() : "";
            if (!(words instanceof String text)) {
                throw Nonsense.of("section-words", name);
            }
            text(text);
        }
    }
}
