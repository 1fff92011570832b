package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.straps.DeclaredTexts.Text;
import org.junit.jupiter.api.Test;

class StrapTextsTest {
    /** A heading of more words does not fit over a column of figures on paper. */
    private static final int HEADING_WORDS = 3;

    @Test
    void everyCalculatorOfTheBundleIsWalked() {
        Set<String> ids = DeclaredTexts.calculators().stream()
                .map(calculator -> calculator.declaration().id())
                .collect(Collectors.toSet());
        assertTrue(
                ids.containsAll(
                        Set.of("strap", "bend", "neutral-line", "wrap", "two-bars", "keeper", "strap-width", "strips")),
                ids::toString);
    }

    @Test
    void everythingShownHasItsText() throws IOException {
        Properties texts = texts();
        Set<String> missing = DeclaredTexts.all().stream()
                .filter(Text::required)
                .filter(text -> texts.getProperty(text.key(), "").isBlank())
                .map(text -> text.key() + " (" + text.wantedBy() + ")")
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyTextIsShownSomewhere() throws IOException {
        Set<String> idle = new TreeSet<>(texts().stringPropertyNames());
        DeclaredTexts.all().forEach(text -> idle.remove(text.key()));
        assertEquals(Set.of(), idle);
    }

    @Test
    void noKeyIsWrittenTwice() throws IOException {
        Map<String, Integer> times = new HashMap<>();
        for (String line : lines()) {
            if (!line.startsWith("#") && line.contains("=")) {
                times.merge(line.substring(0, line.indexOf('=')).strip(), 1, Integer::sum);
            }
        }
        times.values().removeIf(count -> count == 1);
        assertEquals(Map.of(), times);
    }

    @Test
    void fieldsThatShareALabelAskForOneThing() {
        Map<String, Text> first = new HashMap<>();
        List<String> clashes = new ArrayList<>();
        for (Text text : DeclaredTexts.all()) {
            Text other = first.putIfAbsent(text.key(), text);
            if (other != null && !other.kind().equals(text.kind())) {
                clashes.add(text.key() + ": " + other.wantedBy() + " and " + text.wantedBy());
            }
        }
        assertEquals(List.of(), clashes);
    }

    @Test
    void noTextHasAStraightApostropheWhichWouldHideItsPlaces() throws IOException {
        assertEquals(
                List.of(), lines().stream().filter(line -> line.contains("'")).toList());
    }

    @Test
    void aNoticeCallsOnlyForWhatItIsRaisedWith() throws IOException {
        Map<String, Integer> fewest = RaisedNotices.fewestArguments();
        Set<String> unfed = new TreeSet<>();
        texts().forEach((key, text) -> {
            int wanted = places((String) text);
            String[] parts = ((String) key).split("\\.");
            boolean notice = parts[0].equals("notice");
            if (!notice && wanted > 0 && !parts[0].equals("phrase")) {
                unfed.add(key + " has a place that nothing fills");
            } else if (notice && wanted > fewest.getOrDefault(parts[1], 0)) {
                unfed.add(key + " calls for " + wanted + " of " + fewest.getOrDefault(parts[1], 0));
            }
        });
        assertEquals(Set.of(), unfed);
    }

    @Test
    void everyDeclaredNoticeIsRaisedSomewhere() {
        Set<String> idle = DeclaredTexts.calculators().stream()
                .flatMap(calculator -> calculator.declaration().notices().stream())
                .map(kind -> kind.key())
                .collect(Collectors.toCollection(TreeSet::new));
        idle.removeAll(RaisedNotices.fewestArguments().keySet());
        assertEquals(Set.of(), idle);
    }

    @Test
    void headingsOfColumnsAreShort() throws IOException {
        Properties texts = texts();
        Set<String> headings = new TreeSet<>();
        for (RecordCalculator calculator : DeclaredTexts.calculators()) {
            Declaration declaration = calculator.declaration();
            declaration.questions().forEach(question -> {
                question.questions().forEach(column -> headings.add(column.labelKey()));
                question.variants()
                        .forEach(variant -> variant.questions().stream()
                                .map(Question::labelKey)
                                .forEach(headings::add));
            });
            declaration
                    .answers()
                    .forEach(answer ->
                            answer.columns().stream().map(Answer::labelKey).forEach(headings::add));
        }
        headings.removeIf(key -> texts.getProperty(key, "").split(" ").length <= HEADING_WORDS);
        assertEquals(Set.of(), headings);
    }

    /** One more than the greatest place number in a pattern. */
    private static int places(String pattern) {
        return new MessageFormat(pattern).getFormatsByArgumentIndex().length;
    }

    private static Properties texts() throws IOException {
        Properties texts = new Properties();
        try (InputStreamReader reader = new InputStreamReader(
                StrapLayout.class.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8)) {
            texts.load(reader);
        }
        return texts;
    }

    private static List<String> lines() throws IOException {
        try {
            return Files.readAllLines(
                    Path.of(StrapLayout.class.getResource("messages.properties").toURI()));
        } catch (URISyntaxException e) {
            throw new AssertionError(e);
        }
    }
}
