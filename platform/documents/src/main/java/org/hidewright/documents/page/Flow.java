package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;

/** Fills pages of one height with pieces in order. */
final class Flow {
    private final double pageHeight;
    private final List<List<Placed>> pages = new ArrayList<>();
    private List<Placed> page = new ArrayList<>();
    private double level;

    private Flow(double pageHeight) {
        this.pageHeight = pageHeight;
    }

    /** A piece and how far below the top of the body it stands. */
    record Placed(Piece piece, double top) {}

    /** At least one page. */
    static List<List<Placed>> fill(List<Piece> pieces, double pageHeight) {
        Flow flow = new Flow(pageHeight);
        for (int i = 0; i < pieces.size(); i++) {
            flow.take(pieces, i);
        }
        flow.turn();
        return flow.pages;
    }

    private void turn() {
        pages.add(List.copyOf(page));
        page = new ArrayList<>();
        level = 0;
    }

    private void take(List<Piece> pieces, int i) {
        Piece piece = pieces.get(i);
        boolean heldByFormer = i > 0 && pieces.get(i - 1).keepWithNext() && !page.isEmpty();
        boolean roomForGroup = heldByFormer || level + groupHeight(pieces, i, page.isEmpty()) <= pageHeight + 1e-6;
        if (!page.isEmpty() && (piece.startsPage() || !roomForGroup)) {
            turn();
        }
        double headHeight = piece.head() == null ? 0 : piece.head().height();
        if (piece.height() + headHeight > pageHeight) {
            piece.splitTo(pageHeight - headHeight).forEach(this::place);
        } else {
            place(piece);
        }
    }

    private void place(Piece piece) {
        if (!page.isEmpty() && level + piece.before() + ownHeight(piece, page) > pageHeight + 1e-6) {
            turn();
        }
        if (page.isEmpty() && piece.head() != null) {
            put(piece.head());
        }
        put(piece);
        if (needsCompanion(piece, page)) {
            put(piece.oncePerPage());
        }
    }

    private void put(Piece piece) {
        double top = page.isEmpty() ? 0 : level + piece.before();
        page.add(new Placed(piece, top));
        level = top + piece.height();
    }

    private static boolean needsCompanion(Piece piece, List<Placed> on) {
        return piece.oncePerPage() != null && on.stream().noneMatch(placed -> placed.piece() == piece.oncePerPage());
    }

    private static double ownHeight(Piece piece, List<Placed> on) {
        return piece.height()
                + (needsCompanion(piece, on)
                        ? piece.oncePerPage().before() + piece.oncePerPage().height()
                        : 0);
    }

    /** Height of a piece with all that must follow it on the same page; no more than a page, else keeping is given up. */
    private double groupHeight(List<Piece> pieces, int first, boolean atTop) {
        double height = 0;
        for (int i = first; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            double more = (i == first && atTop ? 0 : piece.before()) + ownHeight(piece, page);
            if (height + more > pageHeight) {
                return i == first ? more : height;
            }
            height += more;
            if (!piece.keepWithNext()) {
                break;
            }
        }
        return height;
    }
}
