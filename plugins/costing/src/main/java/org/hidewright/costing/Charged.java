package org.hidewright.costing;

import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Money;

/**
 * One price and what becomes of it. The price the customer is told is rounded, once; tax and fees are rounded to what is
 * really paid, and the rest is what is left over, so that tax, fees and what is kept always add up to what the customer
 * pays.
 *
 * @param told as the customer is told it
 * @param paid what the customer pays
 * @param net without tax
 * @param tax what goes to the state
 * @param fees what goes to whoever sells or takes the money
 * @param kept what is left of the price
 */
record Charged(Money told, Money paid, Money net, Money tax, Money fees, Money kept) {
    static final Formula BEFORE_TAX = Formula.of("price-before-tax", "p = (k + F) / (1 - f · (1 + t))", Origins.TAX);
    static final Formula INSIDE = Formula.of("tax-inside", "x = g · t / (1 + t)", Origins.TAX);
    static final Formula ON_TOP = Formula.of("tax-on-top", "x = p · t", Origins.TAX);
    static final Formula FEES = Formula.of("selling-fees", "y = g · f + F", Origins.ARITHMETIC);

    /**
     * What a price is made of.
     *
     * @param fees share of what the customer pays
     * @param feeEach on top, for each sale
     * @param tax share of the price without tax
     */
    record Terms(double fees, Money feeEach, double tax, TaxShown shown) {
        /** Whether fees and tax leave anything of a price at all. */
        boolean leaveSomething() {
            return fees * (1 + tax) < 1;
        }
    }

    /** The price that leaves at least this much, before it is rounded: as the customer is told it. */
    static Money toKeep(Money wanted, Terms terms) {
        Money net = wanted.plus(terms.feeEach()).times(1 / (1 - terms.fees() * (1 + terms.tax())));
        return terms.shown() == TaxShown.INSIDE ? net.times(1 + terms.tax()) : net;
    }

    static Charged of(Money exact, Terms terms) {
        Money told = exact.rounded();
        boolean inside = terms.shown() == TaxShown.INSIDE;
        Money tax = told.times(inside ? terms.tax() / (1 + terms.tax()) : terms.tax())
                .rounded();
        Money net = inside ? told.minus(tax) : told;
        Money paid = net.plus(tax);
        Money fees = paid.times(terms.fees()).plus(terms.feeEach()).rounded();
        return new Charged(told, paid, net, tax, fees, net.minus(fees));
    }

    void takeDown(Terms terms, Working working) {
        if (terms.shown() == TaxShown.INSIDE) {
            working.step(INSIDE, tax, "g", paid, "t", terms.tax());
        } else {
            working.step(ON_TOP, tax, "p", net, "t", terms.tax());
        }
        working.step(FEES, fees, "g", paid, "f", terms.fees(), "F", terms.feeEach());
    }
}
