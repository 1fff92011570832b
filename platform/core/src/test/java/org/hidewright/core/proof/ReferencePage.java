package org.hidewright.core.proof;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.brought.TablesReader;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.picture.PictureReader;
import org.hidewright.core.template.TemplateReader;
import org.hidewright.core.template.WrittenQuestions;
import org.hidewright.core.template.WrittenSources;
import org.hidewright.core.wording.Remark;

/** The page of all keys of the texts that bundles carry, made from what their readers know and do. */
final class ReferencePage {
    private static final int LONGEST_EXAMPLE = 70;
    /** What not every question and answer has. */
    private static final Map<String, String> NEEDED_FOR = Map.of("unit", "for a measure", "options", "for a choice");

    private final Properties words = new Properties();
    private final Set<String> used = new TreeSet<>();
    private final StringBuilder page = new StringBuilder();

    ReferencePage() throws IOException {
        try (InputStream in = ReferencePage.class.getResourceAsStream("reference.properties");
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
    }

    static String resource(String name) throws IOException {
        try (InputStream in = ReferencePage.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static List<Remark> template(String text) {
        return TemplateReader.read(text, id -> Optional.empty()).remarks();
    }

    static List<Remark> tables(String text) {
        return TablesReader.read(text, "org.example.clips").remarks();
    }

    /** Words for what no reader knows. */
    Set<String> idle() {
        Set<String> idle = new TreeSet<>(words.stringPropertyNames());
        idle.removeAll(used);
        return idle;
    }

    String write() throws IOException, JsonTrouble {
        line("# Texts of bundles, key by key");
        line("");
        line(
                "This page is made by the program from what it reads, and a test holds it against that: `docs/reference/renew` writes it"
                        + " anew. How the texts are used stands in the [author’s guide](../authors-guide.md#a-template-without-java);"
                        + " `./hidewright addons check FOLDER` looks one over. What is needed is what the whole texts below cannot do without.");
        Reading template = new Reading(resource("every-key.json"), ReferencePage::template);
        keys("The template", "head", TemplateReader.HEAD, template, template::head);
        keys("A question", "question", WrittenQuestions.keys(), template, key -> template.in("questions", key));
        keys(
                "A value that another calculator answers",
                "value",
                TemplateReader.ASKS,
                template,
                key -> template.in("values", key));
        keys(
                "A value that says where it comes from",
                "worked",
                WrittenSources.KEYS,
                template,
                key -> template.in("values", key));
        keys("What is told", "tell", TemplateReader.TELL, template, key -> template.in("tells", key));
        keys("An answer", "answer", TemplateReader.answerKeys(), template, key -> template.in("answers", key));
        keys("What draws", "draws", TemplateReader.DRAWS, template, key -> template.in("draws", key));
        Reading picture = new Reading(
                resource("every-key-of-pictures.json"),
                text -> PictureReader.read(text).remarks());
        keys("A shape of a picture", "shape", PictureReader.keys(), picture, key -> picture.in("shapes", key));
        Reading tables = new Reading(resource("every-key-of-tables.json"), ReferencePage::tables);
        keys("Tables of the workshop", "tables", TablesReader.HEAD, tables, tables::head);
        keys("Columns of a table", "table", TablesReader.OF_TABLE, tables, key -> tables.in("columns", key));
        kinds();
        functions();
        line("");
        line("## A whole template");
        line("");
        line("```json");
        line(resource("every-key.json").strip());
        line("```");
        line("");
        line("## A whole picture");
        line("");
        line("A calculator in Java has each of its pictures in a file of its own, `pictures/NAME.json` beside it.");
        line("");
        line("```json");
        line(resource("every-key-of-pictures.json").strip());
        line("```");
        line("");
        line("## A whole text of tables");
        line("");
        line("```json");
        line(resource("every-key-of-tables.json").strip());
        line("```");
        return page.toString();
    }

    private void line(String line) {
        page.append(line).append('\n');
    }

    private String words(String key) {
        used.add(key);
        return Optional.ofNullable(words.getProperty(key))
                .orElseThrow(() -> new AssertionError(key + " is not described in reference.properties"));
    }

    /** A text, and what reading it without one of its keys comes to. */
    private record Reading(String text, java.util.function.Function<String, List<Remark>> read) {
        private JsonText json() throws JsonTrouble {
            return JsonText.read(text);
        }

        private JsonObject root() {
            try {
                return (JsonObject) json().root();
            } catch (JsonTrouble e) {
                throw new AssertionError(e);
            }
        }

        Optional<JsonObject> head(String key) {
            return Optional.of(root()).filter(head -> head.get(key).isPresent());
        }

        /** The first object under a key of the head that has this key. */
        Optional<JsonObject> in(String list, String key) {
            return objects(root().get(list).orElseThrow())
                    .filter(object -> object.get(key).isPresent())
                    .findFirst();
        }

        private static Stream<JsonObject> objects(JsonNode node) {
            if (node instanceof JsonArray array) {
                return array.items().stream().flatMap(Reading::objects);
            }
            return node instanceof JsonObject object
                    ? Stream.concat(
                            Stream.of(object),
                            object.members().values().stream()
                                    .map(JsonNode.Member::value)
                                    .filter(JsonObject.class::isInstance)
                                    .map(JsonObject.class::cast))
                    : Stream.empty();
        }

        boolean mustBeThere(JsonObject object, String key) throws JsonTrouble {
            return read.apply(json().without(object, key).text()).stream().anyMatch(Remark::stops);
        }

        String example(JsonObject object, String key) throws JsonTrouble {
            return json().textOf(object.get(key).orElseThrow());
        }
    }

    /** Finds the object that has a key. */
    private interface Holder {
        Optional<JsonObject> of(String key);
    }

    private void keys(String title, String owner, List<String> keys, Reading reading, Holder holder)
            throws JsonTrouble {
        line("");
        line("## " + title);
        line("");
        line("| key | holds | needed | such as |");
        line("|---|---|---|---|");
        for (String key : keys) {
            JsonObject object =
                    holder.of(key).orElseThrow(() -> new AssertionError("no example has " + owner + "." + key));
            String example = reading.example(object, key).replaceAll("\\s+", " ");
            String shown = example.length() > LONGEST_EXAMPLE
                    ? example.substring(0, LONGEST_EXAMPLE).strip() + " …"
                    : example;
            line("| `" + key + "` | " + words(owner + "." + key) + " | "
                    + (reading.mustBeThere(object, key) ? NEEDED_FOR.getOrDefault(key, "yes") : "") + " | `" + shown
                    + "` |");
        }
    }

    private void kinds() {
        line("");
        line("## Kinds and their units");
        line("");
        line("| kind | is | units |");
        line("|---|---|---|");
        for (String kind : WrittenQuestions.kinds()) {
            line("| `" + kind + "` | " + words("kind." + kind) + " | "
                    + units(Kind.valueOf(kind.toUpperCase(Locale.ROOT))) + " |");
        }
    }

    private static String units(Kind kind) {
        return Units.all().stream()
                .filter(unit -> kind != Kind.COUNT) // a per cent is no count
                .filter(unit ->
                        kind.dimension().filter(unit.dimension()::equals).isPresent())
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .map(symbol -> "`" + symbol + "`")
                .collect(Collectors.joining(" "));
    }

    private void functions() {
        line("");
        line("## What expressions know");
        line("");
        line("| name | is | takes |");
        line("|---|---|---|");
        for (Map.Entry<String, String> function : Expression.functions().entrySet()) {
            line("| `" + function.getKey() + "` | " + words("function." + function.getKey()) + " | "
                    + function.getValue() + " |");
        }
        line("");
        line(
                "Besides: amounts with their units, names of questions and values, `+ - * /`, brackets, `< <= > >= is`, `is not`,"
                        + " `and or not`, `if … then … else …`, words of a choice in single quotes, `yes`, `no` and `pi`.");
    }

    /** Everything that can be wrong with a text of its own, for nothing is left out silently. */
    static List<String> whatIsToldOfTheWhole() throws IOException {
        List<String> told = new ArrayList<>();
        template(resource("every-key.json")).forEach(remark -> told.add(remark.toString()));
        tables(resource("every-key-of-tables.json")).forEach(remark -> told.add(remark.toString()));
        return told;
    }
}
