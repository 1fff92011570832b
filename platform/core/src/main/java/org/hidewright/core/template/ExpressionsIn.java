package org.hidewright.core.template;

import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.ExpressionTrouble;
import org.hidewright.core.expression.Sort;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.Place;

/** Reads the expressions in a file, each with its place there; what is wrong with one is told. */
final class ExpressionsIn {
    private final BiConsumer<Notice, Place> told;
    private final Set<String> spoilt = new HashSet<>();

    ExpressionsIn(BiConsumer<Notice, Place> told) {
        this.told = told;
    }

    void told(Notice notice, Place place) {
        told.accept(notice, place);
    }

    /** A name whose own expression is told to be wrong: those that use it are not told again. */
    void spoilt(String name) {
        spoilt.add(name);
    }

    /** The expression under a key; empty where there is none, or none that can be used. */
    Optional<Expression> optional(JsonObject object, String key, Map<String, Sort> names, Sort wanted) {
        return object.get(key).flatMap(node -> wanted(key, node, names, wanted));
    }

    /** An expression that gives what is wanted. */
    Optional<Expression> wanted(String key, JsonNode node, Map<String, Sort> names, Sort wanted) {
        Optional<Expression> read = expression(key, node, names);
        if (read.isPresent()) {
            Sort sort = sort(read.get(), names);
            if (!sort.equals(wanted)) {
                told.accept(TemplateNotices.TEMPLATE_GIVES.with(key, sort.words(), wanted.words()), node.place());
                return Optional.empty();
            }
        }
        return read;
    }

    /** An expression that gives anything. */
    Optional<Expression> expression(String key, JsonNode node, Map<String, Sort> names) {
        if (node instanceof JsonScalar scalar && scalar.type() != JsonScalar.Type.NULL) {
            boolean text = scalar.type() == JsonScalar.Type.TEXT;
            int from = text && scalar.text().startsWith("=") ? 1 : 0;
            return within(scalar, from, scalar.text().length(), names);
        }
        told.accept(JsonNotices.wrongShape(key, "\"2 * width\"", node), node.place());
        return Optional.empty();
    }

    /** What a sound expression gives. */
    static Sort sort(Expression expression, Map<String, Sort> names) {
        try {
            return expression.sort(names);
        } catch (ExpressionTrouble e) {
            throw new IllegalStateException("it was looked at when it was read", e);
        }
    }

    /** A piece of a text as an expression. Its place is counted from the quote, as if nothing before it were escaped. */
    Optional<Expression> within(JsonScalar scalar, int from, int to, Map<String, Sort> names) {
        try {
            Expression expression = Expression.read(scalar.text().substring(from, to));
            if (!Collections.disjoint(spoilt, expression.names())) {
                return Optional.empty();
            }
            expression.sort(names);
            return Optional.of(expression);
        } catch (ExpressionTrouble e) {
            int quote = scalar.type() == JsonScalar.Type.TEXT ? 1 : 0;
            Place start = new Place(scalar.place().line(), scalar.place().column() + quote + from);
            told.accept(e.notice(), e.place().within(start));
            return Optional.empty();
        }
    }
}
