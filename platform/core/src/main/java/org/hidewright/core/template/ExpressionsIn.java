package org.hidewright.core.template;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Dimension;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.ExpressionNotices;
import org.hidewright.core.expression.ExpressionTrouble;
import org.hidewright.core.expression.Measure;
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
    private final Set<String> used = new HashSet<>();
    private final Map<String, Place> later = new HashMap<>();
    private final Map<String, Place> amounts = new HashMap<>();

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

    boolean isSpoilt(String name) {
        return spoilt.contains(name);
    }

    /** Every name that stands in an expression. */
    Set<String> used() {
        return used;
    }

    /** A name that is worked out further down, and cannot be used yet. */
    void later(String name, Place place) {
        later.put(name, place);
    }

    /** A name that can be used from here on; where it is an amount as written, its unit may have been forgotten. */
    void defined(String name, Optional<NamedValue> as) {
        Place place = later.remove(name);
        if (as.orElse(null) instanceof NamedValue.Worked worked
                && worked.expression().names().isEmpty()) {
            amounts.put(name, place);
        }
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
            if (!sort.fits(wanted)) {
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
            used.addAll(expression.names());
            if (wrongAmount(expression, names) || !Collections.disjoint(spoilt, expression.names())) {
                return Optional.empty();
            }
            expression.sort(names);
            return Optional.of(expression);
        } catch (ExpressionTrouble e) {
            int quote = scalar.type() == JsonScalar.Type.TEXT ? 1 : 0;
            Place start = new Place(scalar.place().line(), scalar.place().column() + quote + from);
            wrong(e.notice(), e.place().within(start));
            return Optional.empty();
        }
    }

    private void wrong(Notice notice, Place place) {
        NoticeKind kind = notice.kind();
        boolean unknown = kind.equals(ExpressionNotices.EXPRESSION_UNKNOWN_NAME);
        if (!unknown && !kind.equals(ExpressionNotices.EXPRESSION_UNKNOWN_NAME_NEAREST)) {
            told.accept(notice, place);
            return;
        }
        String name = String.valueOf(notice.args().get(0));
        Place defined = later.get(name.replaceFirst("\\..*", ""));
        if (defined != null) {
            told.accept(TemplateNotices.TEMPLATE_NAME_LATER.with(name, String.valueOf(defined.line())), place);
            return;
        }
        told.accept(notice, place);
        if (unknown) {
            spoilt(name); // nobody knows what is meant, and it is one thing to mend
        }
    }

    /**
     * Whether an amount that is written once under a name measures something else than it is used for: told where it is written, not
     * at everything that uses it.
     */
    private boolean wrongAmount(Expression expression, Map<String, Sort> names) {
        if (goes(expression, names)) {
            return false;
        }
        for (String name : expression.names()) {
            Optional<Sort> other = amounts.containsKey(name) ? fitting(expression, names, name) : Optional.empty();
            if (other.isPresent()) {
                told.accept(
                        TemplateNotices.TEMPLATE_OTHER_MEASURE.with(
                                name,
                                names.get(name).words(),
                                expression.text().strip(),
                                other.get().words()),
                        amounts.remove(name));
                spoilt(name);
                return true;
            }
        }
        return false;
    }

    private static Optional<Sort> fitting(Expression expression, Map<String, Sort> names, String name) {
        Map<String, Sort> tried = new HashMap<>(names);
        return Arrays.stream(Dimension.values())
                .flatMap(dimension -> Measure.of(dimension).stream())
                .filter(measure -> {
                    tried.put(name, measure);
                    return goes(expression, tried);
                })
                .map(Sort.class::cast)
                .findFirst();
    }

    private static boolean goes(Expression expression, Map<String, Sort> names) {
        try {
            expression.sort(names);
            return true;
        } catch (ExpressionTrouble e) {
            return false;
        }
    }
}
