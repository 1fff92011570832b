package org.hidewright.core.jobcard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.PatternSheets;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Table;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.core.item.ItemCheck;
import org.hidewright.core.item.ItemChecks;
import org.hidewright.core.item.PartPattern;
import org.hidewright.core.paper.DrawingWriter.Named;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.GivenSections;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** The patterns of all items of a project: on paper, and as drawings for machines. */
final class Patterns {
    /** Name of the document, and the beginning of the names of drawings. */
    static final String NAME = "patterns";

    private static final List<Role> LEGEND = List.of(
            Role.CUT,
            Role.FINISHED_EDGE,
            Role.INNER_CUT,
            Role.STITCH,
            Role.STITCH_HOLE,
            Role.FOLD,
            Role.MARK,
            Role.DIRECTION);

    private final WorkedProject worked;
    private final Wording wording;

    Patterns(WorkedProject worked, Wording wording) {
        this.worked = worked;
        this.wording = wording;
    }

    private CutList cutList(WorkedSlip slip) {
        return new CutList(wording, new SlipWording(slip, wording).lengths());
    }

    /** The items a slip answers, those of other slips after it. */
    private Map<WorkedSlip, List<Item>> items() {
        Map<WorkedSlip, List<Item>> items = new LinkedHashMap<>();
        for (WorkedSlip slip : worked.slips().values()) {
            List<Item> own = slip.answers().stream()
                    .flatMap(answers -> slip.installed().orElseThrow().calculator().declaration().answers().stream()
                            .flatMap(answer -> answers.get(answer.key()).stream()))
                    .filter(Item.class::isInstance)
                    .map(item -> new SlipWording(slip, wording).said((Item) item))
                    .toList();
            if (!own.isEmpty()) {
                items.put(slip, own);
            }
        }
        return items;
    }

    /** The patterns as a document; empty where no slip answers an item. */
    Optional<Document> document(LocalDate date) {
        Map<WorkedSlip, List<Item>> items = items();
        if (items.isEmpty()) {
            return Optional.empty();
        }
        Document.Builder document = Document.of(worked.project().name(), wording.host("patterns.title"))
                .dated(date, wording.date(date))
                .pageText(wording.host("job-card.page", "{0}", "{1}"))
                .language(wording.language())
                .section(Section.of(
                        "print",
                        "",
                        Paragraph.of(wording.host("patterns.print")),
                        Paragraph.of(wording.host("patterns.join")),
                        Figure.fitted(legend(), wording.host("patterns.lines"))));
        boolean several = items.values().stream().mapToInt(List::size).sum() > 1;
        List<Drawn> drawn = new ArrayList<>();
        items.forEach((slip, own) -> own.forEach(item -> drawn.add(drawn(slip, item, several))));
        drawn.forEach(one -> document.section(list(one))); // all before the first sheet: none takes a page of its own
        drawn.forEach(one -> document.section(sheets(one)));
        return Optional.of(document.build());
    }

    /** An item of a slip with the patterns of its parts, in their order. */
    private record Drawn(WorkedSlip slip, Item item, List<PatternSheets.Pattern> patterns) {}

    /** @param several whether there are parts of other items in the document, so that each has to say of which it is */
    private Drawn drawn(WorkedSlip slip, Item item, boolean several) {
        List<ItemCheck> checks = ItemChecks.of(item);
        List<PatternSheets.Pattern> patterns = new ArrayList<>();
        for (Part part : item.parts()) {
            List<String> lines = lines(slip, part, count(part));
            if (several) {
                lines.add(1, new SlipWording(slip, wording).title());
            }
            patterns.add(new PatternSheets.Pattern(part.name(), PartPattern.marked(part, checks, words(lines))));
        }
        return new Drawn(slip, item, patterns);
    }

    private static boolean isTooLarge(PatternSheets.Pattern pattern) {
        Box bounds = pattern.drawing().bounds();
        return bounds.width() * bounds.height() > GivenSections.LARGEST_PATTERN_MM2;
    }

