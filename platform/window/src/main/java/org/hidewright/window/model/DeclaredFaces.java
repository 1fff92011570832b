package org.hidewright.window.model;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.explain.Limits;
import org.hidewright.core.wording.FieldWording;
import org.hidewright.window.model.QuestionFace.Choice;

/** What of a question’s face hangs on its declaration and its value alone, wherever it stands. */
public record DeclaredFaces(FieldWording words) {
    /** A flag as it is chosen, where a file has it as JSON does. */
    public static String written(String flag) {
        return flag.equals("true") ? "yes" : flag.equals("false") ? "no" : flag;
    }

    /** A value where it reads otherwise than it was typed; else empty. */
    public String understood(Question question, Object value, String typed) {
        String text = value instanceof List<?> ? "" : words.text(question, value);
        return plain(text).equalsIgnoreCase(plain(typed)) ? "" : text;
    }

    /** A range where it reads otherwise than it was typed; else empty. */
    public String understood(Range range, Unit unit, String typed) {
        String text = words.wording().values().of(range.low(), unit).number() + "–"
                + words.wording().values().of(range.high(), unit).inline();
        return plain(text).equalsIgnoreCase(plain(typed.replace('-', '–'))) ? "" : text;
    }

    /** With plain spaces in place of those that keep a unit at its number, and none before a percent sign. */
    private static String plain(String text) {
        return text.strip().replaceAll("[\u00A0\u202F]", " ").replace(" %", "%");
    }

    /** What may be typed, with its unit. */
    public String limits(Question question) {
        Limits limits = new Limits(question, words.wording().units());
        return limits.usual()
                .or(() -> limits.min().flatMap(min -> limits.max().map(max -> min + " – " + max)))
                .orElse("");
    }

    /** What can be chosen; empty for what is typed. */
    public List<Choice> choices(Question question) {
        List<Choice> choices = new ArrayList<>();
        if (question.kind() == Kind.FLAG) {
            choices.add(new Choice("yes", words.wording().host("value.yes")));
            choices.add(new Choice("no", words.wording().host("value.no")));
        } else if (question.kind() == Kind.CHOICE) {
            question.options()
                    .forEach(option -> choices.add(new Choice(option.key(), words.text(question, option.key()))));
        } else if (question.kind() == Kind.VARIANTS) {
            choices.addAll(variants(question));
        }
        return List.copyOf(choices);
    }

    List<Choice> variants(Question question) {
        return question.variants().stream()
                .map(variant -> new Choice(variant.key(), words.variant(question, variant.key())))
                .toList();
    }
}
