package org.hidewright.core.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.PathData;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.template.Shapes;
import org.hidewright.core.wording.Remark;

/**
 * Reads a picture: a list of {@code shapes}, each a {@code path} or a {@code circle} with its role, a {@code measure}, or a
 * {@code text} at a place. Millimetres, y up; some 70 across and 45 up are shown in their size.
 */
public final class PictureReader {
    /** How high the capitals of its letters are. */
    public static final double LETTERS_MM = 2.6;

    private static final List<String> PATH = List.of("path", "role", "of");
    private static final List<String> CIRCLE = List.of("circle", "role", "of");
    private static final List<String> MEASURE = List.of("measure", "beside", "text", "of");
    private static final List<String> TEXT = List.of("text", "at", "anchor", "of");

    private static final String LIKE = "{\"path\": \"M 0 0 H 40\", \"role\": \"cut\"}";

    private final List<Remark> remarks = new ArrayList<>();
    private final Shapes shapes = new Shapes(this::say);

    private PictureReader() {}

    /** What a shape can hold. */
    public static List<String> keys() {
        return Stream.of(PATH, CIRCLE, MEASURE, TEXT)
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    /** What reading came to: a picture, or the reason there is none. */
    public record Result(Optional<Picture> picture, List<Remark> remarks) {}

    /** Reads the text of a picture. */
    public static Result read(String text) {
        PictureReader reader = new PictureReader();
        try {
            return reader.result(JsonText.read(text).root());
        } catch (JsonTrouble e) {
            reader.say(JsonNotices.NOT_JSON.with(e.words()), e.place());
            return new Result(Optional.empty(), reader.remarks);
        }
    }

    /** Reads a picture that stands in another text. */
    public static Result read(JsonNode node) {
        return new PictureReader().result(node);
    }

    private Result result(JsonNode node) {
        List<PictureShape> read = new ArrayList<>();
        if (node instanceof JsonObject head) {
            shapes.known(head, List.of("shapes"));
            shapes.must(head, "shapes");
            shapes.objects(head, "shapes", LIKE).forEach(object -> shape(object).ifPresent(read::add));
        } else {
            say(JsonNotices.wrongShape("picture", "{\"shapes\": []}", node), node.place());
        }
        boolean sound = remarks.stream().noneMatch(Remark::stops) && !read.isEmpty();
        return new Result(sound ? Optional.of(new Picture(read)) : Optional.empty(), List.copyOf(remarks));
    }

    private void say(Notice notice, Place place) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS).atPlace(place));
    }

    private Optional<PictureShape> shape(JsonObject object) {
        String of = object.text("of").orElse("");
        return made(object).map(shape -> new PictureShape(of, shape));
    }

    private Optional<PictureShape.Made> made(JsonObject object) {
        if (object.get("path").isPresent()) {
            shapes.known(object, PATH);
            return path(object);
        } else if (object.get("circle").isPresent()) {
            shapes.known(object, CIRCLE);
            Optional<Role> role = role(object);
            return numbers(object, "circle", "[0, 0, 8]", 3)
                    .filter(numbers -> positive(numbers[2], "circle", object))
                    .flatMap(numbers ->
                            role.map(known -> words -> Circle.of(known, Point.of(numbers[0], numbers[1]), numbers[2])));
        } else if (object.get("measure").isPresent()) {
            shapes.known(object, MEASURE);
            return measure(object);
        }
        shapes.known(object, TEXT);
        return text(object);
    }

    private Optional<PictureShape.Made> path(JsonObject object) {
        Optional<Role> role = role(object);
        try {
            var curve = PathData.read(shapes.text(object, "path"));
            return role.map(known -> {
                Path path = curve.path(known);
                return words -> path;
            });
        } catch (PathData.Unreadable e) {
            wrong(object, "path", "\"M 0 0 H 40\"");
            return Optional.empty();
        }
    }

    private Optional<PictureShape.Made> measure(JsonObject object) {
        double beside =
                object.get("beside").isEmpty() ? 0 : one(object, "beside").orElse(0.0);
        String text = object.text("text").orElse("");
        return numbers(object, "measure", "[0, 0, 40, 0]", 4)
                .filter(numbers ->
                        positive(Math.hypot(numbers[2] - numbers[0], numbers[3] - numbers[1]), "measure", object))
                .map(numbers -> words -> DimensionLine.of(
                        Point.of(numbers[0], numbers[1]),
                        Point.of(numbers[2], numbers[3]),
                        beside,
                        text.isEmpty() ? "" : words.apply(text),
                        LETTERS_MM));
    }

    private Optional<PictureShape.Made> text(JsonObject object) {
        String text = shapes.text(object, "text");
        Optional<Anchor> anchor =
                object.get("anchor").isEmpty() ? Optional.of(Anchor.CENTRE) : word(object, "anchor", Anchor.values());
        return numbers(object, "at", "[10, 20]", 2)
                .flatMap(at -> anchor.map(
                        known -> words -> Label.of(words.apply(text), Point.of(at[0], at[1]), known, LETTERS_MM)));
    }

    private Optional<Role> role(JsonObject object) {
        return word(object, "role", Role.values());
    }

    private <E extends Enum<E>> Optional<E> word(JsonObject object, String key, E[] all) {
        String word = shapes.text(object, key);
        Optional<E> found = Arrays.stream(all)
                .filter(one ->
                        one.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word))
                .findFirst();
        if (found.isEmpty() && !word.isEmpty()) {
            wrong(object, key, "\"" + all[0].name().toLowerCase(Locale.ROOT) + "\"");
        }
        return found;
    }

    private void wrong(JsonObject object, String key, String like) {
        object.get(key).ifPresent(node -> say(JsonNotices.wrongShape(key, like, node), node.place()));
    }

    private boolean positive(double number, String key, JsonObject object) {
        if (number <= 0) {
            wrong(object, key, key.equals("circle") ? "[0, 0, 8]" : "[0, 0, 40, 0]");
        }
        return number > 0;
    }

    private Optional<Double> one(JsonObject object, String key) {
        Optional<Double> number = object.get(key).flatMap(PictureReader::number);
        if (number.isEmpty()) {
            wrong(object, key, "6");
        }
        return number;
    }

    private Optional<double[]> numbers(JsonObject object, String key, String like, int count) {
        List<Double> numbers = shapes.must(object, key)
                .filter(JsonArray.class::isInstance)
                .map(node -> ((JsonArray) node)
                        .items().stream().flatMap(item -> number(item).stream()).toList())
                .orElse(List.of());
        if (numbers.size() != count) {
            wrong(object, key, like);
            return Optional.empty();
        }
        return Optional.of(numbers.stream().mapToDouble(number -> number).toArray());
    }

    private static Optional<Double> number(JsonNode node) {
        return node instanceof JsonScalar scalar && scalar.type() == JsonScalar.Type.NUMBER
                ? Optional.of(Double.valueOf(scalar.text()))
                : Optional.empty();
    }
}
