package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.hidewright.api.document.Bars;
import org.hidewright.core.jobcard.RangeWords;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Wrapped;
import org.hidewright.window.model.AnswerFace;

/** Writes answers, one below the other, in a width: or only measures how far down each goes. */
final class AnswerLines {
    /** Room for the frame of the focus. */
    static final int SIDE = 2;

    /** The largest that lets the number stand on its line. */
    private static final double[] LARGE = {1.9, 1.4, 1.15, 1};

    private static final double SMALL = 0.85;
    /** Stands for an answer that is not there. */
    private static final String NONE = "–";

    private static final int BAR = 90;
    private static final int BAR_HEIGHT = 4;
    /** The bar is full where an answer moves by this share of itself. */
    private static final double FULL_BAR = 0.2;

    private final GC gc;
    private final Inks inks;
    private final Map<String, String> before;
    private final int width;
    private final Rectangle paper;
    private final List<String> cut = new ArrayList<>();

    /**
     * @param before what stood there before, by the keys of answers; struck out beside what has changed
     * @param width that there is, with the frame of the focus
     * @param paper what is written on; null where it is only measured
     */
    AnswerLines(GC gc, Inks inks, Map<String, String> before, int width, Rectangle paper) {
        this.gc = gc;
        this.inks = inks;
        this.before = before;
        this.width = width - 2 * SIDE;
        this.paper = paper;
    }

    /** What had no room. */
    List<String> cut() {
        return cut;
    }

    /** From here an answer goes down to there. */
    int write(AnswerFace answer, int from) {
        int y = answer.lead() ? large(answer, from) : small(answer, answer.inline(), from);
        if (answer.met().isPresent()) {
            y = met(answer.met().get(), y);
        } else if (answer.pending()) {
            y = line("…", y);
        }
        return answer.shares().isPresent() ? shares(answer, y) : y;
    }

    /** An answer that is not there now. */
    int writeOpen(AnswerFace answer, int from) {
        return small(answer, NONE, from);
    }

    /** Why answers are not there. */
    int write(String why, int colour, int from) {
        return text(wrapped(why, 1, false), 0, from, 1, false, colour).y + 2;
    }

    /** From where to where an answer moves. */
    static String range(RangeWords.Met met) {
        return met.least() + "–" + met.most();
    }

    private int large(AnswerFace answer, int from) {
        String label = wrapped(label(answer), SMALL, false);
        int y = text(label, 0, from, SMALL, false, inks.palette().quiet()).y;
        double size = size(answer);
        Point number = text(wrapped(answer.number(), size, true), 0, y, size, true, colour(answer));
        int base = number.y - (int) (ascent(1) * 1.5);
        Point unit =
                text(answer.unit(), number.x + 4, base, 1, false, inks.palette().ink());
        gc.setFont(inks.font(SMALL, false));
        boolean room = answer.beside().isEmpty() || unit.x + 8 + gc.textExtent(answer.beside()).x <= width;
        Point beside = text(
                answer.beside(),
                room ? unit.x + 8 : 0,
                room ? base : number.y,
                SMALL,
                false,
                inks.palette().quiet());
        int old = oldWidth(answer);
        if (room && beside.x + 8 + old <= width) {
            old(answer, beside.x + 8, base);
        } else {
            old(answer, width - old, from); // beside the label
        }
        return (room ? number.y : beside.y) + 2;
    }

    private double size(AnswerFace answer) {
        for (double size : LARGE) {
            gc.setFont(inks.font(size, true));
            int number = gc.textExtent(answer.number()).x;
            gc.setFont(inks.font(1, false));
            if (number + gc.textExtent(answer.unit()).x + 4 <= width) {
                return size;
            }
        }
        return LARGE[LARGE.length - 1];
    }

