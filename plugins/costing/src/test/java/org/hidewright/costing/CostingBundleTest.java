package org.hidewright.costing;

import java.util.Set;
import java.util.TreeSet;
import org.hidewright.testkit.BundleContract;

class CostingBundleTest extends BundleContract {
    CostingBundleTest() {
        super(PieceCost.class);
    }

    /** What the papers say beside what calculators say. */
    @Override
    protected Set<String> otherTexts() {
        return new TreeSet<>(Set.of(
                "cost-sheet.title",
                "cost-sheet.private",
                "cost-sheet.share",
                "shopping-list.title",
                "shopping-list.for",
                "shopping-list.line",
                "shopping-list.detail",
                "shopping-list.help",
                "shopping-list.shared",
                "quote.title",
                "quote.for",
                "quote.what",
                "quote.each",
                "quote.together",
                "quote.tax",
                "quote.tax-in-each",
                "quote.to-be-agreed",
                "quote.leather",
                "quote.agreed"));
    }
}
