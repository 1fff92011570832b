package org.hidewright.core.template;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.InvalidDeclaration;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Written;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.Sort;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;

/** Reads a template that is written as a text. What is wrong is told with its place; a template with a fault is none. */
public final class TemplateReader {
    /** The format of templates that this version knows. */
    public static final int FORMAT = 1;

    /** What a template holds. */
    public static final List<String> HEAD = List.of(
            "template",
            "id",
            "version",
            "title",
            "purpose",
            "questions",
            "values",
            "tells",
            "answers",
            "item",
            "draws",
            PicturesIn.KEY);

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(?:[.-][a-z0-9]+)*");
    /** What something that is told holds. */
    public static final List<String> TELL =
            List.of("key", "severity", "when", "at", "with", "what", "why", "next", "together");
    /** What holds the calculator that draws. */
    public static final List<String> DRAWS = List.of("calculator", "questions");
    /** What a value holds that another calculator answers. */
    public static final List<String> ASKS = List.of("asks", "questions", "answers");

    private final Function<String, Optional<DeclaredCalculator>> others;
    private final List<Remark> remarks = new ArrayList<>();
    private final Map<String, String> texts = new HashMap<>();
    private final Map<String, Sort> names = new LinkedHashMap<>();
    private final Set<String> questions = new LinkedHashSet<>();
    private final ExpressionsIn expressions = new ExpressionsIn(this::say);
    private final Shapes shapes = new Shapes(this::say);
    private final WrittenQuestions written = new WrittenQuestions(this::say, texts);
    private final WrittenSources sources = new WrittenSources(this::say, texts);

    private TemplateReader(Function<String, Optional<DeclaredCalculator>> others) {
        this.others = others;
    }

    /**
     * What reading came to: a template, or the reason there is none.
     *
     * @param unused questions that no expression takes
     */
    public record Result(Optional<TextTemplate> template, List<Remark> remarks, Set<String> unused) {}

    /**
     * Reads a template's text.
     *
     * @param others finds the calculator that draws, once it is needed
     */
    public static Result read(String text, Function<String, Optional<DeclaredCalculator>> others) {
        TemplateReader reader = new TemplateReader(others);
        Optional<TextTemplate> template = reader.template(text);
        boolean sound = reader.remarks.stream().noneMatch(Remark::stops);
        return new Result(sound ? template : Optional.empty(), List.copyOf(reader.remarks), reader.unused());
    }

