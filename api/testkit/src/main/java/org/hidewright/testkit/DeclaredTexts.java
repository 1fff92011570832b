package org.hidewright.testkit;

import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;

/** Every text that calculators call for, found by walking their declarations. */
final class DeclaredTexts {
    /**
     * One text.
     *
     * @param wantedBy the calculator and field, option, formula or notice that shows it
     * @param kind what it stands for; two fields may share a label only if they are of one kind and unit
     * @param required whether the bundle is incomplete without it
     */
    record Text(String key, String wantedBy, String kind, boolean required) {}

    private DeclaredTexts() {}

    static List<Text> of(List<RecordCalculator> calculators) {
        return calculators.stream()
                .map(RecordCalculator::declaration)
                .flatMap(DeclaredTexts::of)
                .toList();
    }

    private static Stream<Text> of(Declaration declaration) {
        String id = declaration.id();
        Stream<Text> head =
                Stream.of(declaration.titleKey(), declaration.purposeKey()).map(key -> word(key, id));
        Stream<Text> working = Stream.of(
                        declaration.formulas().stream().map(formula -> "formula." + formula.key()),
                        declaration.sources().stream().map(source -> "source." + source.key()),
                        declaration.phrases().stream().map(phrase -> "phrase." + phrase),
                        declaration.notices().stream()
                                .flatMap(kind -> Stream.of("what", "why", "next")
                                        .map(part -> "notice." + kind.key() + "." + part)))
                .flatMap(keys -> keys)
                .map(key -> word(key, id));
        return Stream.of(head, questions(declaration.questions(), id), answers(declaration.answers(), id), working)
                .flatMap(texts -> texts);
    }

    private static Stream<Text> questions(List<Question> questions, String by) {
        return questions.stream().flatMap(question -> {
            String here = by + " / " + question.key();
            Stream<Text> variants = question.variants().stream()
                    .flatMap(variant -> Stream.concat(
                            Stream.of(word(variant.labelKey(), here)),
                            questions(variant.questions(), here + " " + variant.key())));
            return Stream.of(field(question, by, true), variants, questions(question.questions(), here))
                    .flatMap(texts -> texts);
        });
    }

    /** The columns a bundle gives their texts; the facts of an item are the host’s to name. */
    static List<Answer> columns(Answer answer) {
        return answer.kind() == Kind.ITEM ? List.of() : answer.columns();
    }

    private static Stream<Text> answers(List<Answer> answers, String by) {
        return answers.stream()
                .flatMap(answer ->
                        Stream.concat(field(answer, by, false), answers(columns(answer), by + " / " + answer.key())));
    }

    private static Stream<Text> field(Field field, String by, boolean helped) {
        String kind = field.kind() + " " + field.itemKind() + " "
                + field.unit().map(Object::toString).orElse("");
        String here = by + " / " + field.key();
        return Stream.concat(
                Stream.of(new Text(field.labelKey(), here, kind, true), new Text(field.helpKey(), here, kind, helped)),
                field.options().stream().map(option -> word(option.labelKey(), here)));
    }

    private static Text word(String key, String by) {
        return new Text(key, by, "", true);
    }
}
