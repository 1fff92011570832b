package org.hidewright.core.range;

import java.util.List;
import java.util.Set;

/**
 * What becomes of an answer that is one of several.
 *
 * @param nominal with every input at its nominal value
 * @param others met anywhere else
 * @param switches where it becomes another as one input moves
 */
public record Choices(Object nominal, Set<Object> others, List<Switch> switches) {
    public Choices {
        others = Set.copyOf(others);
        switches = List.copyOf(switches);
    }
}
