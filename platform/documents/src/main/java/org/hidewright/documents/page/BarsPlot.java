package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.Bars;

/** Blocks of bars under each other, laid out as they are printed, to be drawn on any canvas. */
public final class BarsPlot {
    private final List<Flow.Placed> pieces = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private double height;

    /**
     * A bar, and where it lies.
     *
     * @param caption of its block; may be empty
     * @param top of its line, in millimetres below the top of the plot
     * @param bottom of its line
     */
    public record Row(String caption, Bars.Bar bar, double top, double bottom) {}

    /** @param widthMm how wide it may be, names and amounts included */
    public BarsPlot(List<Bars> blocks, double widthMm, Typeface typeface) {
        BarsLayout layout = new BarsLayout(typeface, widthMm);
        blocks.forEach(block -> add(block, layout.pieces(block)));
    }

    private void add(Bars block, List<Piece> laid) {
        int captions = laid.size() - block.bars().size();
        for (int i = 0; i < laid.size(); i++) {
            Piece piece = laid.get(i);
            double top = pieces.isEmpty() ? 0 : height + piece.before();
            height = top + piece.height();
            pieces.add(new Flow.Placed(piece, top));
            if (i >= captions) {
                rows.add(new Row(block.caption(), block.bars().get(i - captions), top, height));
            }
        }
    }

    /** From the top of the first line to the bottom of the last, in millimetres. */
    public double height() {
        return height;
    }

    /** The bars from above to below. */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Draws it with its top left corner at a place on the canvas. */
    public void draw(Canvas canvas, double left, double top) {
        pieces.forEach(placed -> placed.piece().draw(canvas, left, top + placed.top()));
    }

    /** How high a line of it is on paper, which a screen brings to the height of its own lines. */
    public static double lineMm() {
        return Style.CELL.lineMm();
    }
}
