package org.hidewright.layout.engine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Budget;
import org.hidewright.layout.task.Inner;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Turning;

/** The engine's forms of pieces, one for all pieces of one outline, and the way back from where they lie. */
final class Forms {
    private static final double ROUNDING = 1e-12;

    private Forms() {}

    /** What pieces have in common that share a form; their outline is the same, not merely equal. */
    private record Kind(Outline outline, Turning turning, long avoids, List<Inner> inner) {
        static Kind of(Piece piece) {
            return new Kind(piece.outline(), piece.turning(), piece.avoids(), piece.inner());
        }

        Form form() {
            return new Form(outline.xs(), outline.ys(), turning, avoids, inner);
        }
    }

    static Form[] of(List<Piece> pieces) {
        return of(pieces, (count, work) -> IntStream.range(0, count).forEach(work));
    }

    /** The same, by all workers of a budget: the circles of many kinds take longer than a first layout of them should. */
    static Form[] of(List<Piece> pieces, Budget budget) {
        return of(pieces, (count, work) -> Shared.among(budget, count, work));
    }

    private static Form[] of(List<Piece> pieces, BiConsumer<Integer, IntConsumer> each) {
        List<Kind> kinds = pieces.stream().map(Kind::of).distinct().toList();
        Form[] made = new Form[kinds.size()];
        each.accept(made.length, kind -> made[kind] = kinds.get(kind).form());
        Map<Kind, Form> forms = new HashMap<>();
        for (int kind = 0; kind < made.length; kind++) {
            forms.put(kinds.get(kind), made[kind]);
        }
        return pieces.stream().map(piece -> forms.get(Kind.of(piece))).toArray(Form[]::new);
    }

    /** A place about the form's point of reference as one about the piece's own origin. */
    static Laid laid(int piece, int sheet, Form form, Places places, int at) {
        double angle = places.angle[at];
        double cos = Turning.cos(angle);
        double sin = Turning.sin(angle);
        return new Laid(
                piece,
                sheet,
                angle,
                places.x[at] - cos * form.referenceX + sin * form.referenceY,
                places.y[at] - sin * form.referenceX - cos * form.referenceY);
    }

    /**
     * Moves a piece that reaches over an edge of an upright sheet by no more than rounding back onto it: on its way from the point of
     * reference to its own origin it may have gained a last digit.
     */
    static Laid flush(Laid laid, Piece piece, Ground ground) {
        double off = ROUNDING * (Math.abs(laid.dx()) + Math.abs(laid.dy()) + ground.maxY() - ground.minY());
        double[] box = box(laid, piece);
        double dx = laid.dx() + back(box[0], box[2], ground.minX(), ground.maxX(), off);
        double dy = laid.dy() + back(box[1], box[3], ground.minY(), ground.maxY(), off);
        return new Laid(laid.piece(), laid.sheet(), laid.angle(), dx, dy);
    }

    private static double back(double low, double high, double from, double to, double off) {
        if (low < from && from - low < off) {
            return from - low;
        }
        return high > to && high - to < off ? to - high : 0;
    }

    /** The box about a piece where it lies: least x and y, greatest x and y. */
    static double[] box(Laid laid, Piece piece) {
        Outline outline = piece.outline().moved(laid.angle(), laid.dx(), laid.dy());
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (int corner = 0; corner < outline.corners(); corner++) {
            box[0] = Math.min(box[0], outline.x(corner));
            box[1] = Math.min(box[1], outline.y(corner));
            box[2] = Math.max(box[2], outline.x(corner));
            box[3] = Math.max(box[3], outline.y(corner));
        }
        return box;
    }
}
