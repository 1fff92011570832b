package org.hidewright.api.measure;

import java.util.List;
import java.util.Optional;

/** The one reader of typed text. The grammar follows. */
public final class TypedText {
    private TypedText() {}

    /** Reads one quantity. */
    public static Reading<Typed> quantity(String text, Dimension dimension, Optional<Unit> assumed) {
        throw new UnsupportedOperationException("not yet written");
    }

    /** Reads a size. */
    public static Reading<TypedSize> size(String text, Optional<Unit> assumed) {
        throw new UnsupportedOperationException("not yet written");
    }

    /** Reads a list. */
    public static Reading<List<Typed>> list(String text, Dimension dimension, Optional<Unit> assumed) {
        throw new UnsupportedOperationException("not yet written");
    }
}
