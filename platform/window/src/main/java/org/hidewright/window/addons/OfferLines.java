package org.hidewright.window.addons;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hidewright.core.addons.Offer;
import org.hidewright.window.words.WindowTexts;

/** Offers of an index as they are shown: each with how it stands to what is here. */
final class OfferLines {
    private OfferLines() {}

    static BundleTable.Line of(Offer offer, Titles titles, WindowTexts texts) {
        List<String> brings = new ArrayList<>(
                offer.calculators().stream().map(titles.calculators()).toList());
        offer.tables()
                .forEach(table ->
                        brings.add(texts.text("bundles.table", titles.tables().apply(table))));
        return new BundleTable.Line(
                offer.id(),
                offer.name() + " " + offer.version(),
                offer.maker(),
                brings.isEmpty() ? texts.text("bundles.nothing") : String.join(", ", brings),
                texts.text(
                        "offers.state-"
                                + offer.standing()
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .replace('_', '-') + ".help",
                        offer.installed()),
                false);
    }
}
