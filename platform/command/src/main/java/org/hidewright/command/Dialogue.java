package org.hidewright.command;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.explain.ExampleInUnits;
import org.hidewright.core.explain.Limits;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.wording.BareNumbers;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;

/**
 * Asks a maker one question after the other in a terminal. An empty line takes what stands in brackets. Where the answers end, what has
 * a preset is left to it; an example is only that, and nobody has answered by it.
 */
final class Dialogue {
    /** How often a question is asked again, so that no file of answers hangs a start. */
    private static final int PATIENCE = 5;

    /** The way to answer that is no calculator's; an id has no capitals. */
    private static final String TYPED = "Typed";

    private final Session session;
    private final Texts texts;
    private final State state;
    private final UnitSystem system;
    /** Of several ways to answer, the one that suits what the answers are for. */
    private final Optional<String> way;

    /** Shared by the dialogues of one start: whether anybody is asked, and whether the answers have ended. */
    private static final class State {
        private boolean silent;
        private boolean ended;
        /** Whether the answer before was what was suggested, and typed by nobody. */
        private boolean suggested;
        /** Whether an example was taken for what only the maker can measure. */
        private boolean example;
    }

    /** There is no line any more. */
    private static final class Ended extends Exception {
        private static final long serialVersionUID = 1L;
    }

    Dialogue(Session session, Texts texts) {
        this(session, texts, new State(), Optional.empty());
    }

    private Dialogue(Session session, Texts texts, State state, Optional<String> way) {
        this.session = session;
        this.texts = texts;
        this.state = state;
        this.way = way;
        this.system = session.wording().units();
    }

    /**
     * The same dialogue about another calculator.
     *
     * @param suits of several ways to answer, the one to suggest; empty where all are alike
     */
    Dialogue of(Texts others, Optional<String> suits) {
        return new Dialogue(session, others, state, suits);
    }

    /** Takes every preset or example without asking. */
    void askNothing() {
        state.silent = true;
    }

    /** @param all whether what has a preset is asked too */
    void title(Installed template, boolean all) {
        say(text(template.calculator().declaration().titleKey()) + ": "
                + text(template.calculator().declaration().purposeKey()));
        say(session.texts().text("new.enter"));
        long preset = template.calculator().declaration().questions().stream()
                .filter(question -> question.preset().isPresent() && !question.optional())
                .count();
        if (!all && preset > 0) {
            say(session.texts().text("new.all-too", preset));
        }
    }

    /** Whether the answers ended before all was asked. */
    boolean ended() {
        return state.ended;
    }

    /** Whether, since this was asked before, an example was taken for what only the maker can measure. */
    boolean tookExample() {
        boolean took = state.example;
        state.example = false;
        return took;
    }

    /** Whether some questions are to be answered by another calculator; if nobody says so, they are not. */
    boolean takesFrom(Installed giver, List<Question> takers) throws BadArgument {
        String labels = String.join(
                ", ", takers.stream().map(question -> text(question.labelKey())).toList());
        say("");
        say(labels);
        Texts others = giver.calculator().texts();
        String named =
                session.wording().text(others, giver.calculator().declaration().titleKey())
                        + " ("
                        + String.join(
                                ", ",
                                giver.calculator().declaration().questions().stream()
                                        .flatMap(question -> question.variants().stream())
                                        .map(variant -> session.wording().text(others, variant.labelKey()))
                                        .toList())
                        + ")";
        Map<String, String> ways = new LinkedHashMap<>();
        ways.put(TYPED, session.texts().text("new.measured"));
        ways.put(giver.id(), named);
        try {
            return !one(labels, ways, TYPED).equals(TYPED);
        } catch (Ended ended) {
            return false;
        }
    }

    /**
     * Puts the answer to a question, as it stands in a project file, into the answers; whatever is wrong with it is told and
     * asked again, inside a group only the one that is wrong. Where the answers have ended, nothing is put in for one that has a
     * preset.
     *
     * @param faults what is wrong with the answers so far, at the question of that path
     * @throws BadArgument if the answers end before one that is needed, or it is never right
     */
    void ask(Question question, Map<String, Object> answers, Function<String, List<Remark>> faults) throws BadArgument {
        ask(question, question.key(), answers, faults);
    }

    private void ask(Question question, String path, Map<String, Object> answers, Function<String, List<Remark>> faults)
            throws BadArgument {
        try {
            for (int i = 0; i < PATIENCE; i++) {
                answer(question, path, answers, faults);
                List<Remark> wrong = faults.apply(path);
                if (wrong.isEmpty() || state.silent) {
                    return;
                }
                wrong.forEach(remark -> session.tellAtOnce(session.out(), remark));
            }
        } catch (Ended ended) {
            answers.remove(question.key());
            if (question.preset().isEmpty()) {
                throw new BadArgument(session.texts().text("new.ended", text(question.labelKey())));
            }
            return;
        }
        throw neverRight(text(question.labelKey()));
    }

    private BadArgument neverRight(String label) {
        return new BadArgument(session.texts().text("new.never-right", label, PATIENCE));
    }

