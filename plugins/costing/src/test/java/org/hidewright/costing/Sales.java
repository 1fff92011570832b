package org.hidewright.costing;

import java.util.Optional;
import org.hidewright.api.measure.Money;

/** Sales for tests, plain unless changed. */
record Sales(
        Money cost,
        PriceBy by,
        double fees,
        Optional<Money> feeEach,
        double tax,
        TaxShown shown,
        double discount,
        Optional<Money> leastCharge,
        int pieces,
        double deposit,
        Optional<Money> materials) {

    static Sales of(Money cost, PriceBy by) {
        return new Sales(
                cost, by, 0, Optional.empty(), 0, TaxShown.INSIDE, 0.5, Optional.empty(), 1, 0.5, Optional.empty());
    }

    Sales fees(double share, Money each) {
        return new Sales(
                cost, by, share, Optional.of(each), tax, shown, discount, leastCharge, pieces, deposit, materials);
    }

    Sales tax(double rate, TaxShown told) {
        return new Sales(cost, by, fees, feeEach, rate, told, discount, leastCharge, pieces, deposit, materials);
    }

    Sales discount(double share) {
        return new Sales(cost, by, fees, feeEach, tax, shown, share, leastCharge, pieces, deposit, materials);
    }

    Sales atLeast(Money least) {
        return new Sales(cost, by, fees, feeEach, tax, shown, discount, Optional.of(least), pieces, deposit, materials);
    }

    Sales order(int count, double paidBefore) {
        return new Sales(cost, by, fees, feeEach, tax, shown, discount, leastCharge, count, paidBefore, materials);
    }

    Sales materials(Money worth) {
        return new Sales(
                cost, by, fees, feeEach, tax, shown, discount, leastCharge, pieces, deposit, Optional.of(worth));
    }

    PiecePrice.Sale sale() {
        return new PiecePrice.Sale(
                cost,
                by,
                fees,
                feeEach,
                tax,
                shown,
                discount,
                leastCharge,
                pieces,
                deposit,
                materials,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    PiecePrice.Prices prices() {
        return Worked.answers(new PiecePrice(), sale());
    }
}
