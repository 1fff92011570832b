package org.hidewright.api.declaration;

/** A calculator whose records cannot be a declaration; the message names class, component and what would be right. */
public final class InvalidDeclaration extends RuntimeException {
    private static final long serialVersionUID = 1L;

    InvalidDeclaration(Class<?> where, String component, String problem) {
        super(where.getName() + (component.isEmpty() ? "" : ", component " + component) + ": " + problem);
    }

    InvalidDeclaration(Class<?> where, String problem) {
        this(where, "", problem);
    }

    /** @param where for who wrote it: a class and component, or a key in a text */
    InvalidDeclaration(String where, String problem) {
        super(where + ": " + problem);
    }

    static String where(Class<?> record, String component) {
        return record.getName() + ", component " + component;
    }
}
