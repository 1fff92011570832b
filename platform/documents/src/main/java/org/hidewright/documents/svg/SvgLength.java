package org.hidewright.documents.svg;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length as SVG 1.1 writes it (section 4.2), in the units of CSS Values and Units, section 5.2, which has 96 pixels to the inch.
 *
 * @param pixels in user units of a drawing without a view box
 * @param absolute whether its unit is one of measure, and not that of the drawing
 */
record SvgLength(double pixels, boolean absolute) {
    /** Millimetres of a pixel. */
    static final double PIXEL_MM = 25.4 / 96;

    /** A number (SVG 1.1, section 4.2), as an expression. */
    static final String NUMBER = "[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?";

    private static final Pattern WRITTEN = Pattern.compile("\\s*(" + NUMBER + ")([a-zA-Z]*)\\s*");
    private static final Map<String, Double> UNITS = Map.of(
            "mm", 1 / PIXEL_MM, "cm", 10 / PIXEL_MM, "q", 0.25 / PIXEL_MM, "in", 96.0, "pt", 96.0 / 72, "pc", 16.0);

    /** Empty where it cannot be read, or is a share of something that is not in the file. */
    static Optional<SvgLength> of(String text) {
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            return Optional.empty();
        }
        double number = Double.parseDouble(written.group(1));
        String unit = written.group(2).toLowerCase(Locale.ROOT);
        if (!Double.isFinite(number)) {
            return Optional.empty();
        }
        if (unit.isEmpty() || unit.equals("px")) {
            return Optional.of(new SvgLength(number, false));
        }
        return Optional.ofNullable(UNITS.get(unit)).map(pixels -> new SvgLength(number * pixels, true));
    }
}
