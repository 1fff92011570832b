package org.hidewright.documents.page;

import java.util.List;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Table.Align;
import org.hidewright.core.paper.Paper;

/** What stands on every page: project and day above, title and number of the page below, and the body between. */
final class PageFrame {
    private static final double LEFT = 24; // room for the holes of a binder
    private static final double RIGHT = 18;
    private static final double TOP = 14;
    private static final double BOTTOM = 14;
    private static final double HEAD_GAP = 8;
    private static final double FOOT_GAP = 6;
    private static final double SIDE_SHARE = 0.35;

    private final Typeface typeface;
    private final Document document;
    private final Paper paper;
    private final double headHeight;
    private final double footHeight;

    PageFrame(Typeface typeface, Document document, Paper paper) {
        this.typeface = typeface;
        this.document = document;
        this.paper = paper;
        this.headHeight = head().height();
        this.footHeight = foot(document.pageText(888, 888)).height();
    }

    double left() {
        return LEFT;
    }

    double width() {
        return paper.widthMm() - LEFT - RIGHT;
    }

    double bodyTop() {
        return TOP + headHeight + HEAD_GAP;
    }

    double bodyHeight() {
        return paper.heightMm() - BOTTOM - footHeight - FOOT_GAP - bodyTop();
    }

    void draw(Canvas canvas, int page, int pages) {
        head().draw(canvas, LEFT, TOP);
        Piece foot = foot(document.pageText(page, pages));
        foot.draw(canvas, LEFT, paper.heightMm() - BOTTOM - foot.height());
    }

    private Piece head() {
        PieceBuilder head = row(document.project(), Style.FRAME_NAME, document.dateText(), Style.FRAME);
        head.add(new Marks.Rule(0, width(), head.bottom() + 1.2, Line.HAIR));
        return head.build(0);
    }

    private Piece foot(String pageText) {
        return row(document.title(), Style.FRAME, pageText, Style.FRAME_NAME).build(0);
    }

    private PieceBuilder row(String left, Style leftStyle, String right, Style rightStyle) {
        double side = width() * SIDE_SHARE;
        PieceBuilder row = new PieceBuilder(typeface);
        row.text(left, 0, 0, width() - side - 5, leftStyle);
        row.text(right, width() - side, 0, side, rightStyle, Align.END);
        return row;
    }

    /** The title block of the first page. */
    List<Piece> title() {
        PieceBuilder title = new PieceBuilder(typeface);
        double y = title.text(document.title(), 0, 0, width(), Style.TITLE);
        y += 1;
        for (String line : document.meta()) {
            y = title.text(line, 0, y, width(), Style.META);
        }
        return List.of(title.build(0));
    }
}
