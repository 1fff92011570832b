package org.hidewright.core.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.begin.Step.Asked;
import org.hidewright.core.catalogue.Installed;

/** Which question of a template, and of what gives it its size, is asked in which step. */
final class StepsOf {
    private final Installed template;
    private final Optional<Installed> giver;
    private final Givers givers;

    /** @param giver where sizes are taken from; empty where they are typed */
    StepsOf(Installed template, Optional<Installed> giver, Givers givers) {
        this.template = template;
        this.giver = giver;
        this.givers = givers;
    }

    /** One of the steps that ask what the template asks. */
    Step step(Step.Kind kind) {
        List<Asked> asked = new ArrayList<>();
        List<Asked> more = new ArrayList<>();
        if (kind == Step.Kind.SIZE) {
            giver.ifPresent(known -> questions(known)
                    .forEach(question -> (question.optional() ? more : asked).add(of(known, question))));
        }
        for (Question question : questions(template)) {
            if (kind(question) == kind) {
                (isAsked(question, kind) ? asked : more).add(of(template, question));
            }
        }
        return new Step(kind, asked, more);
    }

    /** What follows; what only the maker can say is asked, all else can be looked at. */
    static Step following(List<Follower> followers) {
        List<Asked> asked = new ArrayList<>();
        List<Asked> more = new ArrayList<>();
        followers.stream()
                .filter(Follower::in)
                .forEach(follower -> questions(follower.calculator()).stream()
                        .filter(question -> question.kind() != Kind.ITEM)
                        .forEach(question -> (follower.asks().contains(question.key()) ? asked : more)
                                .add(of(follower.calculator(), question))));
        return new Step(Step.Kind.FOLLOWS, asked, more);
    }

    private static Step.Kind kind(Question question) {
        if (isStocked(question)) {
            return Step.Kind.STOCK;
        }
        return switch (question.kind()) {
            case CHOICE, VARIANTS, FLAG -> Step.Kind.MADE;
            default -> Step.Kind.SIZE;
        };
    }

    private static boolean isStocked(Question question) {
        boolean group = question.kind() == Kind.GROUP && !question.questions().isEmpty();
        return question.stock().isPresent()
                || group && question.questions().stream().allMatch(StepsOf::isStocked);
    }

    /** What has a preset need not be looked at, unless it is a matter of choice or of what the workshop has. */
    private boolean isAsked(Question question, Step.Kind kind) {
        boolean given = giver.isPresent() && givers.of(question).isPresent();
        return !question.optional()
                && !given
                && (kind != Step.Kind.SIZE || question.preset().isEmpty());
    }

    private static Asked of(Installed calculator, Question question) {
        return new Asked(calculator.id(), question.key());
    }

    private static List<Question> questions(Installed calculator) {
        return calculator.calculator().declaration().questions();
    }
}
