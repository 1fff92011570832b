package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Typed;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Tables;

/**
 * The values of questions that are all typed, as one calculator asks them of another.
 *
 * @param values empty where one cannot be read or is outside its limits
 * @param said why, in sentences for who wrote what was typed
 */
public record TypedValues(Optional<Values> values, List<Said> said) {
    /**
     * One sentence.
     *
     * @param at the question, as notices name it
     */
    public record Said(String at, String words) {
        @Override
        public String toString() {
            return at + ": " + words;
        }
    }

    /** Who wrote a template writes keys, so its questions are named by them. */
    private static final Texts KEYS = (key, language) -> Optional.empty();

    /**
     * Reads what is typed as a slip is read, but without links and workshop.
     *
     * @param json an object, by the keys of the questions
     */
    public static TypedValues read(Declaration declaration, String json) {
        JsonObject typed = object(json);
        Shelf empty = Shelf.of(Optional.empty(), Stock.of(() -> Tables.of(List.of())));
        EntryReader reader = new EntryReader("", empty, KEYS);
        Map<String, Entry.Answered> entries = reader.read(declaration.questions(), typed, "", List.of());
        Resolver resolver = new Resolver(
                "",
                link -> {
                    throw new IllegalStateException("nothing is linked here");
                },
                RangePick.NOMINAL);
        List<Remark> remarks = new ArrayList<>(reader.remarks());
        Optional<Values> values = resolver.resolve(declaration.questions(), entries);
        remarks.addAll(resolver.remarks());
        List<Said> said = remarks.stream()
                .filter(Remark::stops)
                .map(remark -> new Said(remark.question(), words().what(remark)))
                .collect(Collectors.toCollection(ArrayList::new));
        withoutUnit(declaration.questions(), entries, "", said);
        return new TypedValues(said.isEmpty() ? values : Optional.empty(), said);
    }

    /** A maker who leaves a unit out means the usual one; where it was worked out, the unit was lost on the way. */
    private static void withoutUnit(
            List<Question> questions, Map<String, Entry.Answered> entries, String path, List<Said> said) {
        for (Question question : questions) {
            Entry.Answered answered = entries.get(question.key());
            if (answered != null && answered.origin() == Entry.Origin.TYPED) {
                String here = path.isEmpty() ? question.key() : path + "." + question.key();
                withoutUnit(question, answered.entry(), here, said);
            }
        }
    }

    private static void withoutUnit(Question question, Entry entry, String path, List<Said> said) {
        if (entry instanceof Entry.Quantity quantity) {
            mustHaveUnit(quantity.typed(), path, said);
        } else if (entry instanceof Entry.TwoSides sides) {
            mustHaveUnit(sides.typed().width(), path, said);
            mustHaveUnit(sides.typed().height(), path, said);
        } else if (entry instanceof Entry.Several several) {
            several.items().forEach(item -> withoutUnit(question, item, path, said));
        } else if (entry instanceof Entry.Group group) {
            withoutUnit(question.questions(), group.answers(), path, said);
        } else if (entry instanceof Entry.OneOf one) {
            question.variants().stream()
                    .filter(variant -> variant.key().equals(one.variant()))
                    .forEach(variant ->
                            withoutUnit(variant.questions(), one.answers(), path + "." + variant.key(), said));
        } else if (entry instanceof Entry.Table table) {
            table.rows().forEach(row -> withoutUnit(question, row.entry(), path + "[" + row.id() + "]", said));
        }
    }

    private static void mustHaveUnit(Typed typed, String path, List<Said> said) {
        if (typed.dimension() != Dimension.NUMBER
                && !typed.unitTyped()
                && typed.range().nominal() != 0) {
            said.add(new Said(path, typed.text() + " has no unit."));
        }
    }

    private static JsonObject object(String json) {
        try {
            return (JsonObject) JsonText.read(json).root();
        } catch (JsonTrouble e) {
            throw new IllegalStateException("it was written by this program", e);
        }
    }

    private static Wording words() {
        return new Wording(Locale.ENGLISH, UnitSystem.METRIC);
    }
}
