package org.hidewright.command;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.explain.Limits;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.wording.Remark;

/** Asks a maker one question after the other in a terminal. An empty line takes what stands in brackets. */
final class Dialogue {
    /** How often a question is asked again before the example is taken, so that no file of answers hangs a start. */
    private static final int PATIENCE = 5;

    private final Session session;
    private final Texts texts;
    private final State state;

    /** Shared by the dialogues of one start: whether anybody answers. */
    private static final class State {
        private boolean silent;
    }

    Dialogue(Session session, Texts texts) {
        this(session, texts, new State());
    }

    private Dialogue(Session session, Texts texts, State state) {
        this.session = session;
        this.texts = texts;
        this.state = state;
    }

    /** The same dialogue about another calculator. */
    Dialogue of(Texts others) {
        return new Dialogue(session, others, state);
    }

    /** Takes every preset or example without asking. */
    void askNothing() {
        state.silent = true;
    }

    void title(Installed template) {
        say(text(template.calculator().declaration().titleKey()) + ": "
                + text(template.calculator().declaration().purposeKey()));
        say(session.texts().text("new.enter"));
    }

    /** Whether some questions are to be answered by another calculator. */
    boolean takesFrom(Installed giver, List<Question> takers) {
        say("");
        String labels = String.join(
                ", ", takers.stream().map(question -> text(question.labelKey())).toList());
        Texts others = giver.calculator().texts();
        say(labels + ": 1 " + session.texts().text("new.measured") + ", 2 "
                + session.wording()
                        .text(others, giver.calculator().declaration().titleKey()) + " ("
                + String.join(
                        ", ",
                        giver.calculator().declaration().questions().stream()
                                .flatMap(question -> question.variants().stream())
                                .map(variant -> session.wording().text(others, variant.labelKey()))
                                .toList())
                + ")");
        return read("1").equals("2");
    }

    /** Asks until there is nothing wrong with what was answered. */
    void until(Runnable ask, Supplier<List<Remark>> faults) {
        for (int i = 0; i < PATIENCE; i++) {
            ask.run();
            List<Remark> wrong = faults.get();
            if (wrong.isEmpty()) {
                return;
            }
            wrong.forEach(remark -> session.tell(session.out(), remark));
        }
        state.silent = true;
        ask.run();
    }

    /** The answer to a question, as it stands in a project file. */
    Object answer(Question question) {
        say("");
        say(text(question.labelKey()) + limits(question));
        say("  " + text(question.helpKey()));
        return switch (question.kind()) {
            case CHOICE -> chosen(question);
            case VARIANTS -> variant(question);
            case GROUP -> group(question.questions());
            case ROWS, LIST, ITEM -> new JsonOut.Raw(question.example().orElse("null"));
            default -> read(question.example().orElse(""));
        };
    }

    private String chosen(Question question) {
        Map<String, String> labels = new LinkedHashMap<>();
        question.options().forEach(option -> labels.put(option.key(), option.labelKey()));
        return one(labels, question.example().orElse(labels.keySet().iterator().next()));
    }

    private Map<String, Object> variant(Question question) {
        Map<String, String> labels = new LinkedHashMap<>();
        question.variants().forEach(variant -> labels.put(variant.key(), variant.labelKey()));
        String usual = VariantPreset.of(question)
                .map(VariantPreset::key)
                .orElse(labels.keySet().iterator().next());
        String key = one(labels, usual);
        Map<String, Object> answered = new LinkedHashMap<>();
        for (Variant variant : question.variants()) {
            if (variant.key().equals(key)) {
                answered.put(key, group(variant.questions()));
            }
        }
        return answered;
    }

    private Map<String, Object> group(List<Question> questions) {
        Map<String, Object> answered = new LinkedHashMap<>();
        for (Question question : questions) {
            if (!question.optional()) {
                answered.put(question.key(), answer(question));
            }
        }
        return answered;
    }

    /** One of several, by its number, its key or its label. */
    private String one(Map<String, String> labels, String usual) {
        List<String> keys = List.copyOf(labels.keySet());
        for (int i = 0; i < keys.size(); i++) {
            say("  " + (i + 1) + " " + text(labels.get(keys.get(i))));
        }
        for (int i = 0; i < PATIENCE; i++) {
            String read = read(String.valueOf(keys.indexOf(usual) + 1));
            for (int nth = 0; nth < keys.size(); nth++) {
                String key = keys.get(nth);
                if (read.equals(String.valueOf(nth + 1))
                        || read.equals(key)
                        || read.equalsIgnoreCase(text(labels.get(key)))) {
                    return key;
                }
            }
            say("  " + session.texts().text("new.number", keys.size()));
        }
        return usual;
    }

    private String limits(Question question) {
        Limits limits = new Limits(question);
        String within = limits.min().isPresent() && limits.max().isPresent()
                ? " (" + limits.min().get() + " – " + limits.max().get() + ")"
                : "";
        return limits.usual()
                .map(usual -> " (" + session.texts().text("explain.usual", usual) + ")")
                .orElse(within);
    }

    /** A line; an empty one, or none, is what is suggested. */
    private String read(String suggested) {
        if (state.silent) {
            return suggested;
        }
        session.out().print((suggested.isEmpty() ? "" : "[" + suggested + "] ") + "> ");
        session.out().flush();
        try {
            String line = session.in().readLine();
            if (line == null) {
                state.silent = true;
                session.out().println();
            }
            return line == null || line.isBlank() ? suggested : line.strip();
        } catch (IOException e) {
            state.silent = true;
            return suggested;
        }
    }

    private void say(String line) {
        if (!state.silent) {
            session.out().println(line);
        }
    }

    private String text(String key) {
        return session.wording().text(texts, key);
    }
}
