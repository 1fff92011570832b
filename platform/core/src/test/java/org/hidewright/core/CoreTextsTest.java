package org.hidewright.core;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Kind;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.brought.BroughtNotices;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.expression.ExpressionNotices;
import org.hidewright.core.item.ItemNotices;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.proof.ProofNotices;
import org.hidewright.core.store.StoreNotices;
import org.hidewright.core.template.TemplateNotices;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.WorkshopNotices;
import org.junit.jupiter.api.Test;

/** The texts of the host are complete, are patterns that can be filled, and are given all that they ask for. */
class CoreTextsTest {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)}");
    private static final Pattern USE = Pattern.compile(
            "(?:AddOnNotices|BroughtNotices|ExpressionNotices|JsonNotices|ProjectNotices|ProofNotices|CatalogueNotices|ItemNotices|OutlineNotices|StoreNotices|TemplateNotices|WorkshopNotices)\\s*\\.([A-Z0-9_]+)\\s*\\.with\\(");

    /** Notices of items are given their number, part and place by the check they are of. */
    private static final Pattern ITEM_USE = Pattern.compile("ItemCheck\\s*\\.of\\((?=\\s*ItemNotices\\.([A-Z0-9_]+))");

    private static Properties texts() throws Exception {
        Properties texts = new Properties();
        try (Reader reader = new InputStreamReader(
                CoreTexts.class.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8)) {
            texts.load(reader);
        }
        return texts;
    }

    private static List<NoticeKind> all() {
        return Stream.of(
                        AddOnNotices.all(),
                        BroughtNotices.all(),
                        ExpressionNotices.all(),
                        JsonNotices.all(),
                        ProjectNotices.all(),
                        ProofNotices.all(),
                        CatalogueNotices.all(),
                        ItemNotices.all(),
                        OutlineNotices.all(),
                        StoreNotices.all(),
                        TemplateNotices.all(),
                        WorkshopNotices.all())
                .flatMap(List::stream)
                .toList();
    }

    @Test
    void everyTextIsAPatternWithoutALoneApostrophe() throws Exception {
        texts().forEach((key, value) -> {
            String text = String.valueOf(value);
            assertFalse(text.isBlank(), key + " is empty");
            assertFalse(text.replaceAll("'[{}]'", "").contains("'"), key + ": use ’ for an apostrophe");
            assertFalse(
                    new MessageFormat(text, Locale.ROOT)
                            .format(new Object[] {"a", "b", "c", "d", "e", "f", "g", "h", "i"})
                            .matches(".*\\{\\d}.*"),
                    key::toString);
        });
    }

    @Test
    void everyNoticeSaysWhatWhyAndWhatNextAndNoTextIsLeftOver() throws Exception {
        Set<String> expected = new TreeSet<>();
        for (NoticeKind kind : all()) {
            for (String part : List.of("what", "why", "next")) {
                expected.add("notice." + kind.key() + "." + part);
            }
        }
        Set<String> there = new TreeSet<>(texts().stringPropertyNames());
        there.removeIf(key -> !key.startsWith("notice."));
        assertEquals(expected, there);
    }

    @Test
    void everyConstantOfTheseClassesIsListed() throws Exception {
        for (Class<?> notices : List.of(
                AddOnNotices.class,
                ExpressionNotices.class,
                JsonNotices.class,
                ProjectNotices.class,
                CatalogueNotices.class,
                ItemNotices.class,
                OutlineNotices.class,
                StoreNotices.class,
                TemplateNotices.class,
                WorkshopNotices.class)) {
            List<Object> constants = new ArrayList<>();
            for (var field : notices.getFields()) {
                constants.add(field.get(null));
            }
            Object listed = notices.getMethod("all").invoke(null);
            assertEquals(new HashSet<>(constants), new HashSet<>((List<?>) listed), notices.getSimpleName());
        }
    }

    @Test
    void everyStateSeverityKindAndOriginHasItsText() throws Exception {
        Properties texts = texts();
        List<String> keys = new ArrayList<>();
        keys(keys, "state.", WorkedSlip.State.values());
        keys(keys, "severity.", NoticeKind.Severity.values());
        keys(keys, "source-kind.", Source.Kind.values());
        keys(keys, "kind.", Kind.values());
        keys.addAll(List.of("origin.typed", "origin.preset", "origin.linked", "origin.typed-row", "origin.preset-row"));
        keys.addAll(List.of("origin.workshop", "origin.workshop-row", "where.cell"));
        keys.addAll(
                List.of("state.dormant-newer", "state.dormant-unusable", "state.dormant-unnamed", "state.dormant-off"));
        keys.forEach(key -> assertTrue(texts.containsKey(key), key));
    }

    private static void keys(List<String> keys, String prefix, Enum<?>[] constants) {
        Arrays.stream(constants)
                .forEach(constant -> keys.add(
                        prefix + constant.name().toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    @Test
    void everyTextThatTheSourcesAskForIsThere() throws Exception {
        Properties texts = texts();
        Pattern asked = Pattern.compile("(?:wording|wording\\(\\))\\s*\\.host\\(\\s*\"([a-z.-]+)\"\\s*[,)]");
        Set<String> keys = new TreeSet<>();
        for (String source : sources()) {
            Matcher matcher = asked.matcher(source);
            while (matcher.find()) {
                keys.add(matcher.group(1));
            }
        }
        assertTrue(keys.size() > 15, keys.toString());
        keys.forEach(key -> assertTrue(texts.containsKey(key), key));
    }

    /** The numbers of arguments are read off the sources: each use of a notice gives as many as its texts have places. */
    @Test
    void everyNoticeIsGivenWhatItsTextsAskFor() throws Exception {
        Properties texts = texts();
        Set<String> used = new TreeSet<>();
        for (String source : sources()) {
            raised(source, USE, 0, texts, used);
            raised(source, ITEM_USE, 1, texts, used); // four stand for the kind, the part and the place
        }
        Set<String> all = new TreeSet<>();
        all().forEach(kind -> all.add("notice." + kind.key()));
        assertEquals(all, used, "a notice that nobody raises, or one whose constant is not called like its key");
    }

    private static void raised(String source, Pattern uses, int more, Properties texts, Set<String> used) {
        Matcher use = uses.matcher(source);
        while (use.find()) {
            String key = "notice." + use.group(1).toLowerCase(Locale.ROOT).replace('_', '-');
            used.add(key);
            int given = arguments(source, use.end()) + more;
            for (String part : List.of("what", "why", "next")) {
                assertTrue(
                        places(texts.getProperty(key + "." + part)) <= given, key + "." + part + " is given " + given);
            }
        }
    }

    /** The core, and the bundles that raise notices of it. */
    private static List<String> sources() throws Exception {
        List<String> sources = new ArrayList<>();
        for (String folder : List.of(
                "src/main/java",
                "../catalogue/src/main/java",
                "../addons/src/main/java",
                "../documents/src/main/java")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file :
                        files.filter(path -> path.toString().endsWith(".java")).toList()) {
                    sources.add(Files.readString(file));
                }
            }
        }
        return sources;
    }

    private static int places(String pattern) {
        Matcher matcher = PLACE.matcher(pattern);
        int places = 0;
        while (matcher.find()) {
            places = Math.max(places, Integer.parseInt(matcher.group(1)) + 1);
        }
        return places;
    }

    /** Arguments between the bracket before {@code from} and the one that closes it. */
    private static int arguments(String source, int from) {
        int depth = 0;
        int commas = 0;
        boolean quoted = false;
        for (int i = from; i < source.length(); i++) {
            char c = source.charAt(i);
            quoted ^= c == '"' && source.charAt(i - 1) != '\\';
            if (quoted) {
                continue;
            }
            depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
            if (depth < 0) {
                return source.substring(from, i).isBlank() ? 0 : commas + 1;
            }
            commas += depth == 0 && c == ',' ? 1 : 0;
        }
        throw new AssertionError("no closing bracket");
    }
}
