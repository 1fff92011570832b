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
                "paper.schedule-wait"));
    }
}
