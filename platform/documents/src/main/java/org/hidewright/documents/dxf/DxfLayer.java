package org.hidewright.documents.dxf;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.drawing.Role;
import org.hidewright.documents.Roles;

/** The layer of each kind of line: named by what it means, with a colour of its own. */
final class DxfLayer {
    private static final Map<Role, Integer> COLOURS = new EnumMap<>(Role.class);

    static {
        COLOURS.put(Role.CUT, 7);
        COLOURS.put(Role.FINISHED_EDGE, 8);
        COLOURS.put(Role.INNER_CUT, 1);
        COLOURS.put(Role.MARK, 5);
        COLOURS.put(Role.STITCH, 3);
        COLOURS.put(Role.STITCH_HOLE, 4);
        COLOURS.put(Role.FOLD, 6);
        COLOURS.put(Role.DIRECTION, 9);
        COLOURS.put(Role.SHEET, 9);
        COLOURS.put(Role.NOTE, 2);
    }

    private DxfLayer() {}

    static String name(Role role) {
        return Roles.name(role).toUpperCase(Locale.ROOT);
    }

    /** Number of the colour in the usual palette. */
    static int colour(Role role) {
        return COLOURS.getOrDefault(role, 7);
    }
}
