package org.hidewright.costing;

import java.util.Collection;
import java.util.Objects;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Money;

/** Amounts are added in one currency; no rate between two is known here. */
final class Currencies {
    static final NoticeKind TWO = NoticeKind.stop("costing-two-currencies");

    private Currencies() {}

    /** What to tell where the amounts are not all of one currency. */
    static Optional<Notice> clash(Collection<Money> amounts) {
        Money first = null;
        for (Money amount : amounts) {
            if (first == null) {
                first = amount;
            } else if (!Objects.equals(amount.currency(), first.currency())) {
                return Optional.of(TWO.with(first, amount));
            }
        }
        return Optional.empty();
    }
}
