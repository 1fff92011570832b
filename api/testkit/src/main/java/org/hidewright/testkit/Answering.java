package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;

/** Whether what is told is whole: no exception, every answer there and a number where it is one, and everything said beside it declared. */
final class Answering {
    /** The host tells the weightiest, and that there were more. */
    private static final int MOST_NOTICES = 60;

    private final Trials trials;
    private final Set<String> wrong = new LinkedHashSet<>();

    private Answering(Trials trials) {
        this.trials = trials;
    }

    /** What is wrong at the presets and examples alone. */
    static List<String> example(Trials trials) {
        Answering answering = new Answering(trials);
        trials.unreadable().ifPresent(why -> answering.wrong.add(trials.id() + ": " + why + "."));
        trials.example()
                .filter(Told::refused)
                .ifPresent(told -> answering.wrong.add(trials.id() + ": the presets and examples together are refused, "
                        + told.notices() + ". They are what is shown first; choose ones that go together."));
        return new ArrayList<>(answering.wrong);
    }

    /** What is wrong in any trial, each once. */
    static List<String> all(Trials trials) {
        Answering answering = new Answering(trials);
        trials.all().forEach(answering::look);
        return new ArrayList<>(answering.wrong);
    }

    private void look(Told told) {
        if (!told.ended()) {
            wrong.add(trials.id() + ": no answer came within " + Bench.WAITS_S
                    + " seconds. The host waits no longer and does not ask again; look for a loop without end, or for work"
                    + " that grows with what is asked.");
        }
        told.broke()
                .ifPresent(thrown -> add(
                        "breaks with " + thrown + place(thrown),
                        told,
                        "Refuse in words what cannot be answered; an exception is a bug of the bundle"));
        told.working().wrong().forEach(what -> wrong.add(trials.id() + ": " + what + "."));
        told.notices().forEach(notice -> notice(notice, told));
        if (told.notices().size() > MOST_NOTICES) {
            add(
                    "tells " + told.notices().size() + " notices",
                    told,
                    "Nobody reads more than " + MOST_NOTICES + "; put those that are alike into one");
        }
        told.answers()
                .ifPresent(answers -> answers(trials.calculator().declaration().answers(), answers, "", true, told));
    }

    /** Where it was thrown: the innermost line that is neither of Java nor of the contract. */
    private static String place(Throwable thrown) {
        List<StackTraceElement> lines = List.of(thrown.getStackTrace());
        return lines.stream()
                .filter(line -> !line.getClassName().startsWith("java."))
                .filter(line -> !line.getClassName().startsWith("org.hidewright.api."))
                .findFirst()
                .or(() -> lines.stream().findFirst())
                .map(line -> " in " + line)
                .orElse("");
    }

    private void notice(Notice notice, Told told) {
        if (!trials.calculator().declaration().notices().contains(notice.kind())) {
            wrong.add(trials.id() + ": the notice “" + notice.kind().key()
                    + "” is raised and not declared, so that nobody checks its texts; list it in notices().");
        }
        Unsayable.in(notice.args())
                .ifPresent(what -> add(
                        "the notice “" + notice.kind().key() + "” is filled with something " + what,
                        told,
                        "Give what can be printed"));
    }

    /** @param onPaper whether it is for pages; what is put away into the workshop may be longer than one */
    private void answers(List<Answer> declared, Values given, String path, boolean onPaper, Told told) {
        for (Answer answer : declared) {
            boolean shown = onPaper && answer.stock().isEmpty();
            Object value = given.entries().get(answer.key());
            String place = path + answer.key();
            if (value == null && given.entries().containsKey(answer.key())) {
                add("the answer " + place + " is missing", told, "Give it, or declare it Optional");
            } else if (value instanceof List<?> several) {
                several.forEach(one -> one(answer, one, place, shown, told));
            } else if (value != null) {
                one(answer, value, place, shown, told);
            }
        }
    }

    private void one(Answer answer, Object value, String place, boolean shown, Told told) {
        if (value == null) {
            add("among " + place + " one is missing", told, "Leave it out");
        } else if (value instanceof Values row) {
            answers(answer.columns(), row, place + ".", shown, told);
        } else if (shown || !(value instanceof String)) {
            unsayable(value).ifPresent(what -> add("the answer " + place + " is " + what, told, "Mend it or refuse"));
            if (value instanceof Phrase phrase
                    && !trials.calculator().declaration().phrases().contains(phrase.key())) {
                wrong.add(trials.id() + ": the phrase “" + phrase.key()
                        + "” is answered and not declared; list it in phrases().");
            }
        }
    }

    private static Optional<String> unsayable(Object value) {
        return value instanceof Item || value instanceof Drawing ? Optional.empty() : Unsayable.in(value);
    }

    private void add(String what, Told told, String mend) {
        String sentence = trials.id() + ": " + what;
        if (wrong.stream().noneMatch(known -> known.startsWith(sentence))) {
            wrong.add(sentence + ", asked with " + told.asked().entries() + ". " + mend + ".");
        }
    }
}
