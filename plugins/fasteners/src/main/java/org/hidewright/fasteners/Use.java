package org.hidewright.fasteners;

import org.hidewright.api.calculator.Asked;

/** What is asked once for every fitting because somebody can be hurt by it. */
public record Use(
        @Asked(preset = "yes") boolean touchesSkin,
        @Asked(preset = "no") boolean forChildren,
        @Asked(preset = "no") boolean bearsLoad) {}
