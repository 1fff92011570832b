package org.hidewright.core.template;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.Place;

/** Takes what the text of a bundle must hold out of it; what is missing or of another shape is told. */
public final class Shapes {
    /** What the head of a text begins with. */
    private static final List<String> BEGINNINGS = List.of("template", "workshop");

    private final BiConsumer<Notice, Place> told;

    /** @param told gets what is wrong, with its place */
    public Shapes(BiConsumer<Notice, Place> told) {
        this.told = told;
    }

    Map<String, String> attributes(JsonObject object, Set<String> keys) {
        Map<String, String> attributes = new HashMap<>();
        for (String key : keys) {
            object.get(key)
                    .filter(node -> node instanceof JsonScalar)
                    .ifPresent(node -> attributes.put(key, ((JsonScalar) node).text()));
        }
        return attributes;
    }

    /** Tells every key that means nothing here. */
    public void known(JsonObject object, List<String> known) {
        for (Map.Entry<String, Member> member : object.members().entrySet()) {
            if (!known.contains(member.getKey())) {
                told.accept(
                        JsonNotices.unknownKey(member.getKey(), known),
                        member.getValue().place());
            }
        }
    }

    /** The node that must stand under a key. */
    public Optional<JsonNode> must(JsonObject object, String key) {
        Optional<JsonNode> node = object.get(key);
        if (node.isEmpty()) {
            told.accept(TemplateNotices.TEMPLATE_MISSING.with(key, part(object)), object.place());
        }
        return node;
    }

    /** Which part of the text an object is: by its key or id, where it has one. */
    private static Phrase part(JsonObject object) {
        if (BEGINNINGS.stream().anyMatch(object.members()::containsKey)) {
            return Phrase.of("text-whole");
        }
        return object.text("key")
                .or(() -> object.text("id"))
                .map(name -> Phrase.of("text-part", name))
                .orElse(Phrase.of("text-braces"));
    }

    /** The text that must stand under a key; empty where it is told that it does not. */
    public String text(JsonObject object, String key) {
        return must(object, key)
                .flatMap(node -> {
                    Optional<String> text = object.text(key);
                    if (text.isEmpty()) {
                        told.accept(JsonNotices.wrongShape(key, "\"…\"", node), node.place());
                    }
                    return text;
                })
                .orElse("");
    }

    /** The object that must stand under a key. */
    public Optional<JsonObject> object(JsonObject object, String key, String like) {
        return must(object, key).flatMap(node -> {
            if (node instanceof JsonObject inside) {
                return Optional.of(inside);
            }
            told.accept(JsonNotices.wrongShape(key, like, node), node.place());
            return Optional.empty();
        });
    }

    /** The objects in the list under a key; none where there is no such key. */
    public List<JsonObject> objects(JsonObject head, String key, String like) {
        List<JsonObject> objects = new ArrayList<>();
        for (JsonNode node : list(head, key)) {
            if (node instanceof JsonObject object) {
                objects.add(object);
            } else {
                told.accept(JsonNotices.wrongShape(key, like, node), node.place());
            }
        }
        return objects;
    }

    List<JsonNode> list(JsonObject object, String key) {
        JsonNode node = object.get(key).orElse(null);
        if (node == null || node instanceof JsonArray) {
            return node == null ? List.of() : ((JsonArray) node).items();
        }
        told.accept(JsonNotices.wrongShape(key, "[]", node), node.place());
        return List.of();
    }

    /** The whole number from 1 in a node; 1 where it is told that there is none. */
    public int number(JsonNode node, String key) {
        if (node instanceof JsonScalar scalar && scalar.text().matches("[1-9]\\d{0,5}")) {
            return Integer.parseInt(scalar.text());
        }
        told.accept(JsonNotices.wrongShape(key, "1", node), node.place());
        return 1;
    }
}
