package org.hidewright.core.explain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.wording.Wording;

/** Everything about a calculator as JSON: schema, all keys, formulas, sources, notices and an example that runs. */
public final class ExplanationJson {
    private final Installed installed;
    private final Declaration declaration;
    private final Texts texts;
    private final Wording wording;

    public ExplanationJson(Installed installed, Wording wording) {
        this.installed = installed;
        this.declaration = installed.calculator().declaration();
        this.texts = installed.calculator().texts();
        this.wording = wording;
    }

    public String write() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", declaration.id());
        tree.put("version", declaration.version());
        tree.put("bundle", installed.bundle());
        tree.put("title", wording.text(texts, declaration.titleKey()));
        tree.put("purpose", wording.text(texts, declaration.purposeKey()));
        tree.put("questions", questions(declaration.questions()));
        tree.put("answers", answers(declaration.answers()));
        tree.put("formulas", formulas());
        tree.put("sources", sources());
        tree.put("notices", notices());
        tree.put("schema", new QuestionSchema(texts, wording).schema(declaration.questions()));
        tree.put("example", QuestionExample.all(declaration.questions()));
        return JsonOut.write(tree);
    }

    private List<Object> questions(List<Question> questions) {
        return questions.stream().<Object>map(this::question).toList();
    }

    private Map<String, Object> question(Question question) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("key", question.key());
        tree.put("label", wording.text(texts, question.labelKey()));
        tree.put("help", wording.text(texts, question.helpKey()));
        tree.put("kind", kind(question.kind().name()));
        question.picture().ifPresent(picture -> tree.put("picture", picture));
        if (question.itemKind() != question.kind()) {
            tree.put("of", kind(question.itemKind().name()));
        }
        question.unit()
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .ifPresent(symbol -> tree.put("unit", symbol));
        Limits limits = new Limits(question);
        limits.min().ifPresent(min -> tree.put("min", min));
        limits.max().ifPresent(max -> tree.put("max", max));
        limits.usual().ifPresent(usual -> tree.put("usual", usual));
        if (!question.options().isEmpty()) {
            tree.put("choices", question.options().stream().map(Option::key).toList());
        }
        tree.put("optional", question.optional());
        question.from().ifPresent(from -> tree.put("from", from));
        question.stock().ifPresent(stock -> tree.put("stock", stock));
        question.preset().ifPresent(preset -> tree.put("preset", QuestionExample.asJson(question, preset)));
        question.example().ifPresent(example -> tree.put("example", QuestionExample.asJson(question, example)));
        if (!question.questions().isEmpty()) {
            tree.put("questions", questions(question.questions()));
        }
        if (!question.variants().isEmpty()) {
            tree.put("variants", question.variants().stream().map(this::variant).toList());
        }
        return tree;
    }

    private Map<String, Object> variant(Variant variant) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("key", variant.key());
        tree.put("label", wording.text(texts, variant.labelKey()));
        tree.put("questions", questions(variant.questions()));
        return tree;
    }

    private List<Object> answers(List<Answer> answers) {
        return answers.stream().<Object>map(this::answer).toList();
    }

    private Map<String, Object> answer(Answer answer) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("key", answer.key());
        tree.put("label", wording.label(texts, answer));
        tree.put("kind", kind(answer.kind().name()));
        answer.unit()
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .ifPresent(symbol -> tree.put("unit", symbol));
        answer.by().ifPresent(by -> tree.put("by", by));
        if (!answer.options().isEmpty()) {
            tree.put("choices", answer.options().stream().map(Option::key).toList());
        }
        if (!answer.columns().isEmpty()) {
            tree.put("columns", answers(answer.columns()));
        }
        return tree;
    }

    private List<Object> formulas() {
        return declaration.formulas().stream()
                .<Object>map(formula -> {
                    Map<String, Object> tree = new LinkedHashMap<>();
                    tree.put("key", formula.key());
                    tree.put("name", wording.text(texts, "formula." + formula.key()));
                    tree.put("formula", formula.symbols());
                    tree.put("source", formula.source().key());
                    return tree;
                })
                .toList();
    }

    private List<Object> sources() {
        return declaration.sources().stream()
                .<Object>map(source -> {
                    Map<String, Object> tree = new LinkedHashMap<>();
                    tree.put("key", source.key());
                    tree.put("kind", kind(source.kind().name()));
                    tree.put("text", wording.text(texts, "source." + source.key()));
                    return tree;
                })
                .toList();
    }

    private List<Object> notices() {
        return declaration.notices().stream().<Object>map(this::notice).toList();
    }

    private Map<String, Object> notice(NoticeKind notice) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("severity", kind(notice.severity().name()));
        tree.put("key", notice.key());
        return tree;
    }

    private static String kind(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
