package org.hidewright.core.wording;

/** Ids where people read them: the words of whoever wrote them, without the hyphens and dots that only files need. */
public final class IdWords {
    private IdWords() {}

    /** “strap, left near” of {@code strap.left-near}. */
    public static String of(String id) {
        return id.replace('-', ' ').replace(".", ", ");
    }
}
