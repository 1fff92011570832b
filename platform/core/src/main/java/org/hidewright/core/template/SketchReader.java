package org.hidewright.core.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.Measure;
import org.hidewright.core.expression.Sort;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonOut;

/**
 * Reads what a template draws. A text that begins with {@code =} is an expression; one with braces has expressions in it; a
 * group may say {@code when} it is drawn, and in a list how often ({@code each}).
 */
final class SketchReader {
    private final Map<String, Sort> names;
    private final ExpressionsIn expressions;

    SketchReader(Map<String, Sort> names, ExpressionsIn expressions) {
        this.names = Sketch.names(names);
        this.expressions = expressions;
    }

    Sketch read(JsonNode node) {
        if (node instanceof JsonObject object) {
            return group(object);
        } else if (node instanceof JsonArray array) {
            List<Sketch> items = new ArrayList<>();
            array.items().forEach(item -> items.add(item instanceof JsonObject row ? row(row) : read(item)));
            return new Sketch.Several(items);
        }
        JsonScalar scalar = (JsonScalar) node;
        if (scalar.type() != JsonScalar.Type.TEXT) {
            return new Sketch.Fixed(scalar.text());
        } else if (scalar.text().startsWith("=")) {
            Optional<Expression> expression =
                    within(scalar, 1, scalar.text().length(), Sketch.Worked::canBeTyped, "sort-typed");
            return expression.<Sketch>map(Sketch.Worked::new).orElseGet(() -> fixed(scalar));
        }
        return scalar.text().indexOf('{') >= 0 ? filled(scalar) : fixed(scalar);
    }

    /** One that stands by itself. */
    Sketch.Group group(JsonObject object) {
        Optional.ofNullable(object.members().get("each"))
                .ifPresent(each -> expressions.told(TemplateNotices.TEMPLATE_EACH_OUTSIDE.with(), each.place()));
        return row(object);
    }

    private Sketch.Group row(JsonObject object) {
        Map<String, Sketch> members = new LinkedHashMap<>();
        for (Map.Entry<String, Member> member : object.members().entrySet()) {
            if (!List.of("when", "each").contains(member.getKey())) {
                members.put(member.getKey(), read(member.getValue().value()));
            }
        }
        return new Sketch.Group(
                members,
                expressions.optional(object, "when", names, Sort.Plain.TRUTH),
                expressions.optional(object, "each", names, Measure.NUMBER));
    }

    /** An expression that gives what can be written in such a place. */
    private Optional<Expression> within(JsonScalar scalar, int from, int to, Predicate<Sort> fits, String wanted) {
        return expressions.within(scalar, from, to, names).filter(expression -> {
            Sort sort = ExpressionsIn.sort(expression, names);
            if (!fits.test(sort)) {
                expressions.told(
                        TemplateNotices.TEMPLATE_GIVES.with(expression.text(), sort.words(), Phrase.of(wanted)),
                        scalar.place());
            }
            return fits.test(sort);
        });
    }

    private static Sketch fixed(JsonScalar scalar) {
        return new Sketch.Fixed(JsonOut.line(scalar.text()));
    }

    private Sketch filled(JsonScalar scalar) {
        String text = scalar.text();
        List<Object> pieces = new ArrayList<>();
        int from = 0;
        for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
            int close = text.indexOf('}', open);
            int end = close < 0 ? text.length() : close;
            pieces.add(text.substring(from, open));
            within(scalar, open + 1, end, Sketch.Filled::canStand, "sort-text").ifPresent(pieces::add);
            from = Math.min(text.length(), end + 1);
        }
        pieces.add(text.substring(from));
        return new Sketch.Filled(pieces);
    }
}
