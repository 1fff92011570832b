package org.hidewright.costing;

/** What a line of a cost sheet stands for. */
public enum CostKind {
    LEATHER,
    HARDWARE,
    THREAD,
    LIQUIDS,
    MACHINES,
    WORK,
    ONCE_ONLY,
    OVERHEAD,
    SPOILAGE,
    PACKING
}
