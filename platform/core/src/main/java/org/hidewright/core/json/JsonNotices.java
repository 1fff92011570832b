package org.hidewright.core.json;

import java.util.List;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.core.Nearest;

/** What can be wrong with any file of ours, whatever it holds. */
public final class JsonNotices {
    public static final NoticeKind NOT_JSON = NoticeKind.stop("not-json");
    public static final NoticeKind UNKNOWN_KEY = NoticeKind.check("unknown-key");
    public static final NoticeKind UNKNOWN_KEY_NEAREST = NoticeKind.check("unknown-key-nearest");
    public static final NoticeKind WRONG_SHAPE = NoticeKind.stop("wrong-shape");
    public static final NoticeKind ROW_ID_TWICE = NoticeKind.stop("row-id-twice");

    private JsonNotices() {}

    /** A key that means nothing where it stands, with the nearest one that does. */
    public static Notice unknownKey(String key, List<String> known) {
        return Nearest.to(key, known)
                .map(near -> JsonNotices.UNKNOWN_KEY_NEAREST.with(key, near))
                .orElseGet(() -> JsonNotices.UNKNOWN_KEY.with(key, String.join(", ", known)));
    }

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(NOT_JSON, UNKNOWN_KEY, UNKNOWN_KEY_NEAREST, WRONG_SHAPE, ROW_ID_TWICE);
    }
}
