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
    private static final int MOST_LINES = 10;

    private final Typeface typeface;
    private final Wrapping wrapping;
    private final Document document;
    private final Paper paper;
    private final double headHeight;
    private final double footHeight;

    PageFrame(Typeface typeface, Document document, Paper paper) {
        this.typeface = typeface;
        this.wrapping = new Wrapping(typeface);
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
        row.text(shortened(left, leftStyle), 0, 0, mainWidth(), leftStyle);
        row.text(right, width() - side, 0, side, rightStyle, Align.END);
        return row;
    }

    private double mainWidth() {
        return width() * (1 - SIDE_SHARE) - 5;
    }

    /** A name that would fill the page on every page stands there only with its beginning. */
    private String shortened(String name, Style style) {
        List<String> lines = wrapping.lines(name, style, mainWidth());
        return lines.size() <= MOST_LINES ? name : String.join("\n", lines.subList(0, MOST_LINES)) + "\u2026";
    }

    /** The title block of the first page. */
    List<Piece> title() {
        PieceBuilder title = new PieceBuilder(typeface);
        if (!shortened(document.project(), Style.FRAME_NAME).equals(document.project())) {
            title.text(document.project(), 0, 0, width(), Style.META);
        }
        double y = title.text(document.title(), 0, title.bottom(), width(), Style.TITLE);
        y += 1;
        for (String line : document.meta()) {
            y = title.text(line, 0, y, width(), Style.META);
        }
        return List.of(title.build(0));
    }
}
