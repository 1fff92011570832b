package org.hidewright.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.explain.Limits;
import org.hidewright.core.wording.Wording;

/** A calculator explained as text for a terminal. */
final class ExplanationPrinter {
    private final Declaration declaration;
    private final Texts texts;
    private final Session session;
    private final Wording wording;
    private final PrintStream out;
    private final String bundle;

    ExplanationPrinter(Installed installed, Session session) {
        this.declaration = installed.calculator().declaration();
        this.texts = installed.calculator().texts();
        this.bundle = installed.bundle();
        this.session = session;
        this.wording = session.wording();
        this.out = session.out();
    }

    void print() {
        out.println(wording.text(texts, declaration.titleKey()) + " (" + declaration.id() + ")");
        out.println(wording.text(texts, declaration.purposeKey()));
        head("explain.questions");
        questions(declaration.questions(), 1);
        head("explain.answers");
        answers(declaration.answers(), 1);
        if (!declaration.formulas().isEmpty()) {
            head("explain.formulas");
            declaration
                    .formulas()
                    .forEach(formula -> out.println(
                            "  " + wording.text(texts, "formula." + formula.key()) + ":  " + formula.symbols()));
        }
        if (!declaration.sources().isEmpty()) {
            head("explain.sources");
            declaration.sources().forEach(this::source);
        }
        out.println();
        out.println(session.texts().text("explain.brought-by", bundle));
        out.println(session.texts().text("explain.more", declaration.id()));
    }

    private void head(String key) {
        out.println();
        out.println(session.texts().text(key));
    }

    private void source(Source source) {
        String kind = source.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        out.println("  " + wording.host("source-kind." + kind) + ": " + wording.text(texts, "source." + source.key()));
    }

    private void questions(List<Question> questions, int depth) {
        for (Question question : questions) {
            String indent = "  ".repeat(depth);
            out.println(indent + question.key() + "  " + wording.text(texts, question.labelKey()) + facts(question));
            out.println(indent + "    " + wording.text(texts, question.helpKey()));
            written(question).ifPresent(line -> out.println(indent + "    " + line));
            questions(question.questions(), depth + 1);
            Optional<String> preset = VariantPreset.of(question).map(VariantPreset::key);
            for (Variant variant : question.variants()) {
                String mark = preset.equals(Optional.of(variant.key()))
                        ? "  [" + session.texts().text("explain.preset-variant") + "]"
                        : "";
                out.println(indent + "  " + variant.key() + ":  " + wording.text(texts, variant.labelKey()) + mark);
                questions(variant.questions(), depth + 2);
            }
        }
    }

    /** The preset of a table, or of a variant with answers of its own, as it can be typed; else the example of one. */
    private Optional<String> written(Question question) {
        if (question.kind() == Kind.VARIANTS
                && VariantPreset.of(question)
                        .filter(preset -> !preset.answersInside())
                        .isPresent()) {
            return Optional.empty();
        }
        return question.preset().isPresent()
                ? question.preset()
                        .filter(text -> structured(question))
                        .map(text -> session.texts().text("explain.preset", text))
                : question.example()
                        .filter(text -> structured(question))
                        .map(text -> session.texts().text("explain.example-of", text));
    }

    private static boolean structured(Question question) {
        return question.kind() == Kind.ROWS || question.kind() == Kind.VARIANTS || question.kind() == Kind.GROUP;
    }

    private String facts(Question question) {
        StringBuilder facts = new StringBuilder("  [");
        facts.append(question.kind().name().toLowerCase(Locale.ROOT));
        question.unit()
                .filter(unit -> !unit.symbol().isEmpty())
                .ifPresent(unit -> facts.append(", ").append(unit.symbol()));
        Limits limits = new Limits(question);
        if (limits.min().isPresent() || limits.max().isPresent()) {
            facts.append(", ")
                    .append(limits.min().orElse("…"))
                    .append(" – ")
                    .append(limits.max().orElse("…"));
        }
        limits.usual()
                .ifPresent(usual -> facts.append("; ").append(session.texts().text("explain.usual", usual)));
        if (!question.options().isEmpty()) {
            facts.append(": ")
                    .append(String.join(
                            " | ", question.options().stream().map(Option::key).toList()));
        }
        if (question.optional()) {
            facts.append("; ").append(session.texts().text("explain.optional"));
        }
        Optional<String> preset = VariantPreset.of(question)
                .map(VariantPreset::key)
                .or(() -> question.preset().filter(text -> !structured(question)));
        preset.ifPresent(text -> facts.append("; ").append(session.texts().text("explain.preset", text)));
        if (question.preset().isEmpty() && !structured(question)) {
            question.example()
                    .ifPresent(text -> facts.append("; ").append(session.texts().text("explain.example-of", text)));
        }
        return facts.append(']').toString();
    }

    private void answers(List<Answer> answers, int depth) {
        for (Answer answer : answers) {
            String unit = answer.unit()
                    .map(found -> found.symbol())
                    .filter(symbol -> !symbol.isEmpty())
                    .map(symbol -> ", " + symbol)
                    .orElse("");
            out.println("  ".repeat(depth) + answer.key() + "  " + wording.text(texts, answer.labelKey()) + "  ["
                    + answer.kind().name().toLowerCase(Locale.ROOT) + unit + "]");
            answers(answer.columns(), depth + 1);
        }
    }
}
