package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

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
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.testkit.DeclaredTexts.Text;
import org.junit.jupiter.api.Test;

/**
 * What the host expects of every bundle: sound declarations, a text for everything that is shown, and no text that nothing
 * shows. Extend it in a test class of your own; it reads the sources in {@code src/main/java} of the folder the build runs
 * in, to see what notices are raised with.
 */
public abstract class BundleContract {
    /** A heading of more words does not fit over a column of figures on paper. */
    private static final int HEADING_WORDS = 3;

    private final Class<?> one;
    private final List<RecordCalculator> calculators;
    private final List<Text> declared;

    /** @param one any class of the package the calculators and their {@code messages.properties} are in */
    protected BundleContract(Class<?> one) {
        this.one = one;
        this.calculators = BundleCalculators.declaredBeside(one);
        this.declared = DeclaredTexts.of(calculators);
    }

    /** Keys of texts that are shown by other means than a calculator, such as those of sections of a job card. */
    protected Set<String> otherTexts() {
        return Set.of();
    }

    @Test
    void thereIsACalculator() {
        assertFalse(calculators.isEmpty(), "no class beside " + one + " has @Calculates");
    }

    @Test
    void everyQuestionCanBeAnsweredFromItsPresetOrExample() {
        Set<String> without = new TreeSet<>();
        calculators.stream()
                .map(RecordCalculator::declaration)
                .forEach(declaration -> all(declaration.questions().stream())
                        .filter(question -> question.example().isEmpty())
                        .filter(question -> question.kind() != Kind.GROUP) // answered by the questions in it
                        .filter(question -> question.kind() != Kind.ITEM) // only ever linked
                        .forEach(question -> without.add(declaration.id() + " " + question.key())));
        assertEquals(Set.of(), without);
    }

    @Test
    void everyNumberNamesAFormulaOrSourceThatIsDeclared() {
        Set<String> without = new TreeSet<>();
        calculators.stream()
                .map(RecordCalculator::declaration)
                .forEach(declaration -> columns(declaration.answers().stream())
                        .filter(answer -> answer.itemKind().dimension().isPresent())
                        .filter(answer -> declaration.sourceOf(answer).isEmpty())
                        .forEach(answer -> without.add(declaration.id() + " " + answer.key())));
        assertEquals(Set.of(), without);
    }

    private static Stream<Answer> columns(Stream<Answer> answers) {
        return answers.flatMap(
                answer -> Stream.concat(Stream.of(answer), columns(DeclaredTexts.columns(answer).stream())));
    }

    private static Stream<Question> all(Stream<Question> questions) {
        return questions.flatMap(question -> Stream.concat(
                Stream.of(question),
                all(Stream.concat(
                        question.questions().stream(),
                        question.variants().stream().flatMap(variant -> variant.questions().stream())))));
    }

    @Test
    void everythingShownHasItsText() throws IOException {
        Properties texts = texts();
        Set<String> missing = declared.stream()
                .filter(Text::required)
                .filter(text -> texts.getProperty(text.key(), "").isBlank())
                .filter(text -> calculators.stream()
                        .noneMatch(calculator -> calculator
                                .texts()
                                .find(text.key(), Locale.ENGLISH)
                                .isPresent()))
                .map(text -> text.key() + " (" + text.wantedBy() + ")")
                .collect(Collectors.toCollection(TreeSet::new));
        otherTexts().stream()
                .filter(key -> texts.getProperty(key, "").isBlank())
                .forEach(missing::add);
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyTextIsShownSomewhere() throws IOException {
        Set<String> idle = new TreeSet<>(texts().stringPropertyNames());
        declared.forEach(text -> idle.remove(text.key()));
        idle.removeAll(otherTexts());
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
        for (Text text : declared) {
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
            if (!notice
                    && wanted > 0
                    && !parts[0].equals("phrase")
                    && !otherTexts().contains(key)) {
                unfed.add(key + " has a place that nothing fills");
            } else if (notice && wanted > fewest.getOrDefault(parts[1], 0)) {
                unfed.add(key + " calls for " + wanted + " of " + fewest.getOrDefault(parts[1], 0));
            }
        });
        assertEquals(Set.of(), unfed);
    }

    @Test
    void everyDeclaredNoticeIsRaisedSomewhere() {
        Set<String> idle = calculators.stream()
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
        for (RecordCalculator calculator : calculators) {
            Declaration declaration = calculator.declaration();
            declaration
                    .answers()
                    .forEach(answer -> DeclaredTexts.columns(answer).stream()
                            .map(Answer::labelKey)
                            .forEach(headings::add));
        }
        headings.removeIf(key -> texts.getProperty(key, "").split(" ").length <= HEADING_WORDS);
        assertEquals(Set.of(), headings);
    }

    /** One more than the greatest place number in a pattern. */
    private static int places(String pattern) {
        return new MessageFormat(pattern).getFormatsByArgumentIndex().length;
    }

    private Properties texts() throws IOException {
        Properties texts = new Properties();
        try (InputStreamReader reader =
                new InputStreamReader(one.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8)) {
            texts.load(reader);
        }
        return texts;
    }

    private List<String> lines() throws IOException {
        try {
            return Files.readAllLines(
                    Path.of(one.getResource("messages.properties").toURI()));
        } catch (URISyntaxException e) {
            throw new AssertionError(e);
        }
    }
}
