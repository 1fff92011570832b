package org.hidewright.documents;

import java.util.Locale;
import org.hidewright.api.drawing.Role;

/** What groups and layers of drawing files are called. */
public final class Roles {
    private Roles() {}

    /** In small letters with hyphens: {@code inner-cut}. */
    public static String name(Role role) {
        return role.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
