package org.hidewright.core.template;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Source;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.Place;

/**
 * Reads where a value comes from, as its author says: what kind of source it is, and the book and page or the habit in words. It is
 * printed with the formula, so that whoever cuts by it knows what it stands on.
 */
public final class WrittenSources {
    /** What a value holds that says where it comes from. */
    public static final List<String> KEYS = List.of("is", "source", "kind");

    private static final Map<String, Source.Kind> KINDS =
            Arrays.stream(Source.Kind.values()).collect(Collectors.toMap(WrittenSources::word, Function.identity()));

    private final BiConsumer<Notice, Place> told;
    private final Shapes shapes;
    private final Map<String, String> texts;

    /** @param texts gets what is said of the sources, under their keys */
    WrittenSources(BiConsumer<Notice, Place> told, Map<String, String> texts) {
        this.told = told;
        this.shapes = new Shapes(told);
        this.texts = texts;
    }

    /** The words for kinds, strongest first. */
    public static List<String> kinds() {
        return Arrays.stream(Source.Kind.values()).map(WrittenSources::word).toList();
    }

    private static String word(Source.Kind kind) {
        return kind == Source.Kind.MEASURED_HERE
                ? "measured"
                : kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The source in the object of a value; empty where it is told why there is none. */
    Optional<Source> source(String key, JsonObject value) {
        shapes.known(value, KEYS);
        String text = shapes.text(value, "source");
        String word = shapes.text(value, "kind");
        Source.Kind kind = KINDS.get(word);
        if (kind == null && !word.isEmpty()) {
            told.accept(
                    TemplateNotices.TEMPLATE_DECLARATION.with(
                            "\"" + word + "\" is no kind of source; they are " + String.join(", ", kinds())),
                    value.get("kind").orElseThrow().place());
        }
        texts.put("source." + key, text);
        return Optional.ofNullable(kind).map(known -> Source.of(key, known));
    }
}
