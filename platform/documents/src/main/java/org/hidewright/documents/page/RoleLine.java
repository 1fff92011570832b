package org.hidewright.documents.page;

import java.util.EnumMap;
import java.util.Map;
import org.hidewright.api.drawing.Role;

/**
 * How the line of each role looks. No two share a pattern: weight alone, or colour alone, would be lost on a copy of a copy.
 *
 * @param line its ink
 * @param fill what a closed path is filled with; {@code null} for nothing
 * @param arrows whether an open path has a point at both ends
 */
record RoleLine(Line line, Tone fill, boolean arrows) {
    private static final Map<Role, RoleLine> TABLE = new EnumMap<>(Role.class);

    static {
        TABLE.put(Role.CUT, plain(Line.solid(0.5, Tone.INK)));
        TABLE.put(Role.FINISHED_EDGE, plain(Line.dashed(0.25, 8.0, 1.5)));
        TABLE.put(Role.INNER_CUT, plain(Line.dashed(0.35, 3.6, 0.5)));
        TABLE.put(Role.MARK, plain(Line.dashed(0.2, 0.9, 0.9)));
        TABLE.put(Role.STITCH, plain(Line.dashed(0.35, 2.2, 1.3)));
        TABLE.put(Role.STITCH_HOLE, new RoleLine(Line.solid(0.1, Tone.INK), Tone.INK, false));
        TABLE.put(Role.FOLD, plain(Line.dashed(0.25, 6.0, 1.1, 1.0, 1.1)));
        TABLE.put(Role.DIRECTION, new RoleLine(Line.solid(0.3, Tone.INK), null, true));
        TABLE.put(Role.NOTE, plain(Line.solid(0.15, Tone.QUIET)));
        TABLE.put(Role.SECTION, new RoleLine(Line.solid(0.1, Tone.INK), Tone.LEATHER, false));
        TABLE.put(Role.GRAIN, plain(Line.solid(0.8, Tone.INK)));
        TABLE.put(Role.FLESH, plain(Line.dotted(0.45, 0.9)));
        TABLE.put(Role.HARDWARE, new RoleLine(Line.solid(0.4, Tone.INK), Tone.METAL, false));
        TABLE.put(Role.SHEET, plain(Line.dashed(0.2, 14.0, 1.0)));
    }

    private static RoleLine plain(Line line) {
        return new RoleLine(line, null, false);
    }

    static RoleLine of(Role role) {
        return TABLE.getOrDefault(role, TABLE.get(Role.NOTE));
    }
}
