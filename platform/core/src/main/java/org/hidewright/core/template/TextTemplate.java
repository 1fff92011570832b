package org.hidewright.core.template;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.ExpressionTrouble;
import org.hidewright.core.expression.Worth;

/** A template that is written as a text: a calculator that answers an item. */
public final class TextTemplate implements DeclaredCalculator {
    /** What any such template may tell besides its own. */
    static final List<NoticeKind> NOTICES = List.of(
            TemplateNotices.TEMPLATE_NO_DRAWER,
            TemplateNotices.TEMPLATE_NOBODY_TO_ASK,
            TemplateNotices.TEMPLATE_NO_SUCH_ANSWER,
            TemplateNotices.TEMPLATE_ASKS_BADLY,
            TemplateNotices.TEMPLATE_TOO_MANY);

    /** The key of the item among the answers. */
    static final String ITEM = "item";

    private final Declaration declaration;
    private final List<NamedValue> values;
    private final List<Tell> tells;
    private final Map<Answer, Expression> answers;
    private final Asking drawing;
    private final Map<String, String> texts;
    private final Map<String, String> pictures;
    private final Texts translations;

    TextTemplate(
            Declaration declaration,
            List<NamedValue> values,
            List<Tell> tells,
            Map<Answer, Expression> answers,
            Asking drawing,
            Map<String, String> texts,
            Map<String, String> pictures,
            Texts translations) {
        this.declaration = declaration;
        this.values = List.copyOf(values);
        this.tells = List.copyOf(tells);
        this.answers = new LinkedHashMap<>(answers);
        this.drawing = drawing;
        this.texts = Map.copyOf(texts);
        this.pictures = Map.copyOf(pictures);
        this.translations = translations;
    }

    /**
     * The same template with texts in other languages.
     *
     * @param beside the text of the file beside it whose name ends so, {@code _de.properties}; empty where there is none
     */
    public TextTemplate translated(Function<String, Optional<String>> beside) {
        return new TextTemplate(
                declaration, values, tells, answers, drawing, texts, pictures, new Translations(beside));
    }

    @Override
    public Declaration declaration() {
        return declaration;
    }

    /** Its own texts by key, in the language it is written in: those that a file beside it says in another. */
    public Map<String, String> written() {
        return texts;
    }

    /** What is refused since answers do not go together, though each of them is usual. */
    public Set<NoticeKind> together() {
        return tells.stream().filter(Tell::together).map(Tell::kind).collect(Collectors.toSet());
    }

    /** Its own; then those of the host, for what can go wrong in any template; then those of all it asks. */
    @Override
    public Texts texts() {
        return (key, language) -> translations
                .find(key, language)
                .or(() -> Optional.ofNullable(texts.get(key)).map(text -> text.replace("'", "''")))
                .or(() -> CoreTexts.TEXTS.find(key, language))
                .or(() -> asked().flatMap(asking -> asking.whom().stream())
                        .flatMap(whom ->
                                TakenOver.text(whom, key, language)
                                        .or(() -> whom.texts().find(key, language))
                                        .stream())
                        .findFirst());
    }

    @Override
    public Optional<String> picture(String name) {
        return Optional.ofNullable(pictures.get(name));
    }

    @Override
    public Outcome<Values> work(Values questions, Working working) {
        try {
            return worked(questions, working);
        } catch (ExpressionTrouble e) {
            return Outcome.refuse(e.notice());
        } catch (Refusal e) {
            return e.outcome();
        }
    }

    private Outcome<Values> worked(Values questions, Working working) throws ExpressionTrouble, Refusal {
        Map<String, Worth> names = new LinkedHashMap<>(Worths.of(questions));
        NamedValue.Told told = new NamedValue.Told(working);
        boolean stopped = stops(names, told, (tell, holds) -> {
            if (holds) {
                told.notices().add(notice(tell, names));
            }
        });
        if (stopped) {
            return Outcome.refuse(told.notices());
        }
        Map<String, Object> answered = new LinkedHashMap<>();
        for (Map.Entry<Answer, Expression> answer : answers.entrySet()) {
            Source taken = told.sources().get(answer.getValue().text().strip());
            if (taken != null && answer.getKey().by().isEmpty()) {
                working.source(answer.getKey().key(), taken);
            }
            answered.put(
                    answer.getKey().key(),
                    Worths.value(answer.getKey(), answer.getValue().worth(names)));
        }
        return drawn(drawing.outcome(names, Working.NONE), answered, told.notices());
    }

