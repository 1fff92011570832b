package org.hidewright.window.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.documents.page.FigurePlan;
import org.hidewright.documents.page.Typeface;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.DrawingFace;

/** How drawings lie in a view: beside or under each other in the middle of it, at a size or as large as there is room. */
final class Arrangement {
    /** A view smaller than this shows nothing. */
    private static final int LEAST_PIXELS = 20;

    private final Rectangle area;
    private final double pixelsPerMm;
    private final double width;
    private final double height;
    private final Typeface typeface;
    private final Legend legend;

    Arrangement(GC gc, Inks inks, Rectangle area, double pixelsPerMm) {
        this.area = area;
        this.pixelsPerMm = pixelsPerMm;
        this.width = area.width / pixelsPerMm;
        this.height = area.height / pixelsPerMm;
        this.typeface = new GcCanvas(gc, inks, pixelsPerMm);
        this.legend = new Legend(gc, inks, area);
    }

    /** A drawing without the kinds of line that are left out. */
    private record Seen(DrawingFace face, Drawing drawing) {
        FigurePlan at(double factor, Typeface typeface) {
            return FigurePlan.at(Names.fitted(drawing, face.parts(), factor, typeface), factor, typeface);
        }
    }

    /**
     * Drawings in their places.
     *
     * @param left kinds of line that are left out; a drawing of which nothing is left has no place
     * @param factor paper millimetres for one of the thing; 0 for as large as there is room
     */
    List<Placed> of(List<DrawingFace> faces, Set<LineKind> left, double factor) {
        List<Seen> seen = new ArrayList<>();
        faces.forEach(
                face -> LineKind.without(face.drawing(), left).ifPresent(drawing -> seen.add(new Seen(face, drawing))));
        if (seen.isEmpty() || area.width < LEAST_PIXELS || area.height < LEAST_PIXELS) {
            return List.of();
        }
        if (factor > 0) {
            return place(seen, factor, height);
        }
        List<Placed> placed = place(seen, largest(seen), height);
        int below = legend.height(placed);
        if (below == 0) {
            return placed;
        }
        double room = Math.max(height / 2, height - below / pixelsPerMm);
        double smaller = Math.min(1, Fit.factor(boxes(placed), width, room));
        return place(seen, placed.get(0).sheet().factor() * smaller, room);
    }

    private double largest(List<Seen> seen) {
        double factor =
                Fit.factor(seen.stream().map(one -> one.drawing().bounds()).toList(), width, height);
        // letters and measures keep their size, so that a small drawing needs another look at the room they take
        double again = Fit.factor(boxes(place(seen, factor, height)), width, height);
        return factor * Math.min(1, again);
    }

    private static List<Box> boxes(List<Placed> placed) {
        return placed.stream().map(one -> one.sheet().box()).toList();
    }

    private List<Placed> place(List<Seen> seen, double factor, double room) {
        List<FigurePlan> plans =
                seen.stream().map(one -> one.at(factor, typeface)).toList();
        List<Box> boxes = plans.stream().map(FigurePlan::box).toList();
        boolean beside = Fit.isBeside(boxes, width, room);
        double all = boxes.stream()
                        .mapToDouble(box -> beside ? box.width() : box.height())
                        .sum()
                + Fit.GAP_MM * (boxes.size() - 1);
        double[] at = {((beside ? width : room) - all) / 2};
        return IntStream.range(0, boxes.size())
                .mapToObj(i -> {
                    Box box = boxes.get(i);
                    double x = beside ? at[0] : (width - box.width()) / 2;
                    double y = beside ? (room - box.height()) / 2 : at[0];
                    at[0] += (beside ? box.width() : box.height()) + Fit.GAP_MM;
                    Sheet sheet = new Sheet(factor, pixelsPerMm, box, x * pixelsPerMm, y * pixelsPerMm);
                    return new Placed(seen.get(i).face(), seen.get(i).drawing(), plans.get(i), sheet);
                })
                .toList();
    }
}
