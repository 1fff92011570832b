package org.hidewright.api.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Range;

/**
 * What the declaration of a question leaves out or contradicts; what cannot be declared at all is told when it is read.
 *
 * @param what which of it
 */
public record DeclaredFault(Question question, What what) {
    /** Limits are typed in one unit and usual ones in another; equal ones may differ in the last digit. */
    private static final double SAME = 1e-9;

    /** One of the faults. */
    public enum What {
        /** Neither preset nor example: nobody knows what to begin with. */
        NO_EXAMPLE,
        /** A measure or a number without a least value. */
        NO_LOWER_LIMIT,
        /** The same without a greatest value; an amount of money needs none. */
        NO_UPPER_LIMIT,
        /** Usual limits that are not between the hard ones. */
        USUAL_OUTSIDE,
        /** A preset that is not between the usual limits. */
        PRESET_UNUSUAL
    }

    /**
     * Everything of the kind that is wrong with a declaration, the questions inside others too.
     *
     * @param typical reads presets
     */
    public static List<DeclaredFault> of(Declaration declaration, Typical typical) {
        List<DeclaredFault> faults = new ArrayList<>();
        all(declaration.questions().stream()).forEach(question -> {
            boolean needsExample = question.kind() != Kind.GROUP && question.kind() != Kind.ITEM;
            if (needsExample && question.example().isEmpty()) {
                faults.add(new DeclaredFault(question, What.NO_EXAMPLE));
            }
            if (question.itemKind().dimension().isPresent() || question.itemKind() == Kind.SIZE) {
                limits(question, typical, faults);
            }
        });
        return List.copyOf(faults);
    }

    private static void limits(Question question, Typical typical, List<DeclaredFault> faults) {
        if (question.min().isEmpty()) {
            faults.add(new DeclaredFault(question, What.NO_LOWER_LIMIT));
        } else if (question.max().isEmpty() && question.itemKind() != Kind.MONEY) {
            faults.add(new DeclaredFault(question, What.NO_UPPER_LIMIT));
        }
        question.usual().ifPresent(usual -> {
            double slack = SAME * Math.max(Math.abs(usual.low()), Math.abs(usual.high()));
            if (usual.low() < question.min().orElse(usual.low()) - slack
                    || usual.high() > question.max().orElse(usual.high()) + slack) {
                faults.add(new DeclaredFault(question, What.USUAL_OUTSIDE));
            }
            if (isUnusual(question, usual, slack, typical)) {
                faults.add(new DeclaredFault(question, What.PRESET_UNUSUAL));
            }
        });
    }

    private static boolean isUnusual(Question question, Range usual, double slack, Typical typical) {
        return question.preset().isPresent()
                && question.example().equals(question.preset())
                && Measures.number(typical.typical(question)).stream()
                        .anyMatch(number -> number < usual.low() - slack || number > usual.high() + slack);
    }

    private static Stream<Question> all(Stream<Question> questions) {
        return questions.flatMap(question -> Stream.concat(
                Stream.of(question),
                all(Stream.concat(
                        question.questions().stream(),
                        question.variants().stream().flatMap(variant -> variant.questions().stream())))));
    }
}