    /** Hears of each condition that is looked at whether it holds. */
    private interface Looked {
        void at(Tell tell, boolean holds) throws ExpressionTrouble;
    }

    /** Works the values out, and says whether something that is told of them stops it. */
    private boolean stops(Map<String, Worth> names, NamedValue.Told told, Looked looked)
            throws ExpressionTrouble, Refusal {
        List<Tell> pending = new ArrayList<>(tells);
        for (NamedValue value : values) {
            if (stops(pending, names, looked)) {
                return true;
            }
            value.add(names, told);
        }
        return stops(pending, names, looked);
    }

    /**
     * Tells what can be told of the names so far, and whether one of it is a stop: its author's own words come before those of
     * a calculator that is asked what cannot be.
     */
    private static boolean stops(List<Tell> pending, Map<String, Worth> names, Looked looked) throws ExpressionTrouble {
        boolean stopped = false;
        for (Iterator<Tell> tells = pending.iterator(); tells.hasNext(); ) {
            Tell tell = tells.next();
            if (names.keySet().containsAll(tell.names())) {
                tells.remove();
                boolean holds = ((Worth.Truth) tell.when().worth(names)).yes();
                looked.at(tell, holds);
                stopped |= holds && tell.kind().severity() == NoticeKind.Severity.STOP;
            }
        }
        return stopped;
    }

    /** Whether each condition holds for these answers, of those that are looked at before one of them, or a fault, stops it all. */
    public Map<NoticeKind, Boolean> holding(Values questions) {
        Map<NoticeKind, Boolean> holding = new LinkedHashMap<>();
        try {
            stops(
                    new LinkedHashMap<>(Worths.of(questions)),
                    new NamedValue.Told(Working.NONE),
                    (tell, holds) -> holding.put(tell.kind(), holds));
        } catch (ExpressionTrouble | Refusal atTheRest) {
            return holding;
        }
        return holding;
    }

    /** The conditions on which something is told; what is told whatever is answered, and stops nothing, has none. */
    public List<Condition> conditions() {
        return tells.stream()
                .filter(tell -> !tell.when().names().isEmpty() || tell.kind().severity() == NoticeKind.Severity.STOP)
                .map(tell -> Condition.of(tell.kind(), tell.when(), declaration.questions(), values))
                .toList();
    }

    private Stream<Asking> asked() {
        Stream<Asking> values = this.values.stream()
                .filter(NamedValue.Answered.class::isInstance)
                .map(value -> ((NamedValue.Answered) value).asking());
        return Stream.concat(Stream.of(drawing), values);
    }

    private static Notice notice(Tell tell, Map<String, Worth> names) throws ExpressionTrouble {
        List<Object> with = new ArrayList<>();
        for (Expression expression : tell.with()) {
            with.add(Worths.shown(expression.worth(names)));
        }
        return tell.notice(with.toArray());
    }

    private Outcome<Values> drawn(Outcome<Values> outcome, Map<String, Object> answered, List<Notice> notices) {
        List<Notice> all = new ArrayList<>(notices);
        all.addAll(outcome.notices());
        if (outcome.refused()) {
            return Outcome.refuse(all);
        }
        Optional<Object> item = outcome.answers().orElseThrow().entries().values().stream()
                .filter(Item.class::isInstance)
                .findFirst();
        if (item.isEmpty()) {
            return Outcome.refuse(TemplateNotices.TEMPLATE_NO_DRAWER.with(drawing.calculator()));
        }
        answered.put(ITEM, item.get());
        return Outcome.of(Values.of(answered), all);
    }
}
