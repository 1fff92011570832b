package org.hidewright.core.workshop;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.core.wording.Remark;

/** What the host has to say about a workshop file, and about what a project takes from it. */
public final class WorkshopNotices {
    public static final NoticeKind NOT_A_WORKSHOP = NoticeKind.stop("not-a-workshop");
    public static final NoticeKind NEWER_WORKSHOP = NoticeKind.check("newer-workshop");
    public static final NoticeKind NO_SUCH_CURRENCY = NoticeKind.stop("no-such-currency");
    public static final NoticeKind TABLE_DORMANT = NoticeKind.note("table-dormant");
    public static final NoticeKind TABLE_DORMANT_NEAREST = NoticeKind.check("table-dormant-nearest");
    public static final NoticeKind WORKSHOP_ROW_WITHOUT_ID = NoticeKind.stop("workshop-row-without-id");
    public static final NoticeKind COLUMN_TAKEN = NoticeKind.check("column-taken");
    public static final NoticeKind CELL_MISSING = NoticeKind.check("cell-missing");
    public static final NoticeKind UNUSUAL_WHERE_TAKEN = NoticeKind.note("unusual-where-taken");

    public static final NoticeKind NO_WORKSHOP = NoticeKind.stop("no-workshop");
    public static final NoticeKind WORKSHOP_NO_TABLE = NoticeKind.stop("workshop-no-table");
    public static final NoticeKind WORKSHOP_NO_TABLE_NEAREST = NoticeKind.stop("workshop-no-table-nearest");
    public static final NoticeKind WORKSHOP_NO_ROW = NoticeKind.stop("workshop-no-row");
    public static final NoticeKind WORKSHOP_NO_ROW_NEAREST = NoticeKind.stop("workshop-no-row-nearest");
    public static final NoticeKind WORKSHOP_NO_COLUMN = NoticeKind.stop("workshop-no-column");
    public static final NoticeKind WORKSHOP_NO_COLUMN_NEAREST = NoticeKind.stop("workshop-no-column-nearest");
    public static final NoticeKind WORKSHOP_EMPTY_CELL = NoticeKind.stop("workshop-empty-cell");
    public static final NoticeKind WORKSHOP_BAD_CELL = NoticeKind.stop("workshop-bad-cell");
    public static final NoticeKind WORKSHOP_LINK_NEEDS = NoticeKind.stop("workshop-link-needs");
    public static final NoticeKind WORKSHOP_NOT_VARIANTS = NoticeKind.stop("workshop-not-variants");

    public static final NoticeKind WORKSHOP_NOT_KEPT = NoticeKind.note("workshop-not-kept");
    public static final NoticeKind WORKSHOP_DIFFERS = NoticeKind.check("workshop-differs");
    /** Of what nothing is cut by: prices, days and texts. */
    public static final NoticeKind WORKSHOP_DIFFERS_ASIDE = NoticeKind.note("workshop-differs-aside");

    public static final NoticeKind WORKSHOP_ROW_GONE = NoticeKind.check("workshop-row-gone");
    public static final NoticeKind WORKSHOP_ROW_NEW = NoticeKind.note("workshop-row-new");

    public static final NoticeKind WORKSHOP_FROM_BUNDLE = NoticeKind.note("workshop-from-bundle");
    public static final NoticeKind WORKSHOP_BUNDLE_GONE = NoticeKind.note("workshop-bundle-gone");
    public static final NoticeKind BROUGHT_ROW_TAKEN = NoticeKind.check("brought-row-taken");

    private WorkshopNotices() {}

    /** Whether a remark is about the workshop or what is taken from it. */
    public static boolean raised(Remark remark) {
        return all().stream().anyMatch(kind -> remark.key().equals("notice." + kind.key()));
    }

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                NOT_A_WORKSHOP,
                NEWER_WORKSHOP,
                NO_SUCH_CURRENCY,
                TABLE_DORMANT,
                TABLE_DORMANT_NEAREST,
                WORKSHOP_ROW_WITHOUT_ID,
                COLUMN_TAKEN,
                CELL_MISSING,
                UNUSUAL_WHERE_TAKEN,
                NO_WORKSHOP,
                WORKSHOP_NO_TABLE,
                WORKSHOP_NO_TABLE_NEAREST,
                WORKSHOP_NO_ROW,
                WORKSHOP_NO_ROW_NEAREST,
                WORKSHOP_NO_COLUMN,
                WORKSHOP_NO_COLUMN_NEAREST,
                WORKSHOP_EMPTY_CELL,
                WORKSHOP_BAD_CELL,
                WORKSHOP_LINK_NEEDS,
                WORKSHOP_NOT_VARIANTS,
                WORKSHOP_NOT_KEPT,
                WORKSHOP_DIFFERS,
                WORKSHOP_DIFFERS_ASIDE,
                WORKSHOP_ROW_GONE,
                WORKSHOP_ROW_NEW,
                WORKSHOP_FROM_BUNDLE,
                WORKSHOP_BUNDLE_GONE,
                BROUGHT_ROW_TAKEN);
    }
}
