package org.hidewright.core.jobcard;

import java.util.LinkedHashSet;
import java.util.Set;
import org.hidewright.api.calculator.Source;
import org.hidewright.core.work.WorkedSlip;

/** What a slip stands on. */
public final class SlipSources {
    private SlipSources() {}

    /** The sources of its formulas and of the answers it gave, each once, in the order they are told. */
    public static Set<Source> of(WorkedSlip slip) {
        Set<Source> used = new LinkedHashSet<>(slip.otherSources());
        slip.steps().forEach(step -> used.add(step.formula().source()));
        slip.answers()
                .ifPresent(answers -> slip.installed().orElseThrow().calculator().declaration().answers().stream()
                        .filter(answer -> answers.get(answer.key()).isPresent())
                        .forEach(answer -> slip.source(answer).ifPresent(used::add)));
        return used;
    }
}
