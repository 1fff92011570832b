package org.hidewright.documents.svg;

import java.util.EnumMap;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.hidewright.api.drawing.Role;

/**
 * How the lines of a role look on a screen; a machine goes by the groups.
 *
 * @param stroke colour of the line
 * @param dashes lengths of dash and gap; empty for an unbroken line
 * @param filled whether it is filled with the colour, and has no line
 */
record SvgLook(String stroke, double width, String dashes, boolean filled) {
    /** Height of a capital as a share of the letters' size, as most sans serif typefaces have it. */
    static final double CAPITAL = 0.7;

    private static final String INK = "#1a1a1a";
    private static final Map<Role, SvgLook> TABLE = new EnumMap<>(Role.class);

    static {
        TABLE.put(Role.CUT, new SvgLook(INK, 0.35, "", false));
        TABLE.put(Role.FINISHED_EDGE, new SvgLook(INK, 0.25, "8 1.5", false));
        TABLE.put(Role.INNER_CUT, new SvgLook("#9e3314", 0.3, "", false));
        TABLE.put(Role.MARK, new SvgLook("#1f5fa8", 0.2, "0.9 0.9", false));
        TABLE.put(Role.STITCH, new SvgLook("#2e7d32", 0.25, "2.2 1.3", false));
        TABLE.put(Role.STITCH_HOLE, new SvgLook("#2e7d32", 0, "", true));
        TABLE.put(Role.FOLD, new SvgLook("#6a3d9a", 0.25, "6 1.1 1 1.1", false));
        TABLE.put(Role.DIRECTION, new SvgLook("#5c5c5c", 0.3, "", false));
        TABLE.put(Role.SHEET, new SvgLook("#5c5c5c", 0.2, "14 1", false));
        TABLE.put(Role.NOTE, new SvgLook("#5c5c5c", 0, "", true));
    }

    static SvgLook of(Role role) {
        return TABLE.getOrDefault(role, new SvgLook("#5c5c5c", 0.15, "", false));
    }

    void write(XMLStreamWriter svg) throws XMLStreamException {
        svg.writeAttribute("fill", filled ? stroke : "none");
        svg.writeAttribute("stroke", filled ? "none" : stroke);
        if (!filled) {
            svg.writeAttribute("stroke-width", Double.toString(width));
        }
        if (!dashes.isEmpty()) {
            svg.writeAttribute("stroke-dasharray", dashes);
        }
        if (filled) {
            svg.writeAttribute("font-family", "sans-serif");
        }
    }
}
