package org.hidewright.core.work;

import org.hidewright.api.calculator.Phrase;

/** What a calculator gave cannot be shown: a fault of its bundle, in words of the core. */
final class Nonsense extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Phrase words;

    Nonsense(String key, Object... args) {
        super(key, null, false, false);
        this.words = Phrase.of("nonsense-" + key, args);
    }

    Phrase words() {
        return words;
    }
}
