package org.hidewright.fasteners;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** How a rivet is closed, and with it how much of its shank stands out of the leather. */
public sealed interface RivetKind permits RivetKind.Capped, RivetKind.Tubular, RivetKind.Solid {
    /** A cap is pressed on the end of the post. */
    record Capped() implements RivetKind {}

    /** The hollow end is rolled over. */
    record Tubular() implements RivetKind {}

    /** A washer goes over the shank, the rest is clipped off and peened down. */
    record Solid(
            @Asked(unit = "mm", min = "0.2 mm", max = "5 mm", usual = "0.5-2 mm", preset = "0.8 mm")
            Length burr,

            @Asked(unit = "mm", min = "0.5 mm", max = "10 mm", usual = "1.5-3 mm", preset = "2 mm")
            Length peened)
            implements RivetKind {}
}
