package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.core.template.TemplateReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pages in docs/told list every refusal, check, caution and note of a bundle as a maker hears it, so that they can be
 * read in one go. A page that is not as the texts are is written anew beside the test’s classes.
 */
class ToldPagesTest {
    private static final Path ROOT = Path.of("../..");
    private static final Pattern KIND =
            Pattern.compile("NoticeKind\\.(stop|check|caution|note)\\(\\s*\"([a-z0-9-]+)\"");
    private static final Pattern PLACE = Pattern.compile("\\{\\d+[^}]*}");
    private static final Map<String, String> HEADS = new LinkedHashMap<>();

    static {
        HEADS.put("stop", "Refused");
        HEADS.put("caution", "Cautions");
        HEADS.put("check", "Checks");
        HEADS.put("note", "Notes");
    }

    static List<String> plugins() throws IOException {
        try (Stream<Path> folders = Files.list(ROOT.resolve("plugins"))) {
            // what has no texts has nothing to tell
            return folders.filter(folder -> Files.isDirectory(folder.resolve("src/main/resources")))
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("plugins")
    void thePageSaysWhatTheBundleSays(String plugin) throws IOException {
        String page = page(plugin);
        Path listed = ROOT.resolve("docs/told/" + plugin + ".md");
        Path anew = Path.of("target/told", plugin + ".md");
        Files.createDirectories(anew.getParent());
        Files.writeString(anew, page);
        assertEquals(
                page,
                Files.isRegularFile(listed) ? Files.readString(listed) : "",
                () -> "copy platform/distribution/" + anew + " to docs/told and read it as a maker would");
    }

    private static String page(String plugin) throws IOException {
        Path sources = ROOT.resolve("plugins/" + plugin + "/src/main");
        Path template = sources.resolve("resources/" + plugin + ".json");
        Map<String, Map<String, String>> told =
                Files.isRegularFile(template) ? ofTemplate(template) : ofTexts(plugin, sources);
        assertFalse(told.isEmpty(), "no notice of " + plugin + " was found in its sources");
        StringBuilder page = new StringBuilder("# What the bundle " + plugin + " tells\n\n"
                + "Made from the texts by a test, to be read in one go; … stands for what was typed or worked out.\n");
        HEADS.forEach((severity, head) -> {
            if (told.containsKey(severity)) {
                page.append("\n## ").append(head).append("\n\n");
                told.get(severity).values().forEach(page::append);
            }
        });
        return page.toString();
    }

    /** What a template that is a text tells. */
    private static Map<String, Map<String, String>> ofTemplate(Path template) throws IOException {
        DeclaredCalculator read = TemplateReader.read(Files.readString(template), id -> Optional.empty())
                .template()
                .orElseThrow();
        Map<String, Map<String, String>> told = new TreeMap<>();
        for (NoticeKind kind : read.declaration().notices()) {
            Properties texts = new Properties();
            for (String part : List.of("what", "why", "next")) {
                String key = "notice." + kind.key() + "." + part;
                texts.setProperty(key, read.texts().find(key, Locale.ENGLISH).orElseThrow());
            }
            if (!kind.key().startsWith("template-")) {
                told.computeIfAbsent(kind.severity().name().toLowerCase(Locale.ROOT), none -> new TreeMap<>())
                        .put(kind.key(), sentences(texts, kind.key()));
            }
        }
        return told;
    }

    private static Map<String, Map<String, String>> ofTexts(String plugin, Path sources) throws IOException {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(
                sources.resolve("resources/org/hidewright/" + plugin.replace("-", "") + "/messages.properties"),
                StandardCharsets.UTF_8)) {
            texts.load(reader);
        }
        Map<String, Map<String, String>> told = new TreeMap<>();
        for (MatchResult kind : kinds(sources)) {
            told.computeIfAbsent(kind.group(1), none -> new TreeMap<>())
                    .put(kind.group(2), sentences(texts, kind.group(2)));
        }
        return told;
    }

    private static String sentences(Properties texts, String key) {
        List<String> parts = new ArrayList<>();
        for (String part : List.of("what", "why", "next")) {
            parts.add(PLACE.matcher(texts.getProperty("notice." + key + "." + part, "«" + key + "»"))
                    .replaceAll("…"));
        }
        return "- **" + parts.get(0) + "** " + parts.get(1) + " " + parts.get(2) + "\n";
    }

    private static List<MatchResult> kinds(Path sources) throws IOException {
        List<MatchResult> kinds = new ArrayList<>();
        try (Stream<Path> files = Files.walk(sources)) {
            for (Path file :
                    files.filter(file -> file.toString().endsWith(".java")).toList()) {
                KIND.matcher(Files.readString(file)).results().forEach(kinds::add);
            }
        }
        return kinds;
    }
}
