package org.hidewright.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;

/**
 * The questions typed on a command line, {@code key=value}, as they would stand in a project file.
 *
 * <p>A dot leads into a group or a chosen variant ({@code core=round-bar core.diameter=6mm}); a value that begins with a
 * bracket or brace is JSON; {@code @file} stands for the text of a file. Alone, {@code @file} names questions in JSON, to which
 * those typed beside it are added or go before.
 */
final class QuestionArguments {
    private final CommandTexts texts;
    private final BinaryOperator<String> units;
    private final Map<String, Object> tree = new LinkedHashMap<>();

    private QuestionArguments(CommandTexts texts, BinaryOperator<String> units) {
        this.texts = texts;
        this.units = units;
    }

    /**
     * The questions as a JSON object.
     *
     * @param units from the path of a question and what was typed to what it is read as; not asked of JSON
     * @throws BadArgument if one is no {@code key=value}, is given twice, or names a file or JSON that cannot be read
     */
    static String json(List<String> arguments, CommandTexts texts, BinaryOperator<String> units) throws BadArgument {
        QuestionArguments questions = new QuestionArguments(texts, units);
        List<String> files =
                arguments.stream().filter(argument -> argument.startsWith("@")).toList();
        if (files.size() > 1) {
            throw new BadArgument(texts.text("trouble.two-files", files.get(1)));
        }
        for (String argument : arguments) {
            if (!argument.startsWith("@")) {
                questions.take(argument);
            }
        }
        for (String file : files) {
            questions.file(file.substring(1));
        }
        return JsonOut.write(questions.tree);
    }

    /** What stands in a file and was not typed. Of what {@code explain --json} prints, the example is meant. */
    private void file(String name) throws BadArgument {
        JsonText text = json(name, FileText.read(name, texts));
        JsonNode root = text.root();
        if (root instanceof JsonObject explanation
                && explanation.get("schema").isPresent()
                && explanation.get("example").isPresent()) {
            root = explanation.get("example").orElseThrow();
        }
        if (!(root instanceof JsonObject questions)) {
            throw new BadArgument(texts.text("trouble.no-questions", name));
        }
        questions
                .members()
                .forEach((key, member) -> tree.putIfAbsent(key, new JsonOut.Raw(text.textOf(member.value()))));
    }

    private JsonText json(String where, String text) throws BadArgument {
        try {
            return JsonText.read(text);
        } catch (JsonTrouble e) {
            throw new BadArgument(texts.text(
                    "trouble.json",
                    where,
                    texts.wording()
                            .host("where.line", e.place().line(), e.place().column()),
                    texts.wording().phrase(CoreTexts.TEXTS, e.words())));
        }
    }

    private void take(String argument) throws BadArgument {
        int equals = argument.indexOf('=');
        String key = argument.substring(0, Math.max(equals, 0));
        if (List.of(key.split("\\.", -1)).contains("")) {
            throw new BadArgument(texts.text("trouble.key-value", argument));
        }
        put(tree, key, key, value(key, argument.substring(equals + 1)));
    }

    private Object value(String key, String written) throws BadArgument {
        String text = written.startsWith("@")
                ? FileText.read(written.substring(1), texts).strip()
                : written;
        if (!text.startsWith("{") && !text.startsWith("[")) {
            return units.apply(key, text);
        }
        json(key, text);
        return new JsonOut.Raw(text);
    }

    /** Puts a value under a path; a variant chosen by {@code core=x} takes in what comes under {@code core.…}. */
    private void put(Map<String, Object> into, String path, String whole, Object value) throws BadArgument {
        int dot = path.indexOf('.');
        String key = dot < 0 ? path : path.substring(0, dot);
        Object there = into.get(key);
        if (dot < 0) {
            if (there instanceof Map<?, ?> group && value instanceof String chosen) {
                into.put(key, chosen(chosen, copy(group)));
            } else if (there != null) {
                throw new BadArgument(texts.text("trouble.twice", whole));
            } else {
                into.put(key, value);
            }
            return;
        }
        Map<String, Object> group;
        if (there instanceof String chosen) {
            group = chosen(chosen, new LinkedHashMap<>());
        } else if (there instanceof Map<?, ?> map) {
            group = copy(map);
        } else if (there == null) {
            group = new LinkedHashMap<>();
        } else {
            throw new BadArgument(texts.text("trouble.twice", whole));
        }
        into.put(key, group);
        String rest = path.substring(dot + 1);
        Object is = group.get("is");
        boolean named = is == null || rest.equals("is") || rest.equals(is) || rest.startsWith(is + ".");
        if (named) {
            put(group, rest, whole, value);
        } else {
            put(inside(group, is.toString()), rest, whole, value);
        }
    }

    private static Map<String, Object> chosen(String variant, Map<String, Object> answers) {
        Map<String, Object> group = new LinkedHashMap<>();
        group.put("is", variant);
        if (answers.containsKey(variant)) {
            group.putAll(answers);
        } else {
            group.put(variant, answers);
        }
        return group;
    }

    private static Map<String, Object> inside(Map<String, Object> group, String variant) {
        Map<String, Object> answers = group.get(variant) instanceof Map<?, ?> map ? copy(map) : new LinkedHashMap<>();
        group.put(variant, answers);
        return answers;
    }

    private static Map<String, Object> copy(Map<?, ?> map) {
        Map<String, Object> copy = new LinkedHashMap<>();
        map.forEach((key, value) -> copy.put(String.valueOf(key), value));
        return copy;
    }
}
