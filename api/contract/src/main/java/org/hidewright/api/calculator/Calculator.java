package org.hidewright.api.calculator;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * One calculation a maker can have on the bench: a pure function from a record of questions to a record of answers.
 *
 * <p>The class carries {@link Calculates}. The same questions give the same answers: no clock, no file, no random
 * number, no default locale. One instance serves every slip, on any thread, many times a second, since the host works
 * ranges out by calling it again with other values.
 *
 * <p>Texts live in {@code messages.properties} (UTF-8) beside the class, other languages in
 * {@code messages_de.properties} and so on; the keys are those of the declaration.
 *
 * @param <Q> the question record, each component annotated with {@link Asked}
 * @param <A> the answer record, each component annotated with {@link Answered}
 */
@ConsumerType
public interface Calculator<Q extends Record, A extends Record> {
    /**
     * Works the answers out, or refuses in workshop words.
     *
     * @param questions every component filled and inside its hard limits
     * @param working takes the steps that explain the answers; ignoring it is allowed, relying on it is not
     * @return answers or a refusal; an exception is a bug of the bundle and is shown on that slip alone
     */
    Outcome<A> calculate(Q questions, Working working);

    /** Every formula that can appear in the working, in the order they are explained. */
    default List<Formula> formulas() {
        return List.of();
    }

    /** Every kind of notice this calculator can raise, so that their texts can be checked and listed. */
    default List<NoticeKind> notices() {
        return List.of();
    }

    /** The keys of every phrase that can appear among the answers. */
    default List<String> phrases() {
        return List.of();
    }

    /** Sources beyond those of the formulas, for example a table that answers are read from. */
    default List<Source> sources() {
        return List.of();
    }
}
