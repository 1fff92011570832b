package org.hidewright.edges;

import java.util.Set;
import java.util.TreeSet;
import org.hidewright.testkit.BundleContract;

class EdgesBundleTest extends BundleContract {
    EdgesBundleTest() {
        super(Finishing.class);
    }

    /** What the finishing schedule says beside what calculators say. */
    @Override
    protected Set<String> otherTexts() {
        return new TreeSet<>(Set.of(
                "finishing-schedule.title",
                "paper.schedule-for",
                "paper.schedule-help",
                "paper.schedule-step",
                "paper.schedule-time",
                "paper.schedule-wait"));
    }

    /** A grit that its system of numbers does not have, two grits the wrong way round, and a liquid that only its label knows. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of("grit-ends-swapped", "grit-unknown", "liquid-without-label");
    }
}
