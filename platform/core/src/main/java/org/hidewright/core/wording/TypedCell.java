package org.hidewright.core.wording;

import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Texts;

/** A value as it is typed into a file: with a point, in metric units, with plain spaces; of a choice its key. */
public final class TypedCell {
    private static final Wording TYPED = new Wording(Locale.ENGLISH, UnitSystem.METRIC);

    private TypedCell() {}

    /** @param texts of the bundle that declares the field; empty where it is not there */
    public static String of(Optional<Texts> texts, Field field, Object value) {
        if (field.kind() == Kind.CHOICE) {
            return String.valueOf(value);
        }
        return new FieldWording(texts, TYPED).text(field, value).replaceAll("[\u00A0\u202F]", " ");
    }
}
