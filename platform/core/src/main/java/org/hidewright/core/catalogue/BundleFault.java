package org.hidewright.core.catalogue;

import org.hidewright.api.calculator.Phrase;

/** Code of a bundle has failed. Nothing of the bundle is in here: what its exception said is a plain text already. */
public final class BundleFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Object words;
    private final boolean leftAlone;

    private BundleFault(Object words, boolean leftAlone) {
        super(String.valueOf(words), null, false, false);
        this.words = words;
        this.leftAlone = leftAlone;
    }

    /**
     * It failed, and may be called again.
     *
     * @param words what happened: a text, or a {@link Phrase} of the core
     */
    public static BundleFault once(Object words) {
        return new BundleFault(words, false);
    }

    /** It failed so that its bundle is not called again until the program is started anew. */
    public static BundleFault forGood(Phrase words) {
        return new BundleFault(words, true);
    }

    /** What happened: a text, or a {@link Phrase} of the core. */
    public Object words() {
        return words;
    }

    /** Whether its bundle is not called any more. */
    public boolean leftAlone() {
        return leftAlone;
    }
}
