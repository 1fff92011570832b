package org.hidewright.core.begin;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;

/** Calculators whose answers suit what another one asks, such as the size of a thing by its name. */
public final class Givers {
    private final Catalogue catalogue;

    public Givers(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The calculator whose answer suits a question, or one in a group, where it is installed. */
    public Optional<Installed> of(Question question) {
        return Stream.concat(
                        question.from().stream(), question.questions().stream().flatMap(one -> one.from().stream()))
                .flatMap(from -> catalogue.find(calculator(from)).stream())
                .findFirst();
    }

    /** The first calculator that gives something to one of several questions. */
    Optional<Installed> of(List<Question> questions) {
        return questions.stream().flatMap(question -> of(question).stream()).findFirst();
    }

    private boolean suits(Question question, Installed giver) {
        return of(question).filter(found -> found.id().equals(giver.id())).isPresent();
    }

    /** The questions that a calculator gives something to; of a group those inside. */
    public List<Question> takers(List<Question> questions, Installed giver) {
        return questions.stream()
                .filter(question -> suits(question, giver))
                .flatMap(question -> question.kind() == Kind.GROUP
                        ? takers(question.questions(), giver).stream()
                        : Stream.of(question))
                .toList();
    }

    /** Links to what is given, from every question that it suits; a group of such questions has them inside. */
    public Map<String, Object> links(List<Question> questions, Installed giver) {
        Map<String, Object> links = new LinkedHashMap<>();
        for (Question question : questions) {
            if (suits(question, giver)) {
                links.put(
                        question.key(),
                        question.kind() == Kind.GROUP
                                ? links(question.questions(), giver)
                                : link(giver.id(), answer(question.from().orElseThrow())));
            }
        }
        return links;
    }

    /** Which of the ways of a calculator suits what these questions are about; empty where they say nothing of it. */
    public Optional<String> way(List<Question> questions, Installed giver) {
        return questions.stream()
                .filter(question -> question.kind() == Kind.GROUP && suits(question, giver))
                .flatMap(question -> question.from().stream())
                .map(Givers::answer)
                .findFirst();
    }

    static Map<String, Object> link(String slip, String answer) {
        Map<String, Object> link = new LinkedHashMap<>();
        link.put("from", slip);
        link.put("answer", answer);
        return link;
    }

    /** The calculator of {@code calculator.answer}. */
    static String calculator(String from) {
        return from.substring(0, from.indexOf('.'));
    }

    /** The answer of {@code calculator.answer}. */
    static String answer(String from) {
        return from.substring(from.indexOf('.') + 1);
    }
}
