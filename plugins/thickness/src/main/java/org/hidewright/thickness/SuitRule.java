package org.hidewright.thickness;

import java.util.EnumSet;
import java.util.Set;
import org.hidewright.api.calculator.Source;

/**
 * One rule of what suits what: where it applies, what it says, and why. Immutable; the changing methods give a copy.
 *
 * <p>A rule applies where every condition it names is met; a condition it does not name is always met.
 */
record SuitRule(
        LeatherUse use,
        Verdict verdict,
        Set<Tannage> tannages,
        Set<Finish> finishes,
        Set<Temper> tempers,
        double fromMm,
        double toMm,
        String reason,
        String instead,
        Source source) {

    static SuitRule of(LeatherUse use, Verdict verdict, String reason) {
        return new SuitRule(
                use,
                verdict,
                EnumSet.allOf(Tannage.class),
                EnumSet.allOf(Finish.class),
                EnumSet.allOf(Temper.class),
                0,
                Double.POSITIVE_INFINITY,
                reason,
                "",
                Origins.BENCH_HABIT);
    }

    SuitRule tanned(Tannage first, Tannage... more) {
        return new SuitRule(
                use, verdict, EnumSet.of(first, more), finishes, tempers, fromMm, toMm, reason, instead, source);
    }

    SuitRule finished(Finish first, Finish... more) {
        return new SuitRule(
                use, verdict, tannages, EnumSet.of(first, more), tempers, fromMm, toMm, reason, instead, source);
    }

    SuitRule ofTemper(Temper temper) {
        return new SuitRule(
                use, verdict, tannages, finishes, EnumSet.of(temper), fromMm, toMm, reason, instead, source);
    }

    /** Below this thickness; the thickness itself is not met. */
    SuitRule thinnerThan(double mm) {
        return new SuitRule(use, verdict, tannages, finishes, tempers, fromMm, mm, reason, instead, source);
    }

    /** From this thickness on; the thickness itself is met. */
    SuitRule from(double mm) {
        return new SuitRule(use, verdict, tannages, finishes, tempers, mm, toMm, reason, instead, source);
    }

    /** Key of what to do instead. */
    SuitRule instead(String key) {
        return new SuitRule(use, verdict, tannages, finishes, tempers, fromMm, toMm, reason, key, source);
    }

    SuitRule standingOn(Source published) {
        return new SuitRule(use, verdict, tannages, finishes, tempers, fromMm, toMm, reason, instead, published);
    }

    boolean meets(Tannage tannage, Finish finish, Temper temper, double mm) {
        return tannages.contains(tannage)
                && finishes.contains(finish)
                && tempers.contains(temper)
                && mm >= fromMm
                && mm < toMm;
    }
}
