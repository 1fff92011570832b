package org.hidewright.documents.svg;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The attribute {@code transform} (SVG 1.1, section 7.6). */
final class SvgTransform {
    private static final Pattern ONE =
            Pattern.compile("\\G[\\s,]*(matrix|translate|scale|rotate|skewX|skewY)\\s*\\(([^()]*)\\)");
    private static final Pattern NUMBERS = Pattern.compile("\\G[\\s,]*(" + SvgLength.NUMBER + ")");
    private static final Pattern BLANK = Pattern.compile("[\\s,]*");

    private SvgTransform() {}

    /** Empty where it cannot be read. */
    static Optional<AffineTransform> of(String text) {
        AffineTransform all = new AffineTransform();
        Matcher one = ONE.matcher(text);
        int end = 0;
        while (one.find()) {
            Optional<AffineTransform> next = of(one.group(1), numbers(one.group(2)));
            if (next.isEmpty()) {
                return Optional.empty();
            }
            all.concatenate(next.get());
            end = one.end();
        }
        return BLANK.matcher(text.substring(end)).matches() ? Optional.of(all) : Optional.empty();
    }

    /** None where anything else stands among them. */
    private static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher number = NUMBERS.matcher(text);
        int end = 0;
        while (number.find()) {
            numbers.add(Double.valueOf(number.group(1)));
            end = number.end();
        }
        return BLANK.matcher(text.substring(end)).matches() ? numbers : List.of();
    }

    private static Optional<AffineTransform> of(String kind, List<Double> n) {
        AffineTransform transform = switch (kind + n.size()) {
            case "matrix6" -> new AffineTransform(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
            case "translate1" -> AffineTransform.getTranslateInstance(n.get(0), 0);
            case "translate2" -> AffineTransform.getTranslateInstance(n.get(0), n.get(1));
            case "scale1" -> AffineTransform.getScaleInstance(n.get(0), n.get(0));
            case "scale2" -> AffineTransform.getScaleInstance(n.get(0), n.get(1));
            case "rotate1" -> AffineTransform.getRotateInstance(Math.toRadians(n.get(0)));
            case "rotate3" -> AffineTransform.getRotateInstance(Math.toRadians(n.get(0)), n.get(1), n.get(2));
            case "skewX1" -> AffineTransform.getShearInstance(Math.tan(Math.toRadians(n.get(0))), 0);
            case "skewY1" -> AffineTransform.getShearInstance(0, Math.tan(Math.toRadians(n.get(0))));
            default -> null;
        };
        return Optional.ofNullable(transform);
    }
}
