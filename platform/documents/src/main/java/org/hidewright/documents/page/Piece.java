package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Something that stays together on a page, as wide as the page's body.
 *
 * @param before space above it, unless it begins a page
 * @param height its height
 * @param keepWithNext whether it must not be the last on its page
 * @param startsPage whether it begins a page of its own
 * @param head what is repeated above it where it begins a page: the headings of its table; may be null
 * @param oncePerPage what must stand right after the first such piece of a page: check squares; may be null
 */
record Piece(
        double before,
        double height,
        boolean keepWithNext,
        boolean startsPage,
        Piece head,
        Piece oncePerPage,
        List<Mark> marks) {

    static Piece of(double before, double height, List<Mark> marks) {
        return new Piece(before, height, false, false, null, null, List.copyOf(marks));
    }

    Piece keptWithNext() {
        return new Piece(before, height, true, startsPage, head, oncePerPage, marks);
    }

    Piece onNewPage() {
        return new Piece(before, height, keepWithNext, true, head, oncePerPage, marks);
    }

    Piece under(Piece heading) {
        return new Piece(before, height, keepWithNext, startsPage, heading, oncePerPage, marks);
    }

    Piece with(Piece companion) {
        return new Piece(before, height, keepWithNext, startsPage, head, companion, marks);
    }

    /** Draws it with its top left corner at a place on the sheet. */
    void draw(Canvas canvas, double x, double y) {
        marks.forEach(mark -> mark.draw(canvas, x, y));
    }

    /** A piece higher than a page, cut between its lines into pieces that are not. */
    List<Piece> splitTo(double most) {
        List<Piece> parts = new ArrayList<>();
        double from = 0;
        if (!(most > 0)) {
            throw new IllegalArgumentException("a page without room");
        }
        while (height - from > most) {
            double cut = cut(from, from + most);
            parts.add(slice(from, cut, parts.isEmpty()));
            from = cut;
        }
        parts.add(slice(from, height, parts.isEmpty()));
        return parts;
    }

    private Piece slice(double from, double to, boolean first) {
        List<Mark> inside = marks.stream()
                .filter(mark -> mark.top() >= from - 1e-9 && (mark.top() < to - 1e-9 || to == height))
                .map(mark -> mark.moved(0, -from))
                .toList();
        return new Piece(first ? before : 0, to - from, false, startsPage && first, head, oncePerPage, inside);
    }

    /** The lowest level that crosses no mark. */
    private double cut(double from, double to) {
        double cut = to;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (Mark mark : marks) {
                if (mark.top() < cut - 1e-9 && mark.bottom() > cut + 1e-9 && mark.top() > from + 1e-9) {
                    cut = mark.top();
                    moved = true;
                }
            }
        }
        return cut;
    }
}
