package org.hidewright.api.drawing;

/** One thing on the sheet. */
public sealed interface Shape permits Path, Circle, Label, DimensionLine {
    /** What it means to the maker. */
    Role role();

    /** The smallest box round it; texts count by an estimate of their length, since no font is known here. */
    Box bounds();
}
