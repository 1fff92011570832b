package org.hidewright.window.addons;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.hidewright.core.addons.Offer;
import org.hidewright.window.words.WindowTexts;

/**
 * An offer as it is shown.
 *
 * @param name what its author calls it, with its version
 * @param maker who made it
 * @param brings what it brings, by what it is called
 * @param state how it stands to what is here
 */
record OfferLine(String name, String maker, String brings, String state) {
    static OfferLine of(Offer offer, UnaryOperator<String> titles, WindowTexts texts) {
        List<String> brings =
                new ArrayList<>(offer.calculators().stream().map(titles).toList());
        offer.tables().forEach(table -> brings.add(texts.text("bundles.table", table)));
        return new OfferLine(
                offer.name() + " " + offer.version(),
                offer.maker(),
                brings.isEmpty() ? texts.text("bundles.nothing") : String.join(", ", brings),
                texts.text(
                        "offers.state-"
                                + offer.standing()
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .replace('_', '-') + ".help",
                        offer.installed()));
    }
}
