package org.hidewright.core;

import org.hidewright.api.declaration.Texts;
import org.hidewright.api.measure.Unreadable;

/** The host's own texts, and those of the reader of typed text. */
public final class CoreTexts {
    public static final Texts TEXTS = Texts.beside(CoreTexts.class);
    public static final Texts READING = Texts.beside(Unreadable.class);

    private CoreTexts() {}
}
