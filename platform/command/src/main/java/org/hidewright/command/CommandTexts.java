package org.hidewright.command;

import org.hidewright.api.declaration.Texts;
import org.hidewright.core.wording.Wording;

/** The texts of the commands in the language asked for. */
final class CommandTexts {
    static final Texts TEXTS = Texts.beside(CommandTexts.class);

    private final Wording wording;

    CommandTexts(Wording wording) {
        this.wording = wording;
    }

    String text(String key, Object... args) {
        return wording.text(TEXTS, key, args);
    }

    Wording wording() {
        return wording;
    }
}
