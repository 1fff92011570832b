package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.document.PatternSheets;
import org.hidewright.api.document.PatternSheets.Pattern;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;

/**
 * Patterns on sheets in true size: small ones side by side, one larger than a sheet on several that overlap.
 *
 * <p>Each sheet is a piece as high as the page. Sheets of one pattern share crosses in the middle of what overlaps, so that
 * they can be laid cross on cross, and each is framed where the next one may be cut.
 */
final class PatternLayout {
    private static final double OVERLAP = 12;
    private static final double GAP = 8;
    private static final double HEAD_GAP = 2;

    private final Typeface typeface;
    private final double width;
    private final double height;
    private final CheckSquares squares;
    private final PatternSheets sheets;
    private final double top;
    private final double room;

    PatternLayout(PatternSheets sheets, Typeface typeface, double width, double pageHeight, CheckSquares squares) {
        this.typeface = typeface;
        this.width = width;
        this.height = pageHeight;
        this.squares = squares;
        this.sheets = sheets;
        this.top = headHeight();
        this.room = height - top;
    }

    List<Piece> pieces() {
        List<FigurePlan> small = new ArrayList<>();
        List<Piece> large = new ArrayList<>();
        for (Pattern pattern : sheets.patterns()) {
            FigurePlan upright = plan(pattern, false);
            FigurePlan turned = plan(pattern, true);
            if (fits(upright)) {
                small.add(upright);
            } else if (fits(turned)) {
                small.add(turned);
            } else {
                Tiling one = new Tiling(upright.box(), width, room, OVERLAP);
                Tiling other = new Tiling(turned.box(), width, room, OVERLAP);
                large.addAll(
                        other.sheets() < one.sheets() ? tiles(pattern, turned, other) : tiles(pattern, upright, one));
            }
        }
        List<Piece> pieces = new ArrayList<>(shelves(small));
        pieces.addAll(large);
        return pieces;
    }

    private FigurePlan plan(Pattern pattern, boolean turned) {
        return plan(pattern.drawing(), new PaperScale(1, turned));
    }

    private FigurePlan plan(Drawing drawing, PaperScale scale) {
        return new FigurePlan(drawing, scale, Double.POSITIVE_INFINITY, typeface);
    }

    /** With every name whole on a sheet, as far as there is room; one that made the pattern larger is left alone. */
    private FigurePlan withWholeNames(Pattern pattern, FigurePlan plan, Tiling tiling) {
        FigurePlan whole = plan(WholeNames.of(pattern.drawing(), plan, tiling, typeface), plan.scale());
        return whole.box().equals(plan.box()) ? whole : plan;
    }

    private boolean fits(FigurePlan plan) {
        return plan.box().width() <= width && plan.box().height() <= room;
    }

    private double headHeight() {
        double tile = sheets.patterns().stream()
                .mapToDouble(pattern -> head(sheets.tileText(pattern.name(), 88, 88, 88, 88)))
                .max()
                .orElse(0);
        return Math.max(tile, head("")) + HEAD_GAP;
    }

    private double head(String text) {
        return head(new PieceBuilder(typeface), text, true);
    }

    private double head(PieceBuilder piece, String text, boolean pale) {
        double y = piece.text(text, 0, 0, width, Style.CHECK);
        return pale ? piece.text(sheets.behindText(), 0, y, width, Style.REASON) : y;
    }

    /** Small patterns in rows, the highest first, row under row while there is room. */
    private List<Piece> shelves(List<FigurePlan> plans) {
        List<FigurePlan> byHeight = new ArrayList<>(plans);
        byHeight.sort(Comparator.comparingDouble(plan -> -plan.box().height()));
        List<Piece> pieces = new ArrayList<>();
        List<PlacedPattern> sheet = new ArrayList<>();
        double x = 0;
        double y = 0;
        double rowHeight = 0;
        for (FigurePlan plan : byHeight) {
            if (x > 0 && x + plan.box().width() > width) {
                x = 0;
                y += rowHeight + GAP;
                rowHeight = 0;
            }
            if (!sheet.isEmpty() && y + plan.box().height() > room) {
                pieces.add(sheet("", sheet, null));
                sheet.clear();
                x = 0;
                y = 0;
                rowHeight = 0;
            }
            sheet.add(new PlacedPattern(plan, x, y));
            x += plan.box().width() + GAP;
            rowHeight = Math.max(rowHeight, plan.box().height());
        }
        if (!sheet.isEmpty()) {
            pieces.add(sheet("", sheet, null));
        }
        return pieces;
    }

    private List<Piece> tiles(Pattern pattern, FigurePlan parted, Tiling tiling) {
        FigurePlan plan = withWholeNames(pattern, parted, tiling);
        List<Piece> pieces = new ArrayList<>();
        for (int row = 0; row < tiling.rows(); row++) {
            for (int column = 0; column < tiling.columns(); column++) {
                String text = sheets.tileText(pattern.name(), pieces.size() + 1, tiling.sheets(), row + 1, column + 1);
                pieces.add(
                        sheet(text, List.of(new PlacedPattern(plan, -tiling.left(column), -tiling.top(row))), tiling));
            }
        }
        return pieces;
    }

    /** @param tiling of the pattern that goes over several sheets; {@code null} for patterns that are whole on this one */
    private Piece sheet(String text, List<PlacedPattern> patterns, Tiling tiling) {
        Box window = Box.around(Point.of(0, 0), Point.of(width, room));
        FreePlace free = new FreePlace(window, CheckSquares.WIDTH);
        patterns.forEach(pattern -> pattern.ink(free));
        if (tiling != null) {
            tiling.crosses().forEach(cross -> free.taken(cross.x(), cross.y()));
        }
        PieceBuilder piece = new PieceBuilder(typeface);
        Piece check = squares.piece(sheets.trueSizeText());
        Optional<double[]> place = free.place();
        head(piece, text, place.isEmpty());
        place.ifPresentOrElse(
                at -> check.marks().forEach(mark -> piece.add(mark.moved(at[0], top + at[1]))),
                () -> squares.pale(0, height - CheckSquares.WIDTH).forEach(piece::add));
        piece.add(new SheetMark(List.copyOf(patterns), tiling, top, width, room));
        return piece.downTo(height).build(0).onNewPage();
    }

    /** A pattern with the upper left corner of its box at a place of the sheet, y down. */
    private record PlacedPattern(FigurePlan plan, double x, double y) {
        void ink(FreePlace free) {
            plan.ink((px, py) -> free.taken(x + px, y + py));
        }
    }

    /** What is drawn of the patterns on one sheet. */
    private record SheetMark(List<PlacedPattern> patterns, Tiling tiling, double top, double width, double height)
            implements Mark {
        @Override
        public double bottom() {
            return top + height;
        }

        @Override
        public void draw(Canvas canvas, double x, double y) {
            if (tiling == null) {
                patterns.forEach(pattern -> pattern.plan().draw(canvas, x + pattern.x(), y + top + pattern.y()));
                return;
            }
            canvas.within(
                    x,
                    y + top,
                    width,
                    height,
                    () -> patterns.forEach(
                            pattern -> pattern.plan().draw(canvas, x + pattern.x(), y + top + pattern.y())));
            tiling.drawFrame(canvas, x, y + top);
        }
    }
}
