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
                "paper.cost-sheet-private",
                "paper.cost-sheet-bars",
                "paper.cost-sheet-by-batch",
                "paper.cost-sheet-batch",
                "cost-sheet.share",
                "shopping-list.title",
                "paper.shopping-list-for",
                "paper.shopping-list-line",
                "paper.shopping-list-plain",
                "paper.shopping-list-detail",
                "paper.shopping-list-amount",
                "paper.shopping-list-unpriced",
                "paper.shopping-list-unpriced-help",
                "paper.shopping-list-help",
                "paper.shopping-list-shared",
                "quote.title",
                "paper.quote-for",
                "quote.what",
                "quote.each",
                "quote.together",
                "quote.tax",
                "paper.quote-tax-in-each",
                "paper.quote-to-be-agreed",
                "paper.quote-leather",
                "paper.quote-agreed"));
    }
}