    private void answer(
            Question question, String path, Map<String, Object> answers, Function<String, List<Remark>> faults)
            throws BadArgument, Ended {
        if (state.ended) {
            throw new Ended();
        }
        say("");
        say(text(question.labelKey()) + limits(question));
        say("  " + text(question.helpKey()));
        switch (question.kind()) {
            case CHOICE -> answers.put(question.key(), chosen(question));
            case VARIANTS -> {
                Variant variant = variant(question);
                Map<String, Object> inside = new LinkedHashMap<>();
                answers.put(question.key(), new LinkedHashMap<>(Map.of(variant.key(), inside)));
                group(variant.questions(), path + "." + variant.key(), inside, faults);
            }
            case GROUP -> {
                Map<String, Object> inside = new LinkedHashMap<>();
                answers.put(question.key(), inside);
                group(question.questions(), path, inside, faults);
            }
            case ROWS, LIST, ITEM -> {
                answers.put(question.key(), new JsonOut.Raw(question.example().orElse("null")));
                state.example |= question.preset().isEmpty();
            }
            case FLAG -> answers.put(question.key(), flag(question));
            default -> {
                String example = new ExampleInUnits(system).of(question).orElse("");
                String read = read(example);
                answers.put(question.key(), BareNumbers.withUnitShown(read, question, system));
                state.example |= state.suggested && question.preset().isEmpty();
            }
        }
    }

    private void group(
            List<Question> questions, String path, Map<String, Object> inside, Function<String, List<Remark>> faults)
            throws BadArgument {
        for (Question question : questions) {
            if (!question.optional()) {
                ask(question, path + "." + question.key(), inside, faults);
            }
        }
    }

    /** Yes or no in the words of the maker’s language or in those of a file; as a file has it. */
    private String flag(Question question) throws Ended {
        Map<String, String> said = Map.of(
                "yes",
                session.wording().host("value.yes"),
                "no",
                session.wording().host("value.no"));
        String usual = question.example().orElse("");
        String read = read(said.getOrDefault(usual, usual));
        return said.entrySet().stream()
                .filter(word -> word.getValue().equalsIgnoreCase(read))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(read);
    }

    private String chosen(Question question) throws BadArgument, Ended {
        Map<String, String> labels = new LinkedHashMap<>();
        question.options().forEach(option -> labels.put(option.key(), text(option.labelKey())));
        return one(
                text(question.labelKey()),
                labels,
                question.example().orElse(labels.keySet().iterator().next()));
    }

    private Variant variant(Question question) throws BadArgument, Ended {
        Map<String, String> labels = new LinkedHashMap<>();
        question.variants().forEach(variant -> labels.put(variant.key(), text(variant.labelKey())));
        String usual = way.filter(labels::containsKey)
                .or(() -> VariantPreset.of(question).map(VariantPreset::key))
                .orElse(labels.keySet().iterator().next());
        String key = one(text(question.labelKey()), labels, usual);
        return question.variants().stream()
                .filter(variant -> variant.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** One of several, by its number, its key or its label. */
    private String one(String label, Map<String, String> labels, String usual) throws BadArgument, Ended {
        List<String> keys = List.copyOf(labels.keySet());
        for (int i = 0; i < keys.size(); i++) {
            say("  " + (i + 1) + " " + labels.get(keys.get(i)));
        }
        for (int i = 0; i < PATIENCE; i++) {
            String read = read(String.valueOf(keys.indexOf(usual) + 1));
            for (int nth = 0; nth < keys.size(); nth++) {
                String key = keys.get(nth);
                if (read.equals(String.valueOf(nth + 1))
                        || read.equals(key)
                        || read.equalsIgnoreCase(labels.get(key))) {
                    return key;
                }
            }
            say("  " + session.texts().text("new.number", keys.size()));
        }
        throw neverRight(label);
    }

    private String limits(Question question) {
        Limits limits = new Limits(question, system);
        String within = limits.min().isPresent() && limits.max().isPresent()
                ? " (" + limits.min().get() + " – " + limits.max().get() + ")"
                : "";
        return limits.usual()
                .map(usual -> " (" + session.texts().text("explain.usual", usual) + ")")
                .orElse(within);
    }

    /** A line; an empty one is what is suggested. */
    private String read(String suggested) throws Ended {
        if (state.ended) {
            throw new Ended();
        }
        state.suggested = state.silent;
        if (state.silent) {
            return suggested;
        }
        session.out().print((suggested.isEmpty() ? "" : "[" + suggested + "] ") + "> ");
        session.out().flush();
        try {
            String line = session.in().readLine();
            if (line != null) {
                state.suggested = line.isBlank();
                return state.suggested ? suggested : line.strip();
            }
        } catch (IOException unreadable) {
            // as if nobody answered any more
        }
        state.ended = true;
        session.out().println();
        throw new Ended();
    }

    private void say(String line) {
        if (!state.silent && !state.ended) {
            session.out().println(line);
        }
    }

    private String text(String key) {
        return session.wording().text(texts, key);
    }
}