    /** What is to be cut, part by part. */
    private Section list(Drawn drawn) {
        Table.Builder table = Table.builder()
                .column(wording.host("patterns.part"))
                .column(wording.host("patterns.leather"))
                .numbers(wording.host("patterns.cut-as-drawn"))
                .numbers(wording.host("patterns.cut-turned-over"))
                .numbers(wording.host("patterns.size"));
        CutList cutList = cutList(drawn.slip());
        List<Block> large = new ArrayList<>();
        for (int i = 0; i < drawn.patterns().size(); i++) {
            Part part = drawn.item().parts().get(i);
            String size = cutList.size(part.outline(), 0);
            table.row(
                    part.name(),
                    cutList.leather(part),
                    Integer.toString(part.count()),
                    Integer.toString(part.mirrored()),
                    size);
            if (isTooLarge(drawn.patterns().get(i))) {
                large.add(Paragraph.of(wording.host("patterns.too-large", part.name(), size)));
            }
        }
        List<Block> blocks = new ArrayList<>(List.of(table.build()));
        blocks.addAll(large);
        return Section.of(drawn.slip().slip().id(), new SlipWording(drawn.slip(), wording).title(), blocks);
    }

    /** The parts in true size. */
    private Section sheets(Drawn drawn) {
        return Section.of(
                drawn.slip().slip().id() + "-sheets",
                "",
                PatternSheets.of(
                        drawn.patterns().stream()
                                .filter(pattern -> !isTooLarge(pattern))
                                .toList(),
                        wording.host("patterns.true-size"),
                        wording.host("patterns.behind"),
                        wording.host("patterns.tile", "{0}", "{1}", "{2}", "{3}", "{4}")));
    }

    private String count(Part part) {
        return part.mirrored() == 0
                ? wording.host("patterns.cut", part.count())
                : wording.host("patterns.cut-both", part.count(), part.mirrored());
    }

    private PartPattern.Words words(List<String> lines) {
        return new PartPattern.Words(lines, hole -> wording.drawn(Length.ofMm(hole.diameter())));
    }

    /** The lines on a part. */
    private List<String> lines(WorkedSlip slip, Part part, String count) {
        List<String> lines = new ArrayList<>(List.of(part.name(), count));
        String leather = cutList(slip).leather(part);
        if (!leather.isEmpty()) {
            lines.add(leather);
        }
        if (part.oversize() > 0) {
            lines.add(wording.host("patterns.trim", Length.ofMm(part.oversize())));
        }
        if (part.sanded() > 0) {
            lines.add(wording.host("patterns.sanded", Length.ofMm(part.sanded())));
        }
        if (part.shows().size() == Face.values().length) {
            lines.add(wording.host("patterns.both-show"));
        } else if (part.shows().contains(Face.FLESH)) {
            lines.add(wording.host("patterns.flesh-shows"));
        }
        return lines;
    }

    /** Each kind of line that can be on a pattern, with its name. */
    private Drawing legend() {
        Drawing.Builder legend = Drawing.builder();
        double y = 0;
        for (Role role : LEGEND) {
            Shape sample = role == Role.STITCH_HOLE
                    ? Circle.of(role, Point.of(15, y), 0.6)
                    : Path.line(role, Point.of(0, y), Point.of(30, y));
            legend.add(sample);
            String key = "patterns.line." + role.name().toLowerCase(Locale.ROOT).replace('_', '-');
            legend.label(wording.host(key), Point.of(36, y), Anchor.LEFT, 2.6);
            y -= 6;
        }
        return legend.build();
    }

    /**
     * The parts of all items as drawings, by the name their files begin with; a part of which some are cut turned over is
     * there both ways.
     */
    Map<String, List<Named>> drawings() {
        Map<String, List<Named>> drawings = new LinkedHashMap<>();
        items().forEach((slip, own) -> {
            List<String> ids = new ArrayList<>();
            List<String> titles = new ArrayList<>();
            List<Drawing> parts = new ArrayList<>();
            for (Part part : own.stream().flatMap(item -> item.parts().stream()).toList()) {
                if (part.count() > 0) {
                    String count = wording.host("patterns.cut", part.count());
                    ids.add(part.id());
                    titles.add(part.name() + ", " + count);
                    parts.add(PartPattern.of(part, words(lines(slip, part, count))));
                }
                if (part.mirrored() > 0) {
                    String count = wording.host("patterns.cut-over", part.mirrored());
                    ids.add(part.id() + ".turned-over");
                    titles.add(part.name() + ", " + count);
                    parts.add(PartPattern.turnedOver(part, words(lines(slip, part, count))));
                }
            }
            List<Drawing> laid = PartPattern.sideBySide(parts);
            List<Named> named = new ArrayList<>();
            for (int i = 0; i < laid.size(); i++) {
                named.add(new Named(ids.get(i), titles.get(i), laid.get(i)));
            }
            drawings.put(NAME + "-" + slip.slip().id(), named);
        });
        return drawings;
    }
}
