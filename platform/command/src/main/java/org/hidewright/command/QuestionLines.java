package org.hidewright.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.explain.Limits;
import org.hidewright.core.wording.Wording;

/** Questions of a calculator, or columns of a table, explained as text for a terminal. */
final class QuestionLines {
    private final Texts texts;
    private final Session session;
    private final Wording wording;
    private final PrintStream out;

    QuestionLines(Texts texts, Session session) {
        this.texts = texts;
        this.session = session;
        this.wording = session.wording();
        this.out = session.out();
    }

    /** The questions and those inside them, each with what may be typed. */
    void print(List<Question> questions, int depth) {
        for (Question question : questions) {
            String indent = "  ".repeat(depth);
            out.println(indent + question.key() + "  " + wording.text(texts, question.labelKey()) + facts(question));
            out.println(indent + "    " + wording.text(texts, question.helpKey()));
            written(question).ifPresent(line -> out.println(indent + "    " + line));
            print(question.questions(), depth + 1);
            Optional<String> preset = VariantPreset.of(question).map(VariantPreset::key);
            for (Variant variant : question.variants()) {
                String mark = preset.equals(Optional.of(variant.key()))
                        ? "  [" + session.texts().text("explain.preset-variant") + "]"
                        : "";
                out.println(indent + "  " + variant.key() + ":  " + wording.text(texts, variant.labelKey()) + mark);
                print(variant.questions(), depth + 2);
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
        Optional<Unit> own = question.unit().filter(unit -> !unit.symbol().isEmpty());
        Optional<Unit> shown = own.map(wording.units()::shown);
        shown.ifPresent(unit -> facts.append(", ").append(unit.symbol()));
        Limits limits = new Limits(question, wording.units());
        if (limits.min().isPresent() || limits.max().isPresent()) {
            facts.append(", ")
                    .append(limits.min().orElse("…"))
                    .append(" – ")
                    .append(limits.max().orElse("…"));
        }
        limits.usual()
                .ifPresent(usual -> facts.append("; ").append(session.texts().text("explain.usual", usual)));
        own.filter(unit -> !shown.equals(own))
                .ifPresent(unit -> facts.append("; ").append(session.texts().text("explain.bare", unit.symbol())));
        if (!question.options().isEmpty()) {
            facts.append(": ")
                    .append(String.join(
                            " | ", question.options().stream().map(Option::key).toList()));
        }
        question.from()
                .ifPresent(from -> facts.append("; ").append(session.texts().text("explain.from", from)));
        question.stock()
                .ifPresent(stock -> facts.append("; ").append(session.texts().text("explain.stock", stock)));
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
}
