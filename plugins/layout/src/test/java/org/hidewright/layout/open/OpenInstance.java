package org.hidewright.layout.open;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Scanner;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;
import org.hidewright.layout.task.Zone;

/**
 * A published instance of nesting, read as it was published: JSON with items and a strip height or bins (the format of the
 * strip and hide instances), or text with rectangular panels (Terashima's format).
 *
 * @param pieces every copy of every item, copies side by side
 * @param stripHeight the height of the strip, where the instance asks for a strip
 * @param sheets every copy of every bin, where it asks for sheets
 */
public record OpenInstance(String name, List<Piece> pieces, OptionalDouble stripHeight, List<Sheet> sheets) {

    public static OpenInstance read(Path file) throws IOException {
        String text = Files.readString(file);
        return text.stripLeading().startsWith("{") ? json(new ObjectMapper().readTree(text)) : panels(file, text);
    }

    /** The area of all pieces. */
    public double area() {
        return pieces.stream().mapToDouble(piece -> piece.outline().area()).sum();
    }

    private static OpenInstance json(JsonNode root) {
        List<Piece> pieces = new ArrayList<>();
        for (JsonNode item : root.required("items")) {
            Outline outline = outer(item.required("shape"));
            JsonNode angles = item.path("allowed_orientations");
            List<Double> degrees = new ArrayList<>();
            angles.forEach(angle -> degrees.add(angle.asDouble()));
            Turning turning = degrees.isEmpty() ? Turning.free() : Turning.steps(degrees);
            JsonNode quality = item.path("min_quality");
            // zones are of the kind of their quality, and what asks for more avoids them
            long avoids = quality.isNumber() ? (1L << quality.asInt()) - 1 : Piece.ALL;
            for (int copy = 1; copy <= item.required("demand").asInt(); copy++) {
                pieces.add(
                        new Piece("item " + item.required("id").asText() + ", copy " + copy, outline, turning, avoids));
            }
        }
        List<Sheet> sheets = new ArrayList<>();
        for (JsonNode bin : root.path("bins")) {
            Sheet sheet = sheet(bin);
            for (int copy = 0; copy < bin.path("stock").asInt(1); copy++) {
                sheets.add(sheet);
            }
        }
        JsonNode height = root.path("strip_height");
        return new OpenInstance(
                root.path("name").asText(),
                List.copyOf(pieces),
                height.isNumber() ? OptionalDouble.of(height.asDouble()) : OptionalDouble.empty(),
                List.copyOf(sheets));
    }

    private static Sheet sheet(JsonNode bin) {
        JsonNode shape = bin.required("shape");
        List<Outline> holes = new ArrayList<>();
        if (shape.required("type").asText().equals("polygon")) {
            shape.required("data").path("inner").forEach(ring -> holes.add(ring(ring)));
        }
        List<Zone> zones = new ArrayList<>();
        for (JsonNode zone : bin.path("zones")) {
            int quality = zone.required("quality").asInt();
            if (quality == 0) {
                holes.add(outer(zone.required("shape")));
            } else {
                zones.add(new Zone(outer(zone.required("shape")), quality));
            }
        }
        return new Sheet(
                bin.required("id").asText(),
                outer(shape),
                holes,
                zones,
                bin.path("cost").asDouble(1));
    }

    private static Outline outer(JsonNode shape) {
        JsonNode data = shape.required("data");
        return switch (shape.required("type").asText()) {
            case "simple_polygon" -> ring(data);
            case "polygon" -> ring(data.required("outer"));
            case "rectangle" -> {
                double left = data.required("x_min").asDouble();
                double low = data.required("y_min").asDouble();
                yield Outline.rectangle(
                        left,
                        low,
                        left + data.required("width").asDouble(),
                        low + data.required("height").asDouble());
            }
            default ->
                throw new IllegalArgumentException("A shape of the type " + shape.path("type") + " is not known.");
        };
    }

    private static Outline ring(JsonNode corners) {
        double[] x = new double[corners.size()];
        double[] y = new double[corners.size()];
        for (int corner = 0; corner < x.length; corner++) {
            x[corner] = corners.get(corner).get(0).asDouble();
            y[corner] = corners.get(corner).get(1).asDouble();
        }
        return new Outline(x, y);
    }

    private static OpenInstance panels(Path file, String text) {
        List<Piece> pieces = new ArrayList<>();
        Scanner numbers = new Scanner(text);
        numbers.useLocale(java.util.Locale.ROOT);
        int count = numbers.nextInt();
        double width = numbers.nextDouble();
        double height = numbers.nextDouble();
        for (int item = 0; item < count; item++) {
            int corners = numbers.nextInt();
            double[] x = new double[corners];
            double[] y = new double[corners];
            for (int corner = 0; corner < corners; corner++) {
                x[corner] = numbers.nextDouble();
                y[corner] = numbers.nextDouble();
            }
            Turning turning = Turning.steps(List.of(0.0, 90.0, 180.0, 270.0));
            pieces.add(new Piece("item " + item, new Outline(x, y), turning, Piece.ALL));
        }
        Sheet panel = Sheet.plain("panel", Outline.rectangle(0, 0, width, height));
        return new OpenInstance(
                file.getFileName().toString(),
                List.copyOf(pieces),
                OptionalDouble.empty(),
                java.util.Collections.nCopies(count, panel));
    }
}
