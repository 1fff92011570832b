package org.hidewright.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.core.packet.PacketTrouble;
import org.hidewright.core.packet.Papers;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.project.Project;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** What a packet is put on: the paper of its pages, that of its patterns, and the kinds of drawing files. */
final class PacketPapers {
    private static final String PAPER = "--paper";
    private static final String PATTERN_PAPER = "--pattern-paper";
    private static final String DRAWINGS = "--drawings";
    private static final String NO_DRAWINGS = "none";

    private PacketPapers() {}

    static void describe(CommandSpec spec, CommandTexts texts) {
        option(spec, PAPER, "PAPER", texts.text("make.paper"));
        option(spec, PATTERN_PAPER, "PAPER", texts.text("make.pattern-paper"));
        option(spec, DRAWINGS, "KIND,…", texts.text("make.drawings"));
    }

    private static void option(CommandSpec spec, String name, String value, String text) {
        spec.addOption(OptionSpec.builder(name)
                .paramLabel(value)
                .type(String.class)
                .description(text)
                .build());
    }

    /** @throws BadArgument if a paper or a kind of drawing is not known */
    static Papers of(ParseResult arguments, Project project, Session session) throws BadArgument {
        Paper pages =
                paper(arguments.matchedOptionValue(PAPER, Papers.usual(project).title()), session);
        String patterns = arguments.matchedOptionValue(PATTERN_PAPER, (String) null);
        String kinds = arguments.matchedOptionValue(DRAWINGS, (String) null);
        return new Papers(pages, patterns == null ? pages : paper(patterns, session), drawings(kinds, session));
    }

    private static Paper paper(String name, Session session) throws BadArgument {
        return Paper.of(name)
                .orElseThrow(() -> new BadArgument(session.texts()
                        .text(
                                "trouble.paper",
                                name,
                                Arrays.stream(Paper.values()).map(Paper::title).collect(Collectors.joining(", ")))));
    }

    private static List<DrawingWriter> drawings(String kinds, Session session) throws BadArgument {
        List<DrawingWriter> writers = session.paper().drawings();
        if (kinds == null) {
            return Papers.usual(writers);
        }
        List<DrawingWriter> wanted = new ArrayList<>();
        for (String kind : kinds.split(",")) {
            if (!kind.strip().equals(NO_DRAWINGS)) {
                wanted.add(writers.stream()
                        .filter(writer -> writer.kind().equals(kind.strip()))
                        .findFirst()
                        .orElseThrow(() -> new BadArgument(session.texts()
                                .text(
                                        "trouble.drawings",
                                        kind.strip(),
                                        Stream.concat(writers.stream().map(DrawingWriter::kind), Stream.of(NO_DRAWINGS))
                                                .collect(Collectors.joining(", "))))));
            }
        }
        return wanted;
    }

    /** Why a packet cannot be written, and how to go on. */
    static String words(PacketTrouble trouble, CommandTexts texts) {
        return texts.text("trouble." + trouble.kind().key(), trouble.args().toArray());
    }
}
