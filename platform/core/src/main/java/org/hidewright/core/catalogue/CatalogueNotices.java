package org.hidewright.core.catalogue;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** What can be wrong with what a bundle brings. */
public final class CatalogueNotices {
    public static final NoticeKind INVALID_DECLARATION = NoticeKind.check("invalid-declaration");
    public static final NoticeKind INVALID_TABLE = NoticeKind.check("invalid-table");
    public static final NoticeKind INVALID_TEMPLATE = NoticeKind.check("invalid-template");
    public static final NoticeKind TEMPLATE_NOT_THERE = NoticeKind.check("template-not-there");
    public static final NoticeKind TABLES_NOT_THERE = NoticeKind.check("tables-not-there");
    public static final NoticeKind FOLLOWED_GONE = NoticeKind.check("followed-gone");
    public static final NoticeKind OTHER_ID = NoticeKind.check("other-id");
    public static final NoticeKind ID_TAKEN = NoticeKind.check("id-taken");
    public static final NoticeKind DID_NOT_START = NoticeKind.check("did-not-start");
    public static final NoticeKind NO_SERVICE = NoticeKind.check("no-service");
    public static final NoticeKind SECTION_FAILED = NoticeKind.check("section-failed");

    private CatalogueNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                INVALID_DECLARATION,
                INVALID_TABLE,
                INVALID_TEMPLATE,
                TEMPLATE_NOT_THERE,
                TABLES_NOT_THERE,
                FOLLOWED_GONE,
                OTHER_ID,
                ID_TAKEN,
                DID_NOT_START,
                NO_SERVICE,
                SECTION_FAILED);
    }
}