    private int small(AnswerFace answer, String inline, int from) {
        String called = wrapped(label(answer), 1, false);
        Point label = text(called, 0, from, 1, false, inks.palette().quiet());
        gc.setFont(inks.font(1, false));
        int wide = gc.textExtent(inline).x;
        wide = Math.min(wide, width);
        boolean beside = label.x + 8 + wide <= width;
        int y = beside ? from : label.y;
        int x = beside ? width - wide : 0;
        Point value = text(
                wrapped(inline, 1, false),
                x,
                y,
                1,
                false,
                inline.equals(NONE) ? inks.palette().ink() : colour(answer));
        int old = x - 8 - oldWidth(answer);
        if (old >= (beside ? label.x + 8 : 0)) { // else it is told when it is pointed at
            old(answer, old, y);
        }
        return Math.max(label.y, value.y) + 2;
    }

    /** In as many lines as it needs: an answer in words may be longer than a slip is wide. */
    private String wrapped(String text, double larger, boolean bold) {
        gc.setFont(inks.font(larger, bold));
        return Wrapped.within(gc, text, width);
    }

    private int oldWidth(AnswerFace answer) {
        gc.setFont(inks.font(SMALL, false));
        return gc.textExtent(before.getOrDefault(answer.key(), "")).x;
    }

    private int colour(AnswerFace answer) {
        return before.containsKey(answer.key())
                ? inks.palette().accent()
                : inks.palette().ink();
    }

    private void old(AnswerFace answer, int x, int y) {
        String was = before.get(answer.key());
        if (was != null && paper != null) {
            Point end = text(was, x, y, SMALL, false, inks.palette().quiet());
            int middle = (y + end.y) / 2;
            gc.setForeground(inks.color(inks.palette().quiet()));
            gc.setLineWidth(1);
            gc.drawLine(SIDE + x, middle, SIDE + end.x, middle);
        }
    }

    /** With a mark where other slips take it. */
    private static String label(AnswerFace answer) {
        return answer.hangs().isEmpty()
                ? answer.label()
                : answer.label() + "  →" + answer.hangs().size();
    }

    /** From-to in numbers, as a bar as long as it moves for its size, and what moves it. */
    private int met(RangeWords.Met met, int from) {
        int line = inks.palette().hairline();
        if (paper != null) {
            double middle = Math.abs(met.low() + met.high()) / 2;
            double share = middle == 0 ? 1 : (met.high() - met.low()) / middle / FULL_BAR;
            gc.setBackground(inks.color(line));
            gc.fillRectangle(SIDE, from, BAR, 3);
            gc.setBackground(inks.color(inks.palette().accent()));
            int length = (int) Math.max(2, Math.round(Math.min(1, share) * BAR));
            gc.fillRectangle(SIDE + (BAR - length) / 2, from, length, 3);
        }
        String text = met.shares().isPresent() ? range(met) : range(met) + "  " + met.movedBy();
        return line(wrapped(text, SMALL, false), from);
    }

    /** A line under the bar of an answer. */
    private int line(String text, int from) {
        return text(text, 0, from + BAR_HEIGHT, SMALL, false, inks.palette().quiet()).y + 2;
    }

    /** What moves an answer, each input with its share; while that is worked out, the room for it. */
    private int shares(AnswerFace answer, int from) {
        BarsView bars = new BarsView(
                gc, inks, List.of(Bars.of("", answer.shares().orElseThrow().bars())), width);
        if (paper != null && answer.met().isPresent()) {
            bars.draw(0, from);
        }
        return from + bars.height() + 4;
    }

    private int ascent(double larger) {
        gc.setFont(inks.font(larger, false));
        return gc.getFontMetrics().getHeight();
    }

    /** Where a text ends, to the right and below. */
    private Point text(String text, int x, int y, double larger, boolean bold, int colour) {
        gc.setFont(inks.font(larger, bold));
        Point extent = gc.textExtent(text.isEmpty() ? " " : text);
        if (paper != null) {
            gc.setForeground(inks.color(colour));
            gc.drawText(text, SIDE + x, y, true);
            if (!text.isEmpty() && (x < 0 || SIDE + x + extent.x > paper.width || y + extent.y > paper.height)) {
                cut.add(text);
            }
        }
        return new Point(x + (text.isEmpty() ? 0 : extent.x), y + extent.y);
    }
}
