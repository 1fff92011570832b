package org.hidewright.core.work;

import java.util.Optional;

/** The ranges of one slip, worked out when somebody first asks; any thread may. */
final class LateRanges {
    private Optional<SlipRanges> known;

    synchronized Optional<SlipRanges> of(WorkedProject project, String slip) {
        if (known == null) {
            known = RangeWork.of(project, slip);
        }
        return known;
    }
}
