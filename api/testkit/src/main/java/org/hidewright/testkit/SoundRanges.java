package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.trials.Bounds;
import org.hidewright.api.trials.Measures;
import org.hidewright.api.trials.Variations;

/**
 * Whether ranges make sense: measured a little smaller and a little larger, the answer at what was measured lies between the two.
 * At a turning point or a kink it does not, but comes nearer to both as they come nearer; a leap stays as far. Where a count, a
 * choice or the rows of a table are others too, something switches there, and the host shows where.
 */
final class SoundRanges {
    private static final double SHARE = 0.01;
    private static final double FINER = 0.1;
    /** The last digits of a calculation are not looked at. */
    private static final double NOTHING = 1e-6;

    private final Trials trials;
    private final List<String> wrong = new ArrayList<>();

    private SoundRanges(Trials trials) {
        this.trials = trials;
    }

    static List<String> wrong(Trials trials) {
        SoundRanges ranges = new SoundRanges(trials);
        trials.example().filter(told -> told.answers().isPresent()).ifPresent(ranges::around);
        return ranges.wrong;
    }

    private void around(Told nominal) {
        List<Beside> coarse = beside(nominal, SHARE);
        List<Beside> fine = beside(nominal, SHARE * FINER);
        for (int i = 0; i < coarse.size(); i++) {
            if (alike(nominal, fine.get(i))) {
                leaps(nominal, coarse.get(i), fine.get(i));
            }
        }
    }

    /** What is told with one measure a little smaller and a little larger. */
    private record Beside(String place, Told low, Told high) {
        /** By how much an answer between the two is outside of both; nothing where it cannot be said. */
        double outside(String answer, Object value) {
            OptionalDouble one = number(low, answer);
            OptionalDouble other = number(high, answer);
            if (one.isEmpty() || other.isEmpty()) {
                return 0;
            }
            double middle = Measures.number(value).orElseThrow();
            double least = Math.min(one.getAsDouble(), other.getAsDouble());
            double most = Math.max(one.getAsDouble(), other.getAsDouble());
            return Math.max(0, Math.max(least - middle, middle - most));
        }

        private static OptionalDouble number(Told told, String answer) {
            Object value = told.leaves().get(answer);
            return isMeasured(value) ? Measures.number(value) : OptionalDouble.empty();
        }
    }

    private List<Beside> beside(Told nominal, double share) {
        List<Question> questions = trials.calculator().declaration().questions();
        List<Variations.Varied> varied =
                Variations.of(questions, nominal.asked(), (question, now) -> ends(question, now, share));
        List<Beside> beside = new ArrayList<>();
        for (int i = 0; i < varied.size(); i += 2) {
            beside.add(new Beside(varied.get(i).place(), ask(varied.get(i)), ask(varied.get(i + 1))));
        }
        return beside;
    }

    private Told ask(Variations.Varied varied) {
        return trials.bench().ask(trials.calculator(), varied.values());
    }

    /** Two for each measure, one a little below and one a little above. */
    private static Stream<Object> ends(Question question, Optional<Object> now, double share) {
        OptionalDouble number = now.isPresent() ? Measures.number(now.get()) : OptionalDouble.empty();
        if (number.isEmpty() || question.kind() == Kind.COUNT || number.getAsDouble() == 0) {
            return Stream.empty();
        }
        Bounds near = Bounds.around(question, number.getAsDouble(), share);
        return Stream.of(near.at(question, 0, now.get()), near.at(question, 1, now.get()));
    }

    /** Whether as many rows, the same choices and counts are answered; where they switch, measures may leap. */
    private static boolean alike(Told nominal, Beside beside) {
        Map<String, Object> switches = switches(nominal);
        return switches.equals(switches(beside.low())) && switches.equals(switches(beside.high()));
    }

    private static Map<String, Object> switches(Told told) {
        Map<String, Object> switches = new LinkedHashMap<>();
        told.leaves().forEach((place, value) -> {
            boolean plain = value instanceof Integer || value instanceof String || value instanceof Boolean;
            switches.put(place, plain ? value : "");
        });
        return switches;
    }

    private static boolean isMeasured(Object value) {
        return value instanceof Quantity<?> || value instanceof Money || value instanceof Double;
    }

    private void leaps(Told nominal, Beside coarse, Beside fine) {
        nominal.leaves().forEach((answer, value) -> {
            if (isMeasured(value)) {
                double far = coarse.outside(answer, value);
                double near = fine.outside(answer, value);
                if (far > NOTHING && near > far / 2) {
                    wrong.add(trials.id() + ": with " + coarse.place() + " a thousandth smaller and larger, " + answer
                            + " goes from " + fine.low().leaves().get(answer) + " over " + value + " to "
                            + fine.high().leaves().get(answer)
                            + ". A small change of a measure makes a small change of what"
                            + " is cut; look for what is worked out at one value alone.");
                }
            }
        });
    }
}
