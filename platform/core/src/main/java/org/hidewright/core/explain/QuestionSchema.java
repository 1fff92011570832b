package org.hidewright.core.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.StockLink;

/** The JSON Schema (draft 2020-12) of a calculator's questions, as they stand in a project file. */
final class QuestionSchema {
    private static final Map<String, Object> LINK =
            link(List.of("from", "answer", "row", "column"), List.of("from", "answer"));
    private static final Map<String, Object> STOCK = link(StockLink.KEYS, StockLink.KEYS.subList(0, 1));

    private final Texts texts;
    private final Wording wording;

    QuestionSchema(Texts texts, Wording wording) {
        this.texts = texts;
        this.wording = wording;
    }

    Map<String, Object> schema(List<Question> questions) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.putAll(object(questions, false));
        return schema;
    }

    private Map<String, Object> object(List<Question> questions, boolean rows) {
        Map<String, Object> properties = new LinkedHashMap<>();
        if (rows) {
            properties.put("id", Map.of("type", "string"));
        }
        List<String> required = new ArrayList<>();
        for (Question question : questions) {
            properties.put(question.key(), property(question));
            if (required(question)) {
                required.add(question.key());
            }
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        return schema;
    }

    /** A group is needed only for what is needed in it. */
    private static boolean required(Question question) {
        return !question.optional()
                && question.preset().isEmpty()
                && (question.kind() != Kind.GROUP
                        || question.questions().stream().anyMatch(QuestionSchema::required));
    }

    private Map<String, Object> property(Question question) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("title", wording.text(texts, question.labelKey()));
        schema.put("description", wording.text(texts, question.helpKey()));
        switch (question.kind()) {
            case GROUP -> schema.putAll(object(question.questions(), false));
            case VARIANTS -> schema.put("anyOf", List.of(variants(question, false), Map.of("enum", keys(question))));
            case ROWS -> {
                schema.put("type", "array");
                schema.put(
                        "items",
                        question.variants().isEmpty() ? object(question.questions(), true) : variants(question, true));
            }
            case LIST ->
                schema.put(
                        "anyOf",
                        List.of(
                                Map.of("type", List.of("string", "number")),
                                Map.of("type", "array", "items", scalar(question)),
                                LINK,
                                STOCK));
            case ITEM -> schema.putAll(LINK);
            default -> schema.put("anyOf", List.of(scalar(question), LINK, STOCK));
        }
        question.preset().ifPresent(preset -> schema.put("default", QuestionExample.asJson(question, preset)));
        question.example()
                .ifPresent(example -> schema.put("examples", List.of(QuestionExample.asJson(question, example))));
        return schema;
    }

    private static Map<String, Object> scalar(Question question) {
        return switch (question.itemKind()) {
            case CHOICE ->
                Map.of("enum", question.options().stream().map(Option::key).toList());
            case FLAG -> Map.of("type", List.of("boolean", "string"));
            case TEXT -> Map.of("type", "string");
            case DATE -> Map.of("type", "string", "format", "date");
            case MONEY -> Map.of("type", "string");
            default -> Map.of("type", List.of("string", "number"));
        };
    }

    private Map<String, Object> variants(Question question, boolean rows) {
        Map<String, Object> properties = new LinkedHashMap<>();
        if (rows) {
            properties.put("id", Map.of("type", "string"));
        }
        properties.put("is", Map.of("enum", keys(question)));
        for (Variant variant : question.variants()) {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("title", wording.text(texts, variant.labelKey()));
            schema.putAll(object(variant.questions(), false));
            properties.put(variant.key(), schema);
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        return schema;
    }

    private static List<String> keys(Question question) {
        return question.variants().stream().map(Variant::key).toList();
    }

    private static Map<String, Object> link(List<String> keys, List<String> required) {
        Map<String, Object> properties = new LinkedHashMap<>();
        keys.forEach(key -> properties.put(key, Map.of("type", "string")));
        Map<String, Object> link = new LinkedHashMap<>();
        link.put("type", "object");
        link.put("properties", properties);
        link.put("required", required);
        link.put("additionalProperties", false);
        return link;
    }
}
