package org.hidewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.HideOutlines;
import org.hidewright.core.outline.HideRow;
import org.hidewright.core.outline.Outlined;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.TextFile;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * Reads the outline of a hide and its flaws from a drawing, and prints what is to be put into a project or the workshop.
 *
 * <p>What is printed is called as the workshop’s table of hides calls it. That table is brought by a bundle, and nothing here
 * knows which: a test of the built program puts what is printed into a project and has it worked out.
 */
final class OutlinesCommand implements Subcommand {
    private static final String JSON = "--json";

    @Override
    public String name() {
        return "outlines";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FILE")
                .type(String.class)
                .required(true)
                .arity("1")
                .description(texts.text("outlines.file"))
                .build());
        spec.addOption(SharedOptions.flag(JSON, texts.text("outlines.json")));
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument, FileTrouble {
        Session session = asked.in(SharedOptions.wording(arguments, asked, Optional.empty(), Optional.empty()));
        String name = arguments.matchedPositionalValue(0, "");
        Path file = FileText.named(name, session.texts());
        DrawingReader reader = reader(file, session);
        HideOutlines outlines = new HideOutlines(reader.read(TextFile.bytes(file)));
        outlines.remarks().forEach(remark -> session.tell(session.err(), remark));
        if (outlines.hide().isEmpty()) {
            return ExitCode.REFUSED;
        }
        Outlined hide = outlines.hide().get();
        if (arguments.hasMatchedOption(JSON)) {
            session.out().print(JsonOut.write(row(id(file, reader), hide, outlines.flaws())));
        } else {
            print(hide, outlines.flaws(), session);
        }
        return ExitCode.DONE;
    }

    private static DrawingReader reader(Path file, Session session) throws BadArgument {
        List<DrawingReader> readers = session.paper().readers();
        if (readers.isEmpty()) {
            throw new BadArgument(session.texts().text("outlines.no-reader"));
        }
        return DrawingReader.of(readers, file)
                .orElseThrow(() -> new BadArgument(
                        session.texts().text("outlines.other-kind", file, DrawingReader.endings(readers))));
    }

    /** What the row of a project is called: as the file is. */
    private static String id(Path file, DrawingReader reader) {
        String words = reader.title(file)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return words.isEmpty() ? "hide" : words;
    }

    private static Map<String, Object> row(String id, Outlined hide, List<Outlined> flaws) {
        Map<String, Object> outlines = new LinkedHashMap<>();
        outlines.put(HideRow.OUTLINE, hide.text());
        outlines.put(HideRow.FLAWS, flaws.stream().map(Outlined::text).toList());
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", id);
        row.put("hide", outlines);
        return row;
    }

    private static void print(Outlined hide, List<Outlined> flaws, Session session) {
        CommandTexts texts = session.texts();
        List<List<String>> rows = new ArrayList<>();
        rows.add(cells(texts.text("outlines.hide"), hide, texts));
        flaws.forEach(flaw -> rows.add(cells(flaw.kind(), flaw, texts)));
        new TextTable(rows).print(session.out());
        session.out().println();
        session.out().println(texts.text("outlines.outline"));
        session.out().println(hide.text());
        if (!flaws.isEmpty()) {
            session.out().println();
            session.out().println(texts.text("outlines.flaws"));
            // with what parts them in a field of the window
            session.out()
                    .println(String.join(
                            ";\n", flaws.stream().map(Outlined::text).toList()));
        }
        session.out().println();
        session.out().println(texts.text("outlines.next"));
    }

    private static List<String> cells(String what, Outlined outlined, CommandTexts texts) {
        return List.of(
                what,
                texts.text(
                        "outlines.size",
                        Length.ofMm(outlined.bounds().width()),
                        Length.ofMm(outlined.bounds().height())),
                texts.wording().quantity(Area.ofMm2(outlined.region().area())),
                texts.text(
                        "outlines.drawn",
                        outlined.line().entity(),
                        outlined.line().at().line()));
    }
}
