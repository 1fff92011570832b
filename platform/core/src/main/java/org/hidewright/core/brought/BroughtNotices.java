package org.hidewright.core.brought;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** What can be wrong with the tables that a bundle carries as a text. */
public final class BroughtNotices {
    public static final NoticeKind BROUGHT_TOO_MANY = NoticeKind.stop("brought-too-many");
    public static final NoticeKind BROUGHT_BAD_NAME = NoticeKind.stop("brought-bad-name");
    public static final NoticeKind BROUGHT_NO_UNIT = NoticeKind.stop("brought-no-unit");
    public static final NoticeKind BROUGHT_NO_TITLE = NoticeKind.stop("brought-no-title");
    public static final NoticeKind BROUGHT_LEFT_OUT = NoticeKind.check("brought-left-out");
    public static final NoticeKind BROUGHT_UNUSABLE = NoticeKind.check("brought-unusable");

    private BroughtNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                BROUGHT_TOO_MANY,
                BROUGHT_BAD_NAME,
                BROUGHT_NO_UNIT,
                BROUGHT_NO_TITLE,
                BROUGHT_LEFT_OUT,
                BROUGHT_UNUSABLE);
    }
}
