package org.hidewright.testkit;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.measure.Range;

/** What declarations leave out or contradict, in sentences; what the host itself refuses is told when a contract is made. */
final class DeclarationChecks {
    /** Limits are typed in one unit and usual ones in another; equal ones may differ in the last digit. */
    private static final double SAME = 1e-9;

    private final List<Declaration> declarations;

    DeclarationChecks(Bundle bundle) {
        this.declarations =
                bundle.calculators().stream().map(RecordCalculator::declaration).toList();
    }

    Collection<String> withoutExample() {
        Set<String> without = new TreeSet<>();
        declarations.forEach(declaration -> all(declaration.questions().stream())
                .filter(question -> question.example().isEmpty())
                .filter(question -> question.kind() != Kind.GROUP) // answered by the questions in it
                .filter(question -> question.kind() != Kind.ITEM) // only ever linked
                .forEach(question -> without.add(declaration.id() + ": the question " + question.key()
                        + " has neither preset nor example. Give it the one a maker would start from.")));
        return without;
    }

    Collection<String> withoutSource() {
        Set<String> without = new TreeSet<>();
        declarations.forEach(declaration -> columns(declaration.answers().stream())
                .filter(answer -> answer.itemKind().dimension().isPresent())
                .filter(answer -> declaration.sourceOf(answer).isEmpty())
                .forEach(answer -> without.add(declaration.id() + ": the answer " + answer.key()
                        + " names no formula or source. Say by = … where the number comes from.")));
        return without;
    }

    /** Of what is measured or counted; of money a lower one, since currencies differ. */
    Collection<String> limits() {
        Set<String> wrong = new TreeSet<>();
        declarations.forEach(declaration -> all(declaration.questions().stream())
                .filter(question -> question.itemKind().dimension().isPresent() || question.itemKind() == Kind.SIZE)
                .forEach(question -> limits(declaration.id() + ": the question " + question.key(), question, wrong)));
        return wrong;
    }

    private static void limits(String who, Question question, Set<String> wrong) {
        boolean high = question.max().isPresent() || question.itemKind() == Kind.MONEY;
        if (question.min().isEmpty() || !high) {
            wrong.add(who + " has no " + (question.min().isEmpty() ? "lower" : "upper")
                    + " limit. Say min and max, what reason allows; you are not called outside them.");
        }
        question.usual().ifPresent(usual -> {
            double slack = SAME * Math.max(Math.abs(usual.low()), Math.abs(usual.high()));
            if (usual.low() < question.min().orElse(usual.low()) - slack
                    || usual.high() > question.max().orElse(usual.high()) + slack) {
                wrong.add(
                        who + " has usual limits, " + usual + ", outside its hard ones. Draw them inside min and max.");
            }
            question.preset().ifPresent(preset -> preset(who, question, usual, slack, wrong));
        });
    }

    private static void preset(String who, Question question, Range usual, double slack, Set<String> wrong) {
        Object preset = new TypicalAnswers(TwoPanels.item()).typical(question);
        Measures.number(preset).ifPresent(number -> {
            if (question.example().equals(question.preset())
                    && (number < usual.low() - slack || number > usual.high() + slack)) {
                wrong.add(who + " is preset to " + question.preset().orElseThrow() + ", outside its own usual limits, "
                        + usual + ". A maker who leaves it is told that it is unusual; mend one of them.");
            }
        });
    }

    private static Stream<Answer> columns(Stream<Answer> answers) {
        return answers.flatMap(
                answer -> Stream.concat(Stream.of(answer), columns(DeclaredTexts.columns(answer).stream())));
    }

    private static Stream<Question> all(Stream<Question> questions) {
        return questions.flatMap(question -> Stream.concat(
                Stream.of(question),
                all(Stream.concat(
                        question.questions().stream(),
                        question.variants().stream().flatMap(variant -> variant.questions().stream())))));
    }
}
