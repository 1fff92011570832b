package org.hidewright.core.store;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** What can be said of a file that is opened or saved. */
public final class StoreNotices {
    public static final NoticeKind NO_FILE = NoticeKind.stop("no-file");
    public static final NoticeKind NO_FILE_NEAREST = NoticeKind.stop("no-file-nearest");
    public static final NoticeKind FILE_THERE = NoticeKind.stop("file-there");
    public static final NoticeKind IS_FOLDER = NoticeKind.stop("is-folder");
    public static final NoticeKind MAY_NOT_READ = NoticeKind.stop("may-not-read");
    public static final NoticeKind NOT_UTF_8 = NoticeKind.stop("not-utf-8");
    public static final NoticeKind NOT_READ = NoticeKind.stop("not-read");
    public static final NoticeKind EARLIER_VERSION = NoticeKind.note("earlier-version");
    public static final NoticeKind RECOVERED = NoticeKind.check("recovered");
    public static final NoticeKind RECOVERED_BROKEN = NoticeKind.check("recovered-broken");
    public static final NoticeKind SAVE_CUT_SHORT = NoticeKind.check("save-cut-short");
    public static final NoticeKind SAVE_HALF_WRITTEN = NoticeKind.check("save-half-written");
    public static final NoticeKind CHANGED_BY_ANOTHER = NoticeKind.stop("changed-by-another");
    public static final NoticeKind FILE_GONE = NoticeKind.stop("file-gone");
    public static final NoticeKind NO_PLAIN_FILE = NoticeKind.stop("no-plain-file");
    public static final NoticeKind BEING_SAVED = NoticeKind.stop("being-saved");
    public static final NoticeKind FOLDER_GONE = NoticeKind.stop("folder-gone");
    public static final NoticeKind MAY_NOT_WRITE = NoticeKind.stop("may-not-write");
    public static final NoticeKind DISK_FULL = NoticeKind.stop("disk-full");
    public static final NoticeKind NOT_SAVED = NoticeKind.stop("not-saved");

    private StoreNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                NO_FILE,
                NO_FILE_NEAREST,
                FILE_THERE,
                IS_FOLDER,
                MAY_NOT_READ,
                NOT_UTF_8,
                NOT_READ,
                EARLIER_VERSION,
                RECOVERED,
                RECOVERED_BROKEN,
                SAVE_CUT_SHORT,
                SAVE_HALF_WRITTEN,
                CHANGED_BY_ANOTHER,
                FILE_GONE,
                NO_PLAIN_FILE,
                BEING_SAVED,
                FOLDER_GONE,
                MAY_NOT_WRITE,
                DISK_FULL,
                NOT_SAVED);
    }
}
