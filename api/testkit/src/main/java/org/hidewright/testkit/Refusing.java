package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hidewright.api.calculator.NoticeKind;

/**
 * Whether anything is refused although every answer is usual. What comes of answers that do not go together its author names; the
 * example is never refused, and enough of what is usual is answered.
 */
final class Refusing {
    /** Of what is asked with one answer changed at least this share is answered, or the limits are not the usual ones. */
    private static final double LEAST_ANSWERED = 0.5;

    private Refusing() {}

    /** @param together keys of refusals that come of answers that do not go together */
    static List<String> wrong(List<Trials> all, Set<String> together) {
        List<String> wrong = new ArrayList<>();
        for (Trials trials : all) {
            Map<String, Told> refused = new LinkedHashMap<>();
            for (Told told : trials.usual()) {
                told.refusals().forEach(key -> refused.putIfAbsent(key, told));
            }
            refused.forEach((key, told) -> {
                if (!together.contains(key)) {
                    wrong.add(trials.id() + ": “" + key + "” is refused although every answer is usual: "
                            + told.asked().entries()
                            + ". Make the limits narrower, answer it with a check instead, or, if"
                            + " the answers do not go together, name it in refusedTogether().");
                }
            });
            few(trials).ifPresent(wrong::add);
        }
        Set<String> unknown = new TreeSet<>(together);
        unknown.removeAll(stops(all));
        unknown.forEach(key -> wrong.add("“" + key
                + "” stands in refusedTogether(), and no calculator declares such a stop; leave it out or mend it."));
        return wrong;
    }

    private static Optional<String> few(Trials trials) {
        List<Told> changed = trials.oneChanged();
        long answered = changed.stream().filter(told -> !told.refused()).count();
        return answered >= LEAST_ANSWERED * changed.size()
                ? Optional.empty()
                : Optional.of(trials.id() + ": the example was asked with one answer changed to another usual one, "
                        + changed.size() + " times, and answered " + answered
                        + " times. Draw the usual limits so that what lies between them can be made.");
    }

    private static Set<String> stops(List<Trials> all) {
        Set<String> stops = new TreeSet<>();
        all.forEach(trials -> trials.calculator().declaration().notices().stream()
                .filter(kind -> kind.severity() == NoticeKind.Severity.STOP)
                .map(NoticeKind::key)
                .forEach(stops::add));
        return stops;
    }
}
