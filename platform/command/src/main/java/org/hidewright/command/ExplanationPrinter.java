package org.hidewright.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Texts;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Wording;

/** A calculator explained as text for a terminal. */
final class ExplanationPrinter {
    private final Declaration declaration;
    private final Texts texts;
    private final Session session;
    private final Wording wording;
    private final PrintStream out;
    private final String bundle;
    private final boolean takesItem;

    ExplanationPrinter(Installed installed, Session session) {
        this.declaration = installed.calculator().declaration();
        this.texts = installed.calculator().texts();
        this.bundle = installed.bundle();
        this.takesItem = installed.takesItem();
        this.session = session;
        this.wording = session.wording();
        this.out = session.out();
    }

    void print() {
        out.println(wording.text(texts, declaration.titleKey()) + " (" + declaration.id() + ")");
        out.println(wording.text(texts, declaration.purposeKey()));
        head("explain.questions");
        new QuestionLines(texts, session).print(declaration.questions(), 1);
        head("explain.answers");
        answers(declaration.answers(), 1);
        if (!declaration.formulas().isEmpty()) {
            head("explain.formulas");
            declaration
                    .formulas()
                    .forEach(formula -> out.println("  " + wording.text(texts, "formula." + formula.key()) + ":  "
                            + wording.formula(formula.symbols())));
        }
        if (!declaration.sources().isEmpty()) {
            head("explain.sources");
            declaration.sources().forEach(this::source);
        }
        out.println();
        out.println(session.texts().text("explain.brought-by", bundle));
        out.println(
                takesItem
                        ? session.texts().text("explain.more-item", declaration.id())
                        : session.texts().text("explain.more", declaration.id()));
    }

    private void head(String key) {
        out.println();
        out.println(session.texts().text(key));
    }

    private void source(Source source) {
        String kind = source.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        out.println("  " + wording.host("source-kind." + kind) + ": " + wording.text(texts, "source." + source.key()));
    }

    private void answers(List<Answer> answers, int depth) {
        for (Answer answer : answers) {
            String unit = answer.unit()
                    .map(found -> wording.units().shown(found).symbol())
                    .filter(symbol -> !symbol.isEmpty())
                    .map(symbol -> ", " + symbol)
                    .orElse("");
            out.println("  ".repeat(depth) + answer.key() + "  " + wording.label(texts, answer) + "  ["
                    + answer.kind().name().toLowerCase(Locale.ROOT) + unit + "]");
            answers(answer.columns(), depth + 1);
        }
    }
}
