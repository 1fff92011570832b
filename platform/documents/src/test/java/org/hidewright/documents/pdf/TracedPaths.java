package org.hidewright.documents.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.documents.OutsideTool;

/** The stroked paths of a page in millimetres, x right and y up from the lower left, as MuPDF's mutool traces them. */
final class TracedPaths {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final Pattern PATH = Pattern.compile(
            "<stroke_path linewidth=\"([\\d.]+)\"[^>]*transform=\"([^\"]+)\">(.*?)</stroke_path>", Pattern.DOTALL);
    private static final Pattern STEP = Pattern.compile("<(moveto|lineto|curveto|closepath)([^>]*)/>");
    private static final Pattern NUMBER = Pattern.compile("[xy][123]?=\"([-\\d.e]+)\"");

    /** One traced path: kinds of its steps and all their points, control points of curves included. */
    record Traced(double lineWidth, List<String> steps, List<double[]> points) {
        double minX() {
            return points.stream().mapToDouble(p -> p[0]).min().orElseThrow();
        }

        double minY() {
            return points.stream().mapToDouble(p -> p[1]).min().orElseThrow();
        }

        double maxX() {
            return points.stream().mapToDouble(p -> p[0]).max().orElseThrow();
        }

        double maxY() {
            return points.stream().mapToDouble(p -> p[1]).max().orElseThrow();
        }
    }

    private TracedPaths() {}

    static List<Traced> of(byte[] pdf, int page, double pageHeightMm) {
        String trace = OutsideTool.text(pdf, "mutool", "trace", "FILE", Integer.toString(page));
        List<Traced> paths = new ArrayList<>();
        Matcher path = PATH.matcher(trace);
        while (path.find()) {
            double[] matrix = numbers(path.group(2));
            List<String> steps = new ArrayList<>();
            List<double[]> points = new ArrayList<>();
            Matcher step = STEP.matcher(path.group(3));
            while (step.find()) {
                steps.add(step.group(1));
                addPoints(step.group(2), matrix, pageHeightMm, points);
            }
            paths.add(new Traced(Double.parseDouble(path.group(1)), steps, points));
        }
        return paths;
    }

    private static void addPoints(String attributes, double[] m, double pageHeightMm, List<double[]> points) {
        List<Double> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(attributes);
        while (number.find()) {
            numbers.add(Double.parseDouble(number.group(1)));
        }
        for (int i = 0; i < numbers.size(); i += 2) {
            double x = numbers.get(i);
            double y = numbers.get(i + 1);
            points.add(new double[] {
                (m[0] * x + m[2] * y + m[4]) * MM_PER_POINT, pageHeightMm - (m[1] * x + m[3] * y + m[5]) * MM_PER_POINT
            });
        }
    }

    private static double[] numbers(String text) {
        return Pattern.compile(" ")
                .splitAsStream(text.strip())
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
