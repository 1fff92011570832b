package org.hidewright.testkit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Reading;
import org.hidewright.api.measure.Typed;
import org.hidewright.api.measure.TypedSize;
import org.hidewright.api.measure.TypedText;
import org.hidewright.api.trials.Measures;
import org.hidewright.api.trials.Typical;

/** Questions answered by their presets and examples, read as they would stand in a project file. */
final class TypicalAnswers implements Typical {
    /** A preset or example that a host could not read; the message says which and what would be right. */
    static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;

        Unreadable(String message) {
            super(message);
        }
    }

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> YES = List.of("true", "yes", "on");

    private final Item item;

    /** @param item what a question for one is answered with */
    TypicalAnswers(Item item) {
        this.item = item;
    }

    /**
     * One question by its example or preset; what holds others and has none, by those inside.
     *
     * @throws Unreadable if it cannot be read
     */
    @Override
    public Object typical(Question question) {
        if (question.kind() == Kind.ITEM) {
            return item;
        }
        if (question.kind() == Kind.GROUP && question.example().isEmpty()) {
            return all(question.questions());
        }
        String text = question.example()
                .orElseThrow(() -> new Unreadable(question.key() + " has neither preset nor example; give it one"));
        return switch (question.kind()) {
            case GROUP, ROWS, VARIANTS -> read(question, tree(question, text));
            default -> typed(question, text);
        };
    }

    private static JsonNode tree(Question question, String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new Unreadable(
                    "the example of " + question.key() + " is no JSON: " + text + "; write it as in a project file");
        }
    }

    private Object read(Question question, JsonNode node) {
        return switch (question.kind()) {
            case ITEM -> item;
            case GROUP -> inside(question.questions(), node, "");
            case VARIANTS -> chosen(question, node, "");
            case ROWS -> rows(question, node);
            default -> typed(question, text(node));
        };
    }

    /** Several values of a list may stand in a row of their own. */
    private static String text(JsonNode node) {
        if (!node.isArray()) {
            return node.asText();
        }
        List<String> parts = new ArrayList<>();
        node.forEach(part -> parts.add(part.asText()));
        return String.join("; ", parts);
    }

    private List<Object> rows(Question question, JsonNode node) {
        List<Object> rows = new ArrayList<>();
        node.forEach(row -> {
            String id = row.path("id").asText();
            rows.add(question.variants().isEmpty() ? inside(question.questions(), row, id) : chosen(question, row, id));
        });
        return List.copyOf(rows);
    }

    private Chosen chosen(Question question, JsonNode node, String rowId) {
        Variant variant = question.variants().stream()
                .filter(candidate -> node.path("is").isMissingNode()
                        ? node.has(candidate.key())
                        : candidate.key().equals(node.path("is").asText()))
                .findFirst()
                .orElseThrow(() -> new Unreadable("the example of " + question.key() + " chooses none of "
                        + question.variants().stream().map(Variant::key).toList() + ": " + node));
        return Chosen.of(variant.key(), inside(variant.questions(), node.path(variant.key()), rowId));
    }

    /** What is not said inside is preset, or stays open. */
    private Values inside(List<Question> questions, JsonNode node, String rowId) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Question question : questions) {
            JsonNode said = node.path(question.key());
            if (!said.isMissingNode()) {
                values.put(question.key(), read(question, said));
            } else if (question.preset().isPresent()
                    || question.kind() == Kind.ITEM
                    || question.kind() == Kind.GROUP && !question.optional()) {
                values.put(question.key(), preset(question));
            } else if (!question.optional()) {
                throw new Unreadable("an example leaves " + question.key() + " open, which has no preset: " + node
                        + "; say it there");
            }
        }
        return rowId.isEmpty() ? Values.of(values) : Values.row(rowId, values);
    }

    private Object preset(Question question) {
        if (question.kind() == Kind.ITEM) {
            return item;
        }
        Optional<String> preset = question.preset();
        if (preset.isEmpty()) {
            return inside(question.questions(), JSON.createObjectNode(), "");
        }
        return switch (question.kind()) {
            case GROUP, ROWS, VARIANTS -> read(question, tree(question, preset.get()));
            default -> typed(question, preset.get());
        };
    }

    private Object typed(Question question, String text) {
        if (question.kind() != Kind.LIST) {
            return one(question, text);
        }
        return Arrays.stream(text.split(";"))
                .filter(part -> !part.isBlank())
                .map(part -> one(question, part.strip()))
                .toList();
    }

    private Object one(Question question, String text) {
        return switch (question.itemKind()) {
            case TEXT, CHOICE -> text;
            case FLAG -> YES.contains(text.toLowerCase(Locale.ROOT));
            case DATE -> LocalDate.parse(text);
            case SIZE ->
                understood(question, text, TypedText.size(text, question.unit()).map(TypedSize::nominal));
            default -> number(question, text);
        };
    }

    private static Object number(Question question, String text) {
        Kind kind = question.itemKind();
        Typed typed = understood(
                question, text, TypedText.quantity(text, kind.dimension().orElseThrow(), question.unit()));
        double nominal = typed.range().nominal();
        return kind == Kind.MONEY ? Money.of(nominal, typed.unit()) : Measures.of(kind, nominal, null);
    }

    private static <T> T understood(Question question, String text, Reading<T> reading) {
        return reading.understood()
                .orElseThrow(() -> new Unreadable("“" + text + "” cannot be read as the " + question.itemKind()
                        + " that " + question.key() + " asks for"));
    }
}