    private void say(Notice notice, Place place) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS).atPlace(place));
    }

    private Set<String> unused() {
        Set<String> unused = new LinkedHashSet<>(questions);
        unused.removeAll(expressions.used());
        return unused;
    }

    private Optional<TextTemplate> template(String text) {
        JsonText json;
        try {
            json = JsonText.read(text);
        } catch (JsonTrouble e) {
            say(JsonNotices.NOT_JSON.with(e.words()), e.place());
            return Optional.empty();
        }
        JsonNode root = json.root();
        Optional<JsonNode> format = root instanceof JsonObject object ? object.get("template") : Optional.empty();
        if (format.isEmpty()) {
            say(TemplateNotices.NOT_A_TEMPLATE.with(), root.place());
            return Optional.empty();
        }
        int newest = shapes.number(format.get(), "template");
        if (newest > FORMAT) {
            say(
                    TemplateNotices.TEMPLATE_NEWER.with(newest, FORMAT),
                    format.get().place());
            return Optional.empty();
        }
        return head((JsonObject) root, json);
    }

    private Optional<TextTemplate> head(JsonObject head, JsonText json) {
        shapes.known(head, HEAD);
        PicturesIn pictures = new PicturesIn(json, head, shapes, remarks);
        String id = shapes.text(head, "id");
        String title = shapes.text(head, "title");
        texts.put(id + ".title", title);
        texts.put(id + ".purpose", shapes.text(head, "purpose"));
        List<Question> questions = new ArrayList<>();
        shapes.objects(head, "questions", "{\"key\": \"width\", \"kind\": \"length\", \"unit\": \"mm\"}")
                .forEach(object -> question(object, id).ifPresent(question -> {
                    pictures.check(question, object.place(), this::say);
                    questions.add(question);
                }));
        List<NamedValue> values = values(head, id);
        List<Formula> formulas = formulas(values);
        Set<String> byKey = formulas.stream().map(Formula::key).collect(Collectors.toCollection(LinkedHashSet::new));
        List<Tell> tells = new ArrayList<>();
        shapes.objects(head, "tells", "{\"key\": \"too-narrow\", \"when\": \"width < 10 mm\"}")
                .forEach(object -> tell(object).ifPresent(tells::add));
        Map<Answer, Expression> answers = new LinkedHashMap<>();
        shapes.objects(
                        head,
                        "answers",
                        "{\"key\": \"length\", \"kind\": \"length\", \"unit\": \"mm\", \"is\": \"2 * width\"}")
                .forEach(object -> answer(object, id, byKey, answers));
        Optional<Asking> drawing = shapes.object(head, "draws", "{\"calculator\": \"parts\", \"questions\": {}}")
                .flatMap(object -> asking(object, DRAWS, "calculator"));
        texts.put(
                id + ".answer." + TextTemplate.ITEM, head.get("item").isPresent() ? shapes.text(head, "item") : title);
        try {
            List<Answer> declared = new ArrayList<>(answers.keySet());
            declared.add(Written.item(id + ".answer", TextTemplate.ITEM));
            return drawing.map(drawn -> new TextTemplate(
                    Written.declaration(
                            id,
                            head.get("version")
                                    .map(node -> shapes.number(node, "version"))
                                    .orElse(1),
                            questions,
                            declared,
                            formulas,
                            Stream.concat(tells.stream().map(Tell::kind), TextTemplate.NOTICES.stream())
                                    .toList(),
                            List.of()),
                    values,
                    tells,
                    answers,
                    drawn,
                    texts,
                    pictures.texts(),
                    (key, language) -> Optional.empty()));
        } catch (InvalidDeclaration e) {
            say(TemplateNotices.TEMPLATE_DECLARATION.with(e.getMessage()), head.place());
            return Optional.empty();
        }
    }

    private List<Formula> formulas(List<NamedValue> values) {
        List<Formula> formulas = new ArrayList<>();
        for (NamedValue value : values) {
            if (value instanceof NamedValue.Worked worked && Explained.isWorth(worked.expression())) {
                Explained explained = new Explained(worked);
                texts.put("formula." + explained.formula().key(), explained.title());
                formulas.add(explained.formula());
            }
        }
        return formulas;
    }

    private Optional<Question> question(JsonObject object, String id) {
        Optional<Question> read = written.question(object, id)
                .filter(question -> named(question.key(), Worths.sort(question), object.place()));
        String key = object.text("key").orElse("");
        if (names.containsKey(key)) {
            questions.add(key);
        } else {
            expressions.spoilt(key);
        }
        return read;
    }

    private List<NamedValue> values(JsonObject head, String id) {
        List<NamedValue> values = new ArrayList<>();
        if (head.get("values").isEmpty()) {
            return values;
        }
        shapes.object(head, "values", "{\"turn\": \"pi * radius\"}").ifPresent(object -> {
            object.members().forEach((name, member) -> expressions.later(name, member.place()));
            for (Map.Entry<String, Member> member : object.members().entrySet()) {
                JsonNode node = member.getValue().value();
                Place place = member.getValue().place();
                Optional<NamedValue> value = value(member.getKey(), node, place, id);
                value.ifPresent(values::add);
                expressions.defined(member.getKey(), value);
            }
        });
        return values;
    }

    /** Asked of another calculator, worked out with a source, or worked out by a bare expression. */
    private Optional<NamedValue> value(String name, JsonNode node, Place place, String id) {
        if (!(node instanceof JsonObject object)) {
            return workedOut(name, node, place, Explained.UNSAID);
        } else if (object.get("is").isEmpty()) {
            return asked(name, object, place);
        }
        Source source = sources.source(id + "-" + name, object).orElse(Explained.UNSAID);
        return workedOut(name, object.get("is").get(), place, source);
    }

    private Optional<NamedValue> workedOut(String name, JsonNode node, Place place, Source source) {
        Optional<Expression> read = expressions.expression(name, node, names);
        if (read.isEmpty()) {
            expressions.spoilt(name);
        }
        return read.filter(expression -> named(name, ExpressionsIn.sort(expression, names), place))
                .map(expression -> new NamedValue.Worked(name, expression, source));
    }

    private Optional<NamedValue> asked(String name, JsonObject object, Place place) {
        Optional<Asking> asking = asking(object, ASKS, "asks");
        Map<String, Sort> taken = new LinkedHashMap<>();
        shapes.object(object, "answers", "{\"width\": \"length\"}").ifPresent(answers -> {
            for (Map.Entry<String, Member> answer : answers.members().entrySet()) {
                String key = name + "." + answer.getKey();
                Optional<Sort> sort = written.kind(answers, answer.getKey()).map(Worths::sort);
                if (sort.isEmpty()) {
                    expressions.spoilt(key);
                } else if (named(key, sort.get(), place)) {
                    taken.put(answer.getKey(), sort.get());
                }
            }
        });
        return asking.map(whom -> new NamedValue.Answered(name, whom, taken));
    }

    /** What another calculator is asked, and by what id: under {@code calculator} or {@code asks}. */
    private Optional<Asking> asking(JsonObject object, List<String> keys, String whom) {
        shapes.known(object, keys);
        String calculator = shapes.text(object, whom);
        return shapes.object(object, "questions", "{\"parts\": []}")
                .map(questions -> new SketchReader(names, expressions).group(questions))
                .map(sketch -> new Asking(calculator, sketch, others));
    }

    private Optional<Tell> tell(JsonObject object) {
        shapes.known(object, TELL);
        String key = shapes.text(object, "key");
        for (String part : List.of("what", "why", "next")) {
            texts.put("notice." + key + "." + part, shapes.text(object, part));
        }
        String at = object.get("at").isPresent() ? shapes.text(object, "at") : "";
        object.get("at").filter(node -> !at.isEmpty()).ifPresent(node -> isThere("at", at, questions, node));
        List<Expression> with = new ArrayList<>();
        shapes.list(object, "with")
                .forEach(node -> expressions.expression("with", node, names).ifPresent(with::add));
        Optional<Expression> when =
                shapes.must(object, "when").flatMap(node -> expressions.wanted("when", node, names, Sort.Plain.TRUTH));
        NoticeKind kind = severity(object, key);
        return when.filter(expression -> kind != null)
                .map(expression -> new Tell(kind, at, expression, with, isTrue(object, "together")));
    }

    private NoticeKind severity(JsonObject object, String key) {
        String word = shapes.text(object, "severity");
        switch (word) {
            case "stop":
                return NoticeKind.stop(key);
            case "check":
                return NoticeKind.check(key);
            case "caution":
                return NoticeKind.caution(key);
            case "note":
                return NoticeKind.note(key);
            default:
                object.get("severity")
                        .ifPresent(node -> say(
                                TemplateNotices.TEMPLATE_DECLARATION.with(Phrase.of("declared-severity", word)),
                                node.place()));
                return null;
        }
    }

    /** What an answer holds. */
    public static List<String> answerKeys() {
        Set<String> keys = new TreeSet<>(Written.ANSWERED);
        keys.addAll(List.of("key", "kind", "is", "label", "help", "lead"));
        return List.copyOf(keys);
    }

    private void answer(JsonObject object, String id, Set<String> formulas, Map<Answer, Expression> answers) {
        shapes.known(object, answerKeys());
        String key = shapes.text(object, "key");
        boolean lead = isTrue(object, "lead");
        written.kind(object, "kind")
                .flatMap(kind -> written.declared(
                        object,
                        () -> Written.answer(
                                id + ".answer", key, kind, shapes.attributes(object, Written.ANSWERED), lead)))
                .ifPresent(answer -> {
                    texts.put(answer.labelKey(), shapes.text(object, "label"));
                    texts.put(answer.helpKey(), shapes.text(object, "help"));
                    object.get("by")
                            .ifPresent(node -> isThere("by", object.text("by").orElse(""), formulas, node));
                    shapes.must(object, "is")
                            .flatMap(node -> expressions.wanted("is", node, names, Worths.sort(answer.kind())))
                            .ifPresent(expression -> answers.put(answer, expression));
                });
    }

    /** What is named under a key must be there; what was told to be wrong already is not told again. */
    private void isThere(String key, String name, Set<String> known, JsonNode node) {
        if (!known.contains(name) && !expressions.isSpoilt(name)) {
            say(
                    Nearest.to(name, known)
                            .map(near -> TemplateNotices.TEMPLATE_NAMES_NOTHING_NEAREST.with(key, name, near))
                            .orElseGet(() ->
                                    TemplateNotices.TEMPLATE_NAMES_NOTHING.with(key, name, String.join(", ", known))),
                    node.place());
        }
    }

    private static boolean isTrue(JsonObject object, String key) {
        return object.get(key)
                .filter(node ->
                        node instanceof JsonScalar scalar && scalar.text().equals("true"))
                .isPresent();
    }

    /** Only what an expression can name is a name. */
    private boolean named(String name, Sort sort, Place place) {
        if (!NAME.matcher(name).matches()) {
            say(TemplateNotices.TEMPLATE_DECLARATION.with(Phrase.of("declared-name", name)), place);
            return false;
        }
        boolean first = names.putIfAbsent(name, sort) == null;
        if (!first) {
            say(TemplateNotices.TEMPLATE_NAME_TWICE.with(name), place);
        }
        return first;
    }
}
