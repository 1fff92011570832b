package org.hidewright.core.begin;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.work.SuitableRows;

/**
 * What follows from a piece: calculators that ask for an item, and those that take from them. Those whose other questions all
 * have a preset, may stay open, or are answered by the workshop follow without a word.
 */
final class Following {
    private final Catalogue catalogue;
    private final SuitableRows rows;
    private final Installed template;
    private final Typical typical;

    Following(Catalogue catalogue, SuitableRows rows, Installed template, Typical typical) {
        this.catalogue = catalogue;
        this.rows = rows;
        this.template = template;
        this.typical = typical;
    }

    /** All of them, each after what it takes from. */
    List<Installed> all() {
        List<Installed> found = new ArrayList<>();
        List<Installed> rest = new ArrayList<>(catalogue.ids().stream()
                .flatMap(id -> catalogue.find(id).stream())
                .filter(known -> known.calculator().declaration().answers().stream()
                        .noneMatch(answer -> answer.kind() == Kind.ITEM))
                .toList());
        boolean more = true;
        while (more) {
            List<Installed> next =
                    rest.stream().filter(one -> follows(one, found)).toList();
            found.addAll(next);
            rest.removeAll(next);
            more = !next.isEmpty();
        }
        return List.copyOf(found);
    }

    /** Whether it asks for an item, or for what others answer that follow before. */
    private boolean follows(Installed calculator, List<Installed> before) {
        return questions(calculator).stream()
                .anyMatch(question ->
                        Installed.isItem(question) || taken(question, before).isPresent());
    }

    private static List<Question> questions(Installed calculator) {
        return calculator.calculator().declaration().questions();
    }

    /** Keys of the questions of one of them that only the maker can answer. */
    List<String> asks(Installed calculator) {
        List<Installed> all = all();
        return questions(calculator).stream()
                .filter(question -> !isAnswered(question, all))
                .map(Question::key)
                .toList();
    }

    private boolean isAnswered(Question question, List<Installed> all) {
        return Installed.isItem(question)
                || canBeLeft(question)
                || taken(question, all).isPresent()
                || !rows.of(question).isEmpty();
    }

    private static boolean canBeLeft(Question question) {
        return question.preset().isPresent()
                || question.optional()
                || question.kind() == Kind.GROUP
                        && question.questions().stream().allMatch(Following::canBeLeft);
    }

    /** Those that follow without a word, with all that they take from. */
    List<Installed> ready() {
        return all().stream()
                .filter(one ->
                        with(one.id()).stream().allMatch(each -> asks(each).isEmpty()))
                .toList();
    }

    /** Of the piece and what follows before, the calculator with an answer that suits a question. */
    private Optional<Installed> giver(Question question, List<Installed> before) {
        return question.from()
                .flatMap(from -> before.stream()
                        .filter(one -> one.id().equals(Givers.calculator(from)))
                        .filter(one -> one.calculator()
                                .declaration()
                                .answer(Givers.answer(from))
                                .isPresent())
                        .findFirst());
    }

    /** One of them with all it takes from, directly or not, each after what it takes from. */
    List<Installed> with(String calculator) {
        List<Installed> all = all();
        Set<String> wanted = new HashSet<>(Set.of(calculator));
        for (int i = all.size() - 1; i >= 0; i--) {
            if (wanted.contains(all.get(i).id())) {
                wanted.addAll(takenFrom(all.get(i), all));
            }
        }
        return all.stream().filter(one -> wanted.contains(one.id())).toList();
    }

    /** One of them and all that take from it, directly or not. */
    List<Installed> without(String calculator) {
        List<Installed> all = all();
        Set<String> gone = new HashSet<>(Set.of(calculator));
        for (Installed one : all) {
            if (takenFrom(one, all).stream().anyMatch(gone::contains)) {
                gone.add(one.id());
            }
        }
        return all.stream().filter(one -> gone.contains(one.id())).toList();
    }

    /** Ids of those that a calculator takes from. */
    private Set<String> takenFrom(Installed calculator, List<Installed> all) {
        Set<String> from = new HashSet<>();
        questions(calculator).forEach(question -> taken(question, all).ifPresent(giver -> from.add(giver.id())));
        return from;
    }

    /** The giver of a question that has no other answer. */
    private Optional<Installed> taken(Question question, List<Installed> all) {
        return question.preset().isPresent() || question.optional() ? Optional.empty() : giver(question, all);
    }

    /**
     * What a slip of such a calculator answers: the item, what others give, what the workshop has; and to begin with a typical
     * answer to what only the maker can say.
     *
     * @param preferred by table of the workshop, the row that the piece takes
     */
    Map<String, Object> answers(Installed calculator, Map<String, String> preferred) {
        List<Question> questions = questions(calculator);
        List<Installed> all = all();
        Map<String, Object> answers = new LinkedHashMap<>();
        Map<String, Object> stocked = new StockAnswers(rows, preferred)
                .alike(questions.stream()
                        .filter(question -> question.preset().isEmpty()
                                && taken(question, all).isEmpty())
                        .toList());
        for (Question question : questions) {
            if (Installed.isItem(question)) {
                answers.put(question.key(), Givers.link(template.id(), item()));
            } else if (taken(question, all).isPresent()) {
                String from = question.from().orElseThrow();
                answers.put(question.key(), Givers.link(Givers.calculator(from), Givers.answer(from)));
            } else if (stocked.containsKey(question.key())) {
                answers.put(question.key(), stocked.get(question.key()));
            } else if (!canBeLeft(question)
                    && question.kind() != Kind.ROWS) { // no rows are typical: leather is had or not
                typical.answer(question).ifPresent(answer -> answers.put(question.key(), answer));
            }
        }
        return answers;
    }

    private String item() {
        Declaration declaration = template.calculator().declaration();
        return declaration.answers().stream()
                .filter(answer -> answer.kind() == Kind.ITEM)
                .map(Answer::key)
                .findFirst()
                .orElseThrow();
    }
}
