package org.hidewright.core.template;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.InvalidDeclaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Written;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.Place;

/** Reads what is declared in a text: the questions of a template, the columns of a table. What is wrong is told with its place. */
public final class WrittenQuestions {
    private static final List<String> BESIDE = List.of("key", "kind", "options", "label", "help");

    private final BiConsumer<Notice, Place> told;
    private final Shapes shapes;
    private final Map<String, String> texts;

    /**
     * A reader of one text.
     *
     * @param texts gets the labels and help of what is read, under their keys
     */
    public WrittenQuestions(BiConsumer<Notice, Place> told, Map<String, String> texts) {
        this.told = told;
        this.shapes = new Shapes(told);
        this.texts = texts;
    }

    /** What a question, or a column, can hold. */
    public static List<String> keys() {
        Set<String> keys = new TreeSet<>(Written.ASKED);
        keys.addAll(BESIDE);
        return List.copyOf(keys);
    }

    /** How what is read becomes a question. */
    private interface Declaring {
        Question of(String owner, String key, Kind kind, Map<String, String> attributes, List<String> options);
    }

    /** The question in an object; empty where it is told why there is none. */
    public Optional<Question> question(JsonObject object, String owner) {
        return read(object, owner, Written::question);
    }

    /** The column in an object; empty where it is told why there is none. */
    public Optional<Question> column(JsonObject object, String table) {
        return read(object, table, Written::column);
    }

    private Optional<Question> read(JsonObject object, String owner, Declaring declaring) {
        shapes.known(object, keys());
        String key = shapes.text(object, "key");
        Map<String, String> options = new LinkedHashMap<>();
        object.get("options").ifPresent(node -> {
            if (node instanceof JsonObject labels) {
                labels.members().keySet().forEach(option -> options.put(option, shapes.text(labels, option)));
            } else {
                told.accept(JsonNotices.wrongShape("options", "{\"rivet\": \"Rivet\"}", node), node.place());
            }
        });
        String label = shapes.text(object, "label");
        String help = shapes.text(object, "help");
        return kind(object, "kind")
                .flatMap(kind -> declared(
                        object,
                        () -> declaring.of(
                                owner,
                                key,
                                kind,
                                shapes.attributes(object, Written.ASKED),
                                List.copyOf(options.keySet()))))
                .map(question -> {
                    texts.put(question.labelKey(), label);
                    texts.put(question.helpKey(), help);
                    question.options().forEach(option -> texts.put(option.labelKey(), options.get(option.key())));
                    return question;
                });
    }

    /** What can be declared; what contradicts itself is told. */
    <T> Optional<T> declared(JsonObject object, Supplier<T> declare) {
        try {
            return Optional.of(declare.get());
        } catch (InvalidDeclaration e) {
            told.accept(TemplateNotices.TEMPLATE_DECLARATION.with(e.getMessage()), object.place());
            return Optional.empty();
        }
    }

    /** The kind that is named under a key. */
    Optional<Kind> kind(JsonObject object, String key) {
        String word = shapes.text(object, key);
        Optional<Kind> kind = Written.TYPED.stream()
                .filter(candidate -> word.equals(name(candidate)))
                .findFirst();
        if (kind.isEmpty() && !word.isEmpty()) {
            told.accept(
                    TemplateNotices.TEMPLATE_DECLARATION.with(
                            Phrase.of("declared-kind", word, String.join(", ", kinds()))),
                    object.get(key).orElseThrow().place());
        }
        return kind;
    }

    /** The kinds that can be named, in alphabetical order. */
    public static List<String> kinds() {
        return Written.TYPED.stream().map(WrittenQuestions::name).sorted().toList();
    }

    private static String name(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
