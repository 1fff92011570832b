package org.hidewright.window;

import java.util.Optional;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.window.model.Memory;

/**
 * The units of what says nothing of them itself: those asked for when the window was opened, and for what is begun those that
 * were switched to last. For the thread of the window.
 */
final class UnitsSeen {
    private final Memory memory;
    private Optional<UnitSystem> asked;

    UnitsSeen(Memory memory, Optional<UnitSystem> asked) {
        this.memory = memory;
        this.asked = asked;
    }

    /** Of a project that is opened; without a word it is shown as it is made. */
    UnitSystem ofOpened() {
        return asked.orElse(UnitSystem.METRIC);
    }

    /** Of a project that is begun, and of a workshop beside none. */
    UnitSystem ofBegun() {
        return asked.or(memory::units).orElse(UnitSystem.METRIC);
    }

    /** Notes that the maker has switched. */
    void switched(UnitSystem to) {
        asked = Optional.empty();
        memory.units(to);
    }
}
