package org.hidewright.core.wording;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;
import org.hidewright.api.calculator.NoticeKind;

/**
 * Lets a caution that several slips raise in the same words through once, and everything else always. It remembers what it
 * has seen: one for each list, not for several threads.
 */
public final class CautionsOnce implements Predicate<Remark> {
    private final Wording wording;
    private final Set<String> said = new HashSet<>();

    public CautionsOnce(Wording wording) {
        this.wording = wording;
    }

    @Override
    public boolean test(Remark remark) {
        return remark.severity() != NoticeKind.Severity.CAUTION
                || said.add(wording.what(remark) + wording.why(remark) + wording.next(remark));
    }
}
