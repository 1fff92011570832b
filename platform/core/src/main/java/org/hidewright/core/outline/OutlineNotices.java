package org.hidewright.core.outline;

import java.util.List;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.Place;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;

/** What can be said of a drawing that outlines are read from. */
public final class OutlineNotices {
    public static final NoticeKind NO_SVG = NoticeKind.stop("no-svg");
    public static final NoticeKind NO_DXF = NoticeKind.stop("no-dxf");
    public static final NoticeKind DRAWN_UNREADABLE = NoticeKind.stop("drawn-unreadable");
    public static final NoticeKind DRAWN_TOO_FAR = NoticeKind.stop("drawn-too-far");
    public static final NoticeKind DRAWING_UNIT = NoticeKind.stop("drawing-unit");
    public static final NoticeKind PIXELS_TAKEN = NoticeKind.check("pixels-taken");
    public static final NoticeKind MILLIMETRES_TAKEN = NoticeKind.check("millimetres-taken");
    public static final NoticeKind ENTITIES_LEFT_OUT = NoticeKind.check("entities-left-out");
    public static final NoticeKind NO_OUTLINE = NoticeKind.stop("no-outline");
    public static final NoticeKind OPEN_LINES = NoticeKind.note("open-lines");
    public static final NoticeKind SPECKS = NoticeKind.note("specks");
    public static final NoticeKind HIDE_CROSSES_ITSELF = NoticeKind.stop("hide-crosses-itself");
    public static final NoticeKind HIDE_TWICE = NoticeKind.note("hide-twice");
    public static final NoticeKind FLAW_CROSSES_ITSELF = NoticeKind.check("flaw-crosses-itself");
    public static final NoticeKind FLAW_OUTSIDE = NoticeKind.check("flaw-outside");
    public static final NoticeKind FLAW_CROSSES_EDGE = NoticeKind.check("flaw-crosses-edge");
    public static final NoticeKind TAKEN_AS_MARKED = NoticeKind.note("taken-as-marked");

    private OutlineNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                NO_SVG,
                NO_DXF,
                DRAWN_UNREADABLE,
                DRAWN_TOO_FAR,
                DRAWING_UNIT,
                PIXELS_TAKEN,
                MILLIMETRES_TAKEN,
                ENTITIES_LEFT_OUT,
                NO_OUTLINE,
                OPEN_LINES,
                SPECKS,
                HIDE_CROSSES_ITSELF,
                HIDE_TWICE,
                FLAW_CROSSES_ITSELF,
                FLAW_OUTSIDE,
                FLAW_CROSSES_EDGE,
                TAKEN_AS_MARKED);
    }

    /** What is said of a place in the file. */
    public static Remark told(Notice notice, Place at) {
        return Remark.of(notice, CoreTexts.TEXTS).atPlace(at);
    }

    /** What ends the reading at a place in the file. */
    public static FileTrouble trouble(Notice notice, Place at) {
        return new FileTrouble(List.of(told(notice, at)), null);
    }
}
