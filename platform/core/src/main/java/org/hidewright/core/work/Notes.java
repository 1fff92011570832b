package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.work.WorkedSlip.Step;

/**
 * What a calculator tells beside its answers, and no more of it than somebody can read. Answers are whole or they are
 * refused; what stands beside them can be cut off.
 */
final class Notes implements Working {
    static final int MOST_STEPS = 300;
    static final int MOST_NOTICES = 60;

    private final List<Step> steps = new ArrayList<>();
    private final Map<String, Source> sources = new HashMap<>();
    private long stepsTold;
    private long noticesTold;

    @Override
    public void step(Formula formula, Object result, Object... symbolsAndValues) {
        if (symbolsAndValues.length % 2 != 0) {
            throw new IllegalArgumentException("step " + formula.key() + " has a symbol without a value");
        }
        Step step = new Step(formula, Objects.requireNonNull(result, "result"), List.of(symbolsAndValues));
        stepsTold++;
        if (steps.size() < MOST_STEPS) {
            steps.add(step);
        }
    }

    @Override
    public void source(String answer, Source source) {
        Objects.requireNonNull(source, "source");
        if (sources.size() < MOST_STEPS) {
            sources.put(Objects.requireNonNull(answer, "answer"), source);
        }
    }

    /** @throws BundleFault if something in the working cannot be put into words */
    List<Step> steps() {
        for (Step step : steps) {
            Sayable.check(List.of(step.formula().key(), step.formula().symbols(), step.result()));
            Sayable.check(step.symbolsAndValues());
        }
        return steps;
    }

    Map<String, Source> sources() {
        return sources;
    }

    /**
     * The notices to tell; of too many the weightiest.
     *
     * @throws BundleFault if something in them cannot be put into words
     */
    List<Notice> told(List<Notice> notices) {
        noticesTold = notices.size();
        List<Notice> told = notices.size() <= MOST_NOTICES
                ? notices
                : notices.stream()
                        .sorted(Comparator.comparing(notice -> notice.kind().severity()))
                        .limit(MOST_NOTICES)
                        .toList();
        for (Notice notice : told) {
            Sayable.check(List.of(notice.kind().key(), notice.place()));
            Sayable.check(notice.args());
        }
        return told;
    }

    /** What there was too much of, after {@link #told}. */
    Optional<Notice> tooMuch(Installed by) {
        return stepsTold <= MOST_STEPS && noticesTold <= MOST_NOTICES
                ? Optional.empty()
                : Optional.of(ProjectNotices.TOO_MUCH.with(by.id(), by.bundle(), noticesTold, stepsTold));
    }
}
