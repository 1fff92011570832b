package org.hidewright.command;

import org.hidewright.core.addons.Index;
import org.hidewright.core.addons.Offer;

/** Prints what an index of add-ons offers: each bundle with its maker, what it brings, and how it stands to what is here. */
final class AddOnIndexPrinter {
    private final Session session;
    private final CommandTexts texts;

    AddOnIndexPrinter(Session session) {
        this.session = session;
        this.texts = session.texts();
    }

    /** @param from what the maker calls it */
    void print(Index index, String from) {
        if (index.offers().isEmpty()) {
            session.out().println(texts.text("addons.offers-none", from));
            return;
        }
        for (Offer offer : index.offers()) {
            session.out().println(texts.text("addons.offer", offer.id(), offer.version(), standing(offer)));
            if (!offer.name().equals(offer.id())) {
                session.out().println("    " + offer.name());
            }
            if (!offer.maker().isEmpty()) {
                session.out().println("    " + texts.text("addons.made-by", offer.maker()));
            }
            if (!offer.calculators().isEmpty()) {
                session.out()
                        .println("    " + texts.text("addons.calculators", String.join(", ", offer.calculators())));
            }
            if (!offer.tables().isEmpty()) {
                session.out().println("    " + texts.text("addons.tables", String.join(", ", offer.tables())));
            }
        }
        session.out().println();
        session.out().println(texts.text("addons.offers-more", from));
        session.out().println(texts.text("addons.offers-update", from));
    }

    private String standing(Offer offer) {
        return switch (offer.standing()) {
            case NEW -> texts.text("addons.offer-new");
            case HERE -> texts.text("addons.offer-here");
            case NEWER -> texts.text("addons.offer-newer", offer.installed());
            case OLDER -> texts.text("addons.offer-older", offer.installed());
            case OF_PROGRAM -> texts.text("addons.offer-of-program");
        };
    }
}
