package org.hidewright.window.words;

import java.util.Locale;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Texts;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;

/** The texts of the window in one language. */
public final class WindowTexts {
    private static final Texts TEXTS = Texts.beside(WindowTexts.class);

    private final Wording wording;

    public WindowTexts(Locale language) {
        this.wording = new Wording(language, UnitSystem.METRIC);
    }

    public String text(String key, Object... args) {
        return wording.text(TEXTS, key, args);
    }

    /** A text that counts: another one where there is one thing, and perhaps where there is none. */
    public String many(String key, long count) {
        String none = key + ".none";
        if (count == 0 && wording.has(TEXTS, none)) {
            return text(none);
        }
        return count == 1 ? text(key + ".one") : text(key, count);
    }

    /** What is told of something, with what to do. */
    public String told(Remark remark) {
        return wording.what(remark) + " " + wording.next(remark);
    }

    /** A phrase of the program. */
    public String phrase(Phrase phrase) {
        return wording.phrase(CoreTexts.TEXTS, phrase);
    }

    public Locale language() {
        return wording.language();
    }
}
