package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.template.TemplateReader;
import org.hidewright.core.template.TextTemplate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The templates that are texts are whole in German: all that they say, and every word of the items they draw. */
class GermanTemplatesTest {
    private static final Pattern PLACE = Pattern.compile("\\{\\d+}");

    private static Map<String, String> german(Path template) throws Exception {
        Properties texts = new Properties();
        String name = template.getFileName().toString().replace(".json", "_de.properties");
        try (Reader reader = Files.newBufferedReader(template.resolveSibling(name))) {
            texts.load(reader);
        }
        Map<String, String> sorted = new TreeMap<>();
        texts.forEach((key, text) -> sorted.put((String) key, (String) text));
        return sorted;
    }

    /** Keys of the words of all parts, leathers, fittings and steps that may be drawn. */
    private static Set<String> words(Path template) throws Exception {
        JsonObject head = (JsonObject) JsonText.read(Files.readString(template)).root();
        JsonObject drawn = (JsonObject)
                ((JsonObject) head.get("draws").orElseThrow()).get("questions").orElseThrow();
        Set<String> keys = new TreeSet<>();
        for (JsonObject part : rows(drawn, "parts")) {
            keys.add("item.part." + text(part, "id"));
            keys.add("item.leather." + text(part, "leather").replace(' ', '-'));
        }
        rows(drawn, "fittings").forEach(fitting -> keys.add("item.fitting." + text(fitting, "id")));
        rows(drawn, "operations").forEach(step -> keys.add("item.step." + text(step, "id")));
        return keys;
    }

    private static List<JsonObject> rows(JsonObject drawn, String key) {
        return drawn.get(key).stream()
                .flatMap(rows -> ((JsonArray) rows).items().stream())
                .map(JsonObject.class::cast)
                .toList();
    }

    private static String text(JsonObject row, String key) {
        return ((JsonScalar) row.get(key).orElseThrow()).text().replace("{nth}", "nth");
    }

    private static Set<String> places(String text) {
        Set<String> places = new TreeSet<>();
        for (Matcher place = PLACE.matcher(text); place.find(); ) {
            places.add(place.group());
        }
        return places;
    }

    @ParameterizedTest
    @ValueSource(strings = {"key-fob", "card-sleeve", "waist-belt", "dog-collar", "watch-strap", "pen-roll"})
    void everythingIsSaidInGerman(String id) throws Exception {
        Path file = Path.of("../../plugins/" + id + "/src/main/resources/" + id + ".json");
        TextTemplate template = TemplateReader.read(Files.readString(file), other -> Optional.empty())
                .template()
                .orElseThrow();
        Map<String, String> german = german(file);
        Set<String> wanted = new TreeSet<>(template.written().keySet());
        wanted.addAll(words(file));
        List<String> said = german.keySet().stream()
                .filter(key -> !key.startsWith("item.on.")) // only what has no common word needs one of its own
                .toList();
        assertEquals(List.copyOf(wanted), said);
        template.written().forEach((key, text) -> assertEquals(places(text), places(german.get(key)), key));
        assertTrue(german.values().stream().noneMatch(text -> text.contains("'")), "a straight apostrophe");
        TextTemplate translated =
                template.translated(ending -> ending.equals("_de.properties") ? read(file) : Optional.empty());
        String title = translated.declaration().titleKey();
        assertEquals(Optional.of(german.get(title)), translated.texts().find(title, Locale.GERMANY));
        assertEquals(
                template.texts().find(title, Locale.ENGLISH), translated.texts().find(title, Locale.ENGLISH));
    }

    private static Optional<String> read(Path template) {
        try {
            return Optional.of(Files.readString(
                    template.resolveSibling(template.getFileName().toString().replace(".json", "_de.properties"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
