package org.hidewright.core.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
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
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.work.TypedValues;

/** A template that is written as a text: a calculator that answers an item. */
public final class TextTemplate implements DeclaredCalculator {
    /** What any such template may tell besides its own. */
    static final List<NoticeKind> NOTICES = List.of(
            TemplateNotices.TEMPLATE_NO_DRAWER, TemplateNotices.TEMPLATE_DRAWING, TemplateNotices.TEMPLATE_TOO_MANY);

    /** The key of the item among the answers. */
    static final String ITEM = "item";

    private final Declaration declaration;
    private final Map<String, Expression> values;
    private final List<Tell> tells;
    private final Map<Answer, Expression> answers;
    private final Drawing drawing;
    private final Map<String, String> texts;

    /**
     * What is drawn.
     *
     * @param calculator id of the one that draws
     * @param questions what it is asked
     */
    record Drawing(String calculator, Sketch.Group questions, Function<String, Optional<DeclaredCalculator>> others) {
        Optional<DeclaredCalculator> drawer() {
            return others.apply(calculator);
        }
    }

    TextTemplate(
            Declaration declaration,
            Map<String, Expression> values,
            List<Tell> tells,
            Map<Answer, Expression> answers,
            Drawing drawing,
            Map<String, String> texts) {
        this.declaration = declaration;
        this.values = new LinkedHashMap<>(values);
        this.tells = List.copyOf(tells);
        this.answers = new LinkedHashMap<>(answers);
        this.drawing = drawing;
        this.texts = Map.copyOf(texts);
    }

    @Override
    public Declaration declaration() {
        return declaration;
    }

    /** Its own; then those of the host, for what can go wrong in any template; then those of the one that draws. */
    @Override
    public Texts texts() {
        return (key, language) -> Optional.ofNullable(texts.get(key))
                .map(text -> text.replace("'", "''"))
                .or(() -> CoreTexts.TEXTS.find(key, language))
                .or(() -> drawing.drawer().flatMap(drawer -> drawer.texts().find(key, language)));
    }

    @Override
    public Outcome<Values> work(Values questions, Working working) {
        try {
            return worked(questions, working);
        } catch (ExpressionTrouble e) {
            return Outcome.refuse(e.notice());
        }
    }

    private Outcome<Values> worked(Values questions, Working working) throws ExpressionTrouble {
        Map<String, Worth> names = new LinkedHashMap<>(Worths.of(questions));
        for (Map.Entry<String, Expression> value : values.entrySet()) {
            names.put(value.getKey(), value.getValue().worth(names));
        }
        List<Notice> notices = new ArrayList<>();
        for (Tell tell : tells) {
            if (((Worth.Truth) tell.when().worth(names)).yes()) {
                notices.add(notice(tell, names));
            }
        }
        if (notices.stream().anyMatch(notice -> notice.kind().severity() == NoticeKind.Severity.STOP)) {
            return Outcome.refuse(notices);
        }
        Map<String, Object> answered = new LinkedHashMap<>();
        for (Map.Entry<Answer, Expression> answer : answers.entrySet()) {
            answered.put(
                    answer.getKey().key(),
                    Worths.value(answer.getKey(), answer.getValue().worth(names)));
        }
        Sketch.Rows rows = new Sketch.Rows();
        Object asked = drawing.questions().drawn(names, rows);
        if (rows.wereTooMany()) {
            return Outcome.refuse(TemplateNotices.TEMPLATE_TOO_MANY.with(Sketch.Rows.MOST));
        }
        return drawn(JsonOut.line(asked), answered, notices, working);
    }

    private static Notice notice(Tell tell, Map<String, Worth> names) throws ExpressionTrouble {
        List<Object> with = new ArrayList<>();
        for (Expression expression : tell.with()) {
            with.add(Worths.shown(expression.worth(names)));
        }
        return tell.notice(with.toArray());
    }

    private Outcome<Values> drawn(String asked, Map<String, Object> answered, List<Notice> notices, Working working) {
        Optional<DeclaredCalculator> drawer = drawing.drawer();
        if (drawer.isEmpty()) {
            return Outcome.refuse(TemplateNotices.TEMPLATE_NO_DRAWER.with(drawing.calculator()));
        }
        TypedValues typed = TypedValues.read(drawer.get().declaration(), asked);
        if (typed.values().isEmpty()) {
            return Outcome.refuse(
                    TemplateNotices.TEMPLATE_DRAWING.with(drawing.calculator(), String.join(" ", typed.said())));
        }
        Outcome<Values> outcome = drawer.get().work(typed.values().get(), working);
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
