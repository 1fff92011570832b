package org.hidewright.stitching;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** How thick a thread is, as its label says it. */
public sealed interface ThreadCount
        permits ThreadCount.Tex, ThreadCount.Denier, ThreadCount.MetricTicket, ThreadCount.Linen, ThreadCount.Measured {
    /** Grams of a kilometre. */
    record Tex(
            @Asked(min = "1", max = "5000", usual = "20-600", example = "135")
            double tex) implements ThreadCount {}

    /** Grams of nine kilometres, of each ply. */
    record Denier(
            @Asked(min = "10", max = "50000", usual = "100-5000", example = "1260")
            double denier,

            @Asked(min = "1", max = "40", usual = "1-6", preset = "3")
            int plies)
            implements ThreadCount {}

    /** Three times the metres of a gram. */
    record MetricTicket(
            @Asked(min = "0.5", max = "500", usual = "5-120", example = "20")
            double ticket) implements ThreadCount {}

    /** Hanks of 300 yards that weigh a pound, and how many such yarns are twisted together. */
    record Linen(
            @Asked(min = "1", max = "200", usual = "10-40", example = "18")
            double lea,

            @Asked(min = "1", max = "40", usual = "2-6", preset = "3")
            int plies)
            implements ThreadCount {}

    /** By a caliper or by winding it close round a rod. */
    record Measured(
            @Asked(unit = "mm", min = "0.05 mm", max = "4 mm", usual = "0.3-1.2 mm", example = "0.6 mm")
            Length diameter)
            implements ThreadCount {}
}
