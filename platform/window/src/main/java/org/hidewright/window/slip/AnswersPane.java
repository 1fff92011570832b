package org.hidewright.window.slip;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.core.jobcard.RangeWords;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.AnswerFace;

/**
 * The answers of a slip: those that lead as the largest thing on it, the others in lines below; under a number that moves, how
 * far and by what. What has changed keeps its old value beside it, struck out, until {@link #settle}.
 */
final class AnswersPane extends Canvas {
    private static final double LARGE = 1.9;
    private static final double SMALL = 0.85;

    private final Inks inks;
    private List<AnswerFace> answers = List.of();
    private final Map<String, String> before = new HashMap<>();

    AnswersPane(Composite parent, Inks inks) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.inks = inks;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        addPaintListener(event -> draw(event.gc, getClientArea().width, true));
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = text();
            }
        });
    }

    /** Shows answers; whether it takes another height than before. */
    boolean show(List<AnswerFace> shown) {
        if (shown.equals(answers)) {
            return false;
        }
        for (AnswerFace old : answers) {
            shown.stream()
                    .filter(now -> now.key().equals(old.key()) && !now.inline().equals(old.inline()))
                    .forEach(now -> before.putIfAbsent(now.key(), old.inline()));
        }
        boolean taller = lines(shown) != lines(answers);
        answers = shown;
        redraw();
        return taller;
    }

    private static long lines(List<AnswerFace> faces) {
        return faces.size()
                + 100 * faces.stream().filter(face -> face.met().isPresent()).count();
    }

    /** Forgets what stood there before. */
    void settle() {
        if (!before.isEmpty()) {
            before.clear();
            redraw();
        }
    }

    /** What it shows, line by line. */
    String text() {
        StringBuilder text = new StringBuilder();
        for (AnswerFace answer : answers) {
            text.append(answer.label()).append(' ').append(answer.inline());
            answer.met().ifPresent(met -> text.append(" (").append(range(met)).append(')'));
            if (before.containsKey(answer.key())) {
                text.append(" [").append(before.get(answer.key())).append(']');
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static String range(RangeWords.Met met) {
        return met.least() + "–" + met.most();
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        GC gc = new GC(this);
        int height = draw(gc, widthHint == SWT.DEFAULT ? 200 : widthHint, false);
        gc.dispose();
        return new Point(widthHint == SWT.DEFAULT ? 200 : widthHint, heightHint == SWT.DEFAULT ? height : heightHint);
    }

    private int draw(GC gc, int width, boolean ink) {
        int y = 0;
        for (AnswerFace answer : answers) {
            y = answer.lead() ? large(gc, answer, y, ink) : small(gc, answer, width, y, ink);
            if (answer.met().isPresent()) {
                y = met(gc, answer.met().get(), y, ink);
            }
        }
        return y;
    }

    private int large(GC gc, AnswerFace answer, int from, boolean ink) {
        int y = text(gc, answer.label(), 0, from, SMALL, false, inks.palette().quiet(), ink).y;
        Point number = text(gc, answer.number(), 0, y, LARGE, true, colour(answer), ink);
        int base = number.y - (int) (ascent(gc, 1) * 1.5);
        Point unit = text(
                gc, answer.unit(), number.x + 4, base, 1, false, inks.palette().ink(), ink);
        Point beside = text(
                gc,
                answer.beside(),
                unit.x + 8,
                base,
                SMALL,
                false,
                inks.palette().quiet(),
                ink);
        old(gc, answer, beside.x + 8, base, ink);
        return number.y + 2;
    }

    private int small(GC gc, AnswerFace answer, int width, int from, boolean ink) {
        Point label = text(gc, answer.label(), 0, from, 1, false, inks.palette().quiet(), ink);
        gc.setFont(inks.font(1, false));
        int wide = gc.textExtent(answer.inline()).x;
        boolean beside = label.x + 8 + wide <= width;
        int y = beside ? from : label.y;
        int x = beside ? width - wide : 0;
        Point value = text(gc, answer.inline(), x, y, 1, false, colour(answer), ink);
        old(gc, answer, Math.max(label.x + 8, x - 8 - wide), y, ink);
        return Math.max(label.y, value.y) + 2;
    }

    private int colour(AnswerFace answer) {
        return before.containsKey(answer.key())
                ? inks.palette().accent()
                : inks.palette().ink();
    }

    private void old(GC gc, AnswerFace answer, int x, int y, boolean ink) {
        String was = before.get(answer.key());
        if (was != null && ink) {
            Point end = text(gc, was, x, y, SMALL, false, inks.palette().quiet(), true);
            int middle = (y + end.y) / 2;
            gc.setForeground(inks.color(inks.palette().quiet()));
            gc.setLineWidth(1);
            gc.drawLine(x, middle, end.x, middle);
        }
    }

    private int met(GC gc, RangeWords.Met met, int y, boolean ink) {
        String text = range(met) + "  " + met.movedBy();
        return text(gc, text, 0, y, SMALL, false, inks.palette().quiet(), ink).y + 2;
    }

    private int ascent(GC gc, double larger) {
        gc.setFont(inks.font(larger, false));
        return gc.getFontMetrics().getHeight();
    }

    /** Where a text ends, to the right and below. */
    private Point text(GC gc, String text, int x, int y, double larger, boolean bold, int colour, boolean ink) {
        gc.setFont(inks.font(larger, bold));
        Point extent = gc.textExtent(text.isEmpty() ? " " : text);
        if (ink) {
            gc.setForeground(inks.color(colour));
            gc.drawText(text, x, y, true);
        }
        return new Point(x + (text.isEmpty() ? 0 : extent.x), y + extent.y);
    }
}
