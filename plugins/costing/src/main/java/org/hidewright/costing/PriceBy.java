package org.hidewright.costing;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.measure.Money;

/** How a price is found. Margin and markup are of what is left of the price after fees, without tax. */
public sealed interface PriceBy permits PriceBy.Margin, PriceBy.Markup, PriceBy.Target {
    Formula MARGIN = Formula.of("price-by-margin", "k = c / (1 - m)", Origins.MARGIN_MARKUP);
    Formula MARKUP = Formula.of("price-by-markup", "k = c · (1 + u)", Origins.MARGIN_MARKUP);

    /** The profit as a share of what is kept. */
    record Margin(
            @Asked(unit = "%", min = "0 %", max = "99 %", usual = "20-70 %", example = "45 %")
            double margin) implements PriceBy {}

    /** The profit as a share of the cost. */
    record Markup(
            @Asked(unit = "%", min = "0 %", max = "10000 %", usual = "25-250 %", example = "80 %")
            double markup) implements PriceBy {}

    /** A price that is wanted, as the customer is told it; what it leaves is worked out. */
    record Target(@Asked(min = "0", example = "85 EUR") Money price) implements PriceBy {}
}
