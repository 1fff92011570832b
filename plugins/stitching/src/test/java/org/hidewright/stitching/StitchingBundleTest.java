package org.hidewright.stitching;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

class StitchingBundleTest extends BundleContract {
    StitchingBundleTest() {
        super(StitchMarks.class);
    }

    /** Those of the workshop’s table. */
    @Override
    protected Set<String> otherTexts() {
        return Set.of(
                "hand-needles.title",
                "hand-needles.purpose",
                "hand-needles.name",
                "hand-needles.name.help",
                "hand-needles.eye",
                "hand-needles.eye.help",
                "hand-needles.note",
                "hand-needles.note.help");
    }

    /** Two lines that are sewn to each other, steps on a line, and irons with as many prongs as there are. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of("corners-differ", "no-strike-plan", "step-off-line");
    }
}
