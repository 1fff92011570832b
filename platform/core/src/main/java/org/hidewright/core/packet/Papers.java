package org.hidewright.core.packet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.core.jobcard.Packet;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.project.Project;

/**
 * What a packet is put on.
 *
 * @param pages the paper of its pages
 * @param patterns that of its patterns, which may be larger
 * @param drawings who writes its drawing files
 */
public record Papers(Paper pages, Paper patterns, List<DrawingWriter> drawings) {
    /** Kinds of drawing files written unless others are asked for. */
    private static final List<String> USUAL_DRAWINGS = List.of("svg", "dxf");

    /** The paper a project is shown on, unless another is asked for. */
    public static Paper usual(Project project) {
        return project.shown("paper").flatMap(Paper::of).orElse(Paper.A4);
    }

    /** The kinds of drawing files that are written unless others are asked for. */
    public static List<DrawingWriter> usual(List<DrawingWriter> all) {
        return all.stream()
                .filter(writer -> USUAL_DRAWINGS.contains(writer.kind()))
                .toList();
    }

    /** The paper of a document. */
    public Paper of(String document) {
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
