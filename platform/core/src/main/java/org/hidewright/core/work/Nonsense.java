package org.hidewright.core.work;

import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.catalogue.BundleFault;

/** What a bundle gave cannot be shown: a fault of it, in words of the core. */
final class Nonsense {
    private Nonsense() {}

    static BundleFault of(String key, Object... args) {
        return BundleFault.once(Phrase.of("nonsense-" + key, args));
    }
}
