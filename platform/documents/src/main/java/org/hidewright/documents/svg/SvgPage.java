package org.hidewright.documents.svg;

import java.awt.geom.AffineTransform;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How large the page of a drawing is (SVG 1.1, section 7.7 and 7.8).
 *
 * @param toMm from its user units, y down, to millimetres, y up
 * @param said whether the file says how large that is
 */
record SvgPage(AffineTransform toMm, boolean said) {
    private static final Pattern GAP = Pattern.compile("[\\s,]+");

    /**
     * By the attributes of the outermost element; empty ones are missing.
     *
     * @return empty where the view box cannot be read
     */
    static Optional<SvgPage> of(String width, String height, String viewBox, String aspectRatio) {
        if (viewBox.isBlank()) {
            return Optional.of(scaled(1, 1, false));
        }
        String[] numbers = GAP.split(viewBox.strip());
        if (numbers.length != 4) {
            return Optional.empty();
        }
        Optional<SvgLength> boxWidth = size(numbers[2]);
        Optional<SvgLength> boxHeight = size(numbers[3]);
        if (boxWidth.isEmpty() || boxHeight.isEmpty()) {
            return Optional.empty();
        }
        Optional<SvgLength> wide = size(width);
        Optional<SvgLength> high = size(height);
        double across = wide.orElse(boxWidth.get()).pixels() / boxWidth.get().pixels();
        double up = high.orElse(boxHeight.get()).pixels() / boxHeight.get().pixels();
        boolean said = Stream.of(wide, high).flatMap(Optional::stream).anyMatch(SvgLength::absolute);
        if (wide.isEmpty() || high.isEmpty()) {
            double one = wide.isPresent() ? across : up; // the other follows
            return Optional.of(scaled(one, one, said));
        }
        if (aspectRatio.strip().startsWith("none")) {
            return Optional.of(scaled(across, up, said));
        }
        double alike = aspectRatio.contains("slice") ? Math.max(across, up) : Math.min(across, up);
        return Optional.of(scaled(alike, alike, said));
    }

    private static Optional<SvgLength> size(String text) {
        return SvgLength.of(text).filter(length -> length.pixels() > 0);
    }

    private static SvgPage scaled(double across, double up, boolean said) {
        return new SvgPage(
                AffineTransform.getScaleInstance(across * SvgLength.PIXEL_MM, -up * SvgLength.PIXEL_MM), said);
    }
}
