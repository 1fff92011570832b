package org.hidewright.core.work;

import java.util.Optional;

/** The ranges of one slip, worked out when somebody first asks; any thread may. */
final class LateRanges {
    private Optional<SlipRanges> known;

    synchronized Optional<SlipRanges> of(WorkedProject project, SharedTrials trials, String slip) {
        if (known == null) {
            synchronized (trials) {
                known = RangeWork.of(project, trials, slip);
            }
        }
        return known;
    }
}
