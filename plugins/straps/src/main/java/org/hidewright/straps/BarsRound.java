package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Wraps;

/** A strap closed round two bars; the radii are those of its neutral line. */
record BarsRound(double firstRadiusMm, double secondRadiusMm, double centresMm, boolean crossed) {
    private static final Formula OPEN_ANGLE =
            Formula.of("two-bars-open-angle", "α = asin((R - r) / C)", Origins.TWO_PULLEYS);
    private static final Formula OPEN =
            Formula.of("two-bars-open", "L = 2 · C · cos(α) + π · (R + r) + 2 · α · (R - r) + o", Origins.TWO_PULLEYS);
    private static final Formula CROSSED_ANGLE =
            Formula.of("two-bars-crossed-angle", "β = asin((R + r) / C)", Origins.TWO_PULLEYS);
    private static final Formula CROSSED =
            Formula.of("two-bars-crossed", "L = 2 · C · cos(β) + (R + r) · (π + 2 · β) + o", Origins.TWO_PULLEYS);
    static final List<Formula> FORMULAS = List.of(OPEN_ANGLE, OPEN, CROSSED_ANGLE, CROSSED);

    private static final NoticeKind ONE_IN_THE_OTHER = NoticeKind.stop("bar-inside-other-bar");
    private static final NoticeKind TOO_NEAR_TO_CROSS = NoticeKind.stop("bars-too-near-to-cross");
    private static final NoticeKind BARS_TOUCH = NoticeKind.check("bars-touch");
    static final List<NoticeKind> KINDS = List.of(ONE_IN_THE_OTHER, TOO_NEAR_TO_CROSS, BARS_TOUCH);

    static BarsRound of(Length first, Length second, Length centres, boolean crossed, Length thickness, double k) {
        double add = k * thickness.mm();
        return new BarsRound(first.mm() / 2 + add, second.mm() / 2 + add, centres.mm(), crossed);
    }

    /** The length with an overlap added, or why there is none. */
    Outcome<Length> outcome(Working working, Length overlap) {
        double larger = Math.max(firstRadiusMm, secondRadiusMm);
        double smaller = Math.min(firstRadiusMm, secondRadiusMm);
        Length centres = Length.ofMm(centresMm);
        if (crossed && centresMm < larger + smaller) {
            return Outcome.refuse(TOO_NEAR_TO_CROSS.with(centres, Length.ofMm(larger + smaller)));
        }
        if (centresMm < larger - smaller) {
            return Outcome.refuse(ONE_IN_THE_OTHER.with(centres, Length.ofMm(larger - smaller)));
        }
        double bare = crossed
                ? Wraps.crossedMm(firstRadiusMm, secondRadiusMm, centresMm)
                : Wraps.openMm(firstRadiusMm, secondRadiusMm, centresMm);
        Length length = Length.ofMm(bare).plus(overlap);
        Length r1 = Length.ofMm(larger);
        Length r2 = Length.ofMm(smaller);
        double side = crossed ? larger + smaller : larger - smaller;
        Angle slope = Angle.ofRadians(Math.asin(side / centresMm));
        working.step(crossed ? CROSSED_ANGLE : OPEN_ANGLE, slope, "R", r1, "r", r2, "C", centres);
        working.step(
                crossed ? CROSSED : OPEN,
                length,
                "C",
                centres,
                "R",
                r1,
                "r",
                r2,
                crossed ? "β" : "α",
                slope,
                "o",
                overlap);
        return centresMm < larger + smaller
                ? Outcome.of(length, List.of(BARS_TOUCH.with(centres, Length.ofMm(larger + smaller))))
                : Outcome.of(length);
    }
}
