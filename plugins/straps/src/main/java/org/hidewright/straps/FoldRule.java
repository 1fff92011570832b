package org.hidewright.straps;

import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.NeutralLine;

/**
 * Where the neutral line of one fold is taken to lie, and why.
 *
 * @param k from the inside face, as a share of the thickness
 * @param formula the rule; empty where it was measured
 * @param webMm what is left under a groove; 0 without one
 */
record FoldRule(double k, Optional<Formula> formula, double webMm) {
    /** The rule for a fold that nobody measured, unless somebody did. */
    static FoldRule of(Optional<Double> measured, Face outside, Preparation preparation, double thicknessMm) {
        double web = preparation instanceof Preparation.Grooved grooved
                ? grooved.web().mm()
                : 0;
        if (measured.isPresent()) {
            return new FoldRule(measured.get(), Optional.empty(), web);
        }
        if (web > 0) {
            return new FoldRule(NeutralLine.grooved(web, thicknessMm), Optional.of(Formulas.NEUTRAL_GROOVED), web);
        }
        if (preparation instanceof Preparation.Cased) {
            return new FoldRule(NeutralLine.CASED, Optional.of(Formulas.NEUTRAL_CASED), 0);
        }
        Formula dry = outside == Face.GRAIN ? Formulas.NEUTRAL_GRAIN_OUTSIDE : Formulas.NEUTRAL_FLESH_OUTSIDE;
        return new FoldRule(NeutralLine.dry(outside), Optional.of(dry), 0);
    }

    boolean measured() {
        return formula.isEmpty();
    }

    void explain(Working working, double thicknessMm) {
        formula.ifPresent(rule -> {
            if (webMm > 0) {
                working.step(rule, k, "w", Length.ofMm(webMm), "t", Length.ofMm(thicknessMm));
            } else {
                working.step(rule, k);
            }
        });
    }

    /**
     * Whether firm grain is likely to crack: grain outside, and the leather that bends turns tighter than a quarter of
     * its own thickness (common practice). Under a groove only the web bends, further from the centre.
     */
    boolean tight(Face outside, double insideRadiusMm, double thicknessMm) {
        double bends = webMm > 0 ? webMm : thicknessMm;
        return outside == Face.GRAIN && insideRadiusMm + thicknessMm - bends < bends / 4 - 1e-9;
    }
}
