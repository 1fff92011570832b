package org.hidewright.documents.svg;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The basic shapes as path data, as SVG 1.1 has them in chapter 9. */
final class SvgShape {
    /** Elements that are lines. */
    static final Set<String> NAMES = Set.of("path", "polygon", "polyline", "line", "rect", "circle", "ellipse");

    private final String name;
    private final Map<String, String> attributes;

    SvgShape(String name, Map<String, String> attributes) {
        this.name = name;
        this.attributes = attributes;
    }

    /** A length that cannot be read. */
    static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1;

        Unreadable(String text) {
            super(text);
        }
    }

    /** Empty where nothing would be drawn. */
    String pathData() throws Unreadable {
        return switch (name) {
            case "path" -> attributes.getOrDefault("d", "").strip();
            case "polygon" -> corners(" Z");
            case "polyline" -> corners("");
            case "line" -> "M" + numbers(length("x1"), length("y1"), length("x2"), length("y2"));
            case "rect" -> rectangle();
            case "circle" -> ellipse(length("r"), length("r"));
            default -> ellipse(length("rx"), length("ry"));
        };
    }

    private String corners(String end) {
        String points = attributes.getOrDefault("points", "").strip();
        return points.isEmpty() ? "" : "M " + points + end;
    }

    private double length(String key) throws Unreadable {
        String text = attributes.getOrDefault(key, "0");
        return SvgLength.of(text).orElseThrow(() -> new Unreadable(text)).pixels();
    }

    private static String numbers(double... numbers) {
        return Arrays.stream(numbers).mapToObj(number -> " " + number).collect(Collectors.joining());
    }

    private String ellipse(double radiusX, double radiusY) throws Unreadable {
        if (radiusX <= 0 || radiusY <= 0) {
            return "";
        }
        double right = length("cx") + radiusX;
        double left = length("cx") - radiusX;
        double middle = length("cy");
        String half = " A" + numbers(radiusX, radiusY) + " 0 0 1";
        return "M" + numbers(right, middle) + half + numbers(left, middle) + half + numbers(right, middle) + " Z";
    }

    /** A radius that is missing is like the other one, and none is more than half its side. */
    private String rectangle() throws Unreadable {
        double x = length("x");
        double y = length("y");
        double width = length("width");
        double height = length("height");
        if (width <= 0 || height <= 0) {
            return "";
        }
        double rx = Math.min(radius("rx", "ry"), width / 2);
        double ry = Math.min(radius("ry", "rx"), height / 2);
        double right = x + width;
        double low = y + height;
        if (rx <= 0 || ry <= 0) {
            return "M" + numbers(x, y) + " H" + numbers(right) + " V" + numbers(low) + " H" + numbers(x) + " Z";
        }
        String corner = " A" + numbers(rx, ry) + " 0 0 1";
        return "M" + numbers(x + rx, y)
                + (" H" + numbers(right - rx) + corner + numbers(right, y + ry))
                + (" V" + numbers(low - ry) + corner + numbers(right - rx, low))
                + (" H" + numbers(x + rx) + corner + numbers(x, low - ry))
                + (" V" + numbers(y + ry) + corner + numbers(x + rx, y) + " Z");
    }

    private double radius(String key, String other) throws Unreadable {
        for (String either : List.of(key, other)) {
            if (!attributes.getOrDefault(either, "auto").strip().equals("auto")) {
                return length(either);
            }
        }
        return 0;
    }
}
