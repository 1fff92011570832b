package org.hidewright.testkit;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.measure.Range;
import org.hidewright.api.trials.DeclaredFault;
import org.hidewright.api.trials.DeclaredFault.What;

/** What declarations leave out or contradict, in sentences; what the host itself refuses is told when a contract is made. */
final class DeclarationChecks {
    private final List<Declaration> declarations;

    DeclarationChecks(Bundle bundle) {
        this.declarations =
                bundle.calculators().stream().map(RecordCalculator::declaration).toList();
    }

    Collection<String> withoutExample() {
        return told(What.NO_EXAMPLE);
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
        return told(What.NO_LOWER_LIMIT, What.NO_UPPER_LIMIT, What.USUAL_OUTSIDE, What.PRESET_UNUSUAL);
    }

    private Collection<String> told(What... wanted) {
        Set<String> told = new TreeSet<>();
        for (Declaration declaration : declarations) {
            DeclaredFault.of(declaration, new TypicalAnswers(TwoPanels.item())).stream()
                    .filter(fault -> List.of(wanted).contains(fault.what()))
                    .forEach(fault -> told.add(declaration.id() + ": the question "
                            + fault.question().key() + words(fault)));
        }
        return told;
    }

    private static String words(DeclaredFault fault) {
        String usual = fault.question().usual().map(Range::toString).orElse("");
        return switch (fault.what()) {
            case NO_EXAMPLE -> " has neither preset nor example. Give it the one a maker would start from.";
            case NO_LOWER_LIMIT ->
                " has no lower limit. Say min and max, what reason allows; you are not called outside them.";
            case NO_UPPER_LIMIT ->
                " has no upper limit. Say min and max, what reason allows; you are not called outside them.";
            case USUAL_OUTSIDE ->
                " has usual limits, " + usual + ", outside its hard ones. Draw them inside min and max.";
            case PRESET_UNUSUAL ->
                " is preset to " + fault.question().preset().orElseThrow()
                        + ", outside its own usual limits, " + usual
                        + ". A maker who leaves it is told that it is unusual; mend one of them.";
        };
    }

    private static Stream<Answer> columns(Stream<Answer> answers) {
        return answers.flatMap(
                answer -> Stream.concat(Stream.of(answer), columns(DeclaredTexts.columns(answer).stream())));
    }
}
