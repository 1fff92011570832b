package org.hidewright.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.core.jobcard.Packet;
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
    /** Kinds of drawing files written unless others are asked for. */
    private static final List<String> USUAL_DRAWINGS = List.of("svg", "dxf");

    private static final String NO_DRAWINGS = "none";

    private final Paper pages;
    private final Paper patterns;
    private final List<DrawingWriter> drawings;

    private PacketPapers(Paper pages, Paper patterns, List<DrawingWriter> drawings) {
        this.pages = pages;
        this.patterns = patterns;
        this.drawings = drawings;
    }

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
    static PacketPapers of(ParseResult arguments, Project project, Session session) throws BadArgument {
        Paper pages = paper(
                arguments.matchedOptionValue(
                        PAPER,
                        project.shown("paper")
                                .filter(name -> Paper.of(name).isPresent())
                                .orElse("A4")),
                session);
        String patterns = arguments.matchedOptionValue(PATTERN_PAPER, (String) null);
        String kinds = arguments.matchedOptionValue(DRAWINGS, (String) null);
        return new PacketPapers(pages, patterns == null ? pages : paper(patterns, session), drawings(kinds, session));
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
            return writers.stream()
                    .filter(writer -> USUAL_DRAWINGS.contains(writer.kind()))
                    .toList();
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

    /** The paper of a document. */
    Paper of(String document) {
        return Packet.isPatterns(document) ? patterns : pages;
    }

    /** The drawing files of a packet by name. */
    Map<String, byte[]> files(Packet packet) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        packet.drawings()
                .forEach((name, parts) -> drawings.forEach(
                        writer -> files.put(name + writer.ending(), writer.write(packet.project(), parts))));
        return files;
    }
}
