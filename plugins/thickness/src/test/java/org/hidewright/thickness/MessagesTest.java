package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Variant;
import org.junit.jupiter.api.Test;

class MessagesTest {
    @Test
    void everyKeyOfEveryDeclarationHasItsText() {
        Set<String> missing = new TreeSet<>();
        Bundle.declared()
                .forEach(calculator -> keys(calculator.declaration())
                        .filter(key ->
                                calculator.texts().find(key, Locale.ENGLISH).isEmpty())
                        .forEach(missing::add));
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyTextBelongsToSomeDeclaration() throws IOException {
        Properties texts = new Properties();
        texts.load(new InputStreamReader(
                Thickness.class.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8));
        Set<String> idle = texts.stringPropertyNames().stream()
                .filter(key -> !key.endsWith(".help"))
                .collect(Collectors.toCollection(TreeSet::new));
        Bundle.declared().flatMap(calculator -> keys(calculator.declaration())).forEach(idle::remove);
        assertEquals(Set.of(), idle);
    }

    @Test
    void noTextUsesAStraightApostropheWhichWouldQuoteItsPlaces() throws IOException, URISyntaxException {
        Path file = Path.of(Thickness.class.getResource("messages.properties").toURI());
        assertEquals(-1, Files.readString(file).indexOf('\''));
    }

    @Test
    void theListOfCalculatorsIsTheWholeBundle() throws IOException, URISyntaxException {
        Path classes =
                Path.of(Thickness.class.getResource("Thickness.class").toURI()).getParent();
        try (Stream<Path> files = Files.list(classes)) {
            Set<String> annotated = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".class") && !name.contains("-"))
                    .map(name -> load(name.substring(0, name.length() - ".class".length())))
                    .filter(type -> type.isAnnotationPresent(Calculates.class))
                    .map(Class::getSimpleName)
                    .collect(Collectors.toSet());
            Set<String> listed = Bundle.calculators().stream()
                    .map(calculator -> calculator.getClass().getSimpleName())
                    .collect(Collectors.toSet());
            assertEquals(listed, annotated);
        }
    }

    private static Class<?> load(String simpleName) {
        try {
            return Class.forName(Thickness.class.getPackageName() + "." + simpleName);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void everyQuestionCanBeAnsweredFromItsPresetOrExample() {
        Bundle.declared()
                .map(RecordCalculator::declaration)
                .forEach(declaration -> allQuestions(declaration.questions().stream())
                        .forEach(question -> assertTrue(
                                question.example().isPresent(),
                                () -> declaration.id() + " " + question.key() + " has neither preset nor example")));
    }

    @Test
    void everyNumericAnswerNamesWhereItComesFrom() {
        Bundle.declared()
                .map(RecordCalculator::declaration)
                .forEach(declaration -> allAnswers(declaration.answers().stream())
                        .filter(answer -> answer.itemKind().dimension().isPresent())
                        .forEach(answer ->
                                assertTrue(answer.by().isPresent(), () -> declaration.id() + " " + answer.key())));
    }

    @Test
    void everySourceNamedInARowIsDeclared() {
        Bundle.declared()
                .map(RecordCalculator::declaration)
                .forEach(declaration -> allAnswers(declaration.answers().stream())
                        .filter(answer -> answer.by().isPresent())
                        .forEach(answer -> assertTrue(
                                declaration.sourceOf(answer).isPresent(),
                                () -> declaration.id() + " " + answer.key() + " names " + answer.by())));
    }

    private static Stream<Question> allQuestions(Stream<Question> questions) {
        return questions.flatMap(question -> Stream.concat(
                Stream.of(question),
                allQuestions(Stream.concat(
                        question.questions().stream(),
                        question.variants().stream().flatMap(variant -> variant.questions().stream())))));
    }

    private static Stream<Answer> allAnswers(Stream<Answer> answers) {
        return answers.flatMap(answer -> Stream.concat(Stream.of(answer), allAnswers(answer.columns().stream())));
    }

    private static Stream<String> keys(Declaration declaration) {
        Stream<String> titles = Stream.of(declaration.titleKey(), declaration.purposeKey());
        Stream<String> questions = allQuestions(declaration.questions().stream())
                .flatMap(question -> Stream.concat(
                        Stream.concat(Stream.of(question.helpKey()), labels(question)),
                        question.variants().stream().map(Variant::labelKey)));
        Stream<String> answers = allAnswers(declaration.answers().stream()).flatMap(MessagesTest::labels);
        Stream<String> formulas = declaration.formulas().stream().map(formula -> "formula." + formula.key());
        Stream<String> sources = declaration.sources().stream().map(source -> "source." + source.key());
        Stream<String> phrases = declaration.phrases().stream().map(phrase -> "phrase." + phrase);
        Stream<String> notices = declaration.notices().stream()
                .flatMap(kind -> Stream.of("what", "why", "next").map(part -> "notice." + kind.key() + "." + part));
        return Stream.of(titles, questions, answers, formulas, sources, phrases, notices)
                .flatMap(all -> all);
    }

    private static Stream<String> labels(Field field) {
        return Stream.concat(
                Stream.of(field.labelKey()), field.options().stream().map(option -> option.labelKey()));
    }
}
