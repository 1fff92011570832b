package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.api.document.Bars;
import org.hidewright.core.jobcard.RangeWords;
import org.hidewright.core.project.Link;
import org.hidewright.window.look.FocusRing;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Wrapped;
import org.hidewright.window.look.WritesItself;
import org.hidewright.window.model.AnswerFace;
import org.hidewright.window.words.WindowTexts;

/**
 * The answers of a slip: those that lead as the largest thing on it, the others in lines below; under a number that moves, how
 * far and by what. What has changed keeps its old value beside it, struck out, until {@link #settle}. An answer can be dragged
 * to a question.
 */
final class AnswersPane extends Canvas implements WritesItself {
    /** The largest that lets the number stand on its line. */
    private static final double[] LARGE = {1.9, 1.4, 1.15, 1};

    private static final double SMALL = 0.85;
    /** Room for the frame of the focus. */
    private static final int MARGIN = 4;

    private static final int BAR = 90;
    private static final int BAR_HEIGHT = 4;
    /** The bar is full where an answer moves by this share of itself. */
    private static final double FULL_BAR = 0.2;

    private final Inks inks;
    private final WindowTexts texts;
    private final String slip;
    private final Map<String, Integer> tops = new LinkedHashMap<>();
    private List<AnswerFace> answers = List.of();
    private final Map<String, String> before = new HashMap<>();
    /** What had no room where it was painted last. */
    private final List<String> cut = new ArrayList<>();

    AnswersPane(Composite parent, Desk desk, String slip) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.inks = desk.inks();
        this.texts = desk.texts();
        this.slip = slip;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        addPaintListener(event -> draw(event.gc, getClientArea().width - 2 * MARGIN, true));
        FocusRing.on(this, inks);
        Spoken.name(this, this::text);
        menu();
        addListener(SWT.MouseMove, event -> hover(at(event.y)));
        drag();
    }

    /** What the pointer finds out about answers, for the keyboard: Enter opens it as the key for menus does. */
    private void menu() {
        Menu menu = new Menu(this);
        menu.addListener(SWT.Show, event -> fill(menu));
        setMenu(menu);
        addListener(SWT.KeyDown, event -> {
            if (event.character == SWT.CR || event.character == ' ') {
                fill(menu);
                menu.setVisible(true);
            }
        });
    }

    private void fill(Menu menu) {
        for (MenuItem old : menu.getItems()) {
            old.dispose();
        }
        for (AnswerFace answer : answers) {
            MenuItem item = new MenuItem(menu, SWT.PUSH);
            item.setText(
                    texts.text("answer.copy", answer.label(), answer.inline()).replace("&", "&&"));
            item.setData("id", slip + "/copy-" + answer.key());
            item.addListener(SWT.Selection, event -> copy(answer.inline()));
            for (String hangs : answer.hangs()) {
                MenuItem on = new MenuItem(menu, SWT.PUSH);
                on.setText("→ " + hangs.replace("&", "&&"));
                on.setEnabled(false);
            }
        }
        Mnemonics.give(menu);
    }

    private void copy(String text) {
        Clipboard clipboard = new Clipboard(getDisplay());
        clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    private void drag() {
        DragSource source = new DragSource(this, DND.DROP_LINK | DND.DROP_COPY);
        source.setTransfer(new Transfer[] {TextTransfer.getInstance()});
        source.addDragListener(new DragSourceAdapter() {
            @Override
            public void dragStart(DragSourceEvent event) {
                Optional<AnswerFace> answer = at(event.y);
                event.doit = answer.isPresent();
                answer.ifPresent(face -> DraggedAnswer.set(getDisplay(), new Link(slip, face.key(), "", "")));
            }

            @Override
            public void dragSetData(DragSourceEvent event) {
                event.data = DraggedAnswer.on(getDisplay())
                        .flatMap(link -> answers.stream()
                                .filter(face -> face.key().equals(link.answer()))
                                .findFirst())
                        .map(AnswerFace::inline)
                        .orElse("");
            }

            @Override
            public void dragFinished(DragSourceEvent event) {
                DraggedAnswer.set(getDisplay(), null);
            }
        });
        setData("drag", source);
    }

    /** The answer at a height; empty where there is none. */
    private Optional<AnswerFace> at(int y) {
        Optional<AnswerFace> found = Optional.empty();
        for (AnswerFace answer : answers) {
            if (tops.getOrDefault(answer.key(), Integer.MAX_VALUE) <= y) {
                found = Optional.of(answer);
            }
        }
        return found;
    }

    /** Where an answer is drawn, from the top; for whoever points at it. */
    int top(String key) {
        return tops.getOrDefault(key, 0);
    }

    private void hover(Optional<AnswerFace> over) {
        String tip = over.map(this::tip).orElse("");
        if (!tip.equals(getToolTipText())) {
            setToolTipText(tip);
        }
    }

    private String tip(AnswerFace answer) {
        String hangs = answer.hangs().isEmpty()
                ? texts.text("answer.nothing-hangs.help")
                : texts.text("answer.hangs.help", String.join("\n", answer.hangs()));
        String was = before.containsKey(answer.key())
                ? "\n" + texts.text("answer.before.help", before.get(answer.key()))
                : "";
        String moved = answer.met()
                .map(met -> "\n" + range(met) + "  " + met.movedBy())
                .orElse("");
        return answer.label() + " " + answer.inline() + was + moved + "\n" + hangs;
    }

    /** Shows answers; whether it takes another height than before. */
    boolean show(List<AnswerFace> shown) {
        if (shown.equals(answers)) {
            return false;
        }
        for (AnswerFace old : answers) {
            shown.stream()
                    .filter(now -> now.key().equals(old.key()) && now.unit().equals(old.unit()))
                    .filter(now -> !now.inline().equals(old.inline()))
                    .forEach(now -> before.putIfAbsent(now.key(), old.inline()));
        }
        shown.forEach(now -> before.remove(now.key(), now.inline())); // it is as it was again
        answers = shown;
        redraw();
        return computeSize(Math.max(1, getSize().x), SWT.DEFAULT).y != getSize().y;
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
            answer.met()
                    .ifPresent(met ->
                            text.append(" (").append(range(met)).append(") ").append(met.movedBy()));
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
    public List<String> cut() {
        return List.copyOf(cut);
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        GC gc = new GC(this);
        int height = draw(gc, (widthHint == SWT.DEFAULT ? 200 : widthHint) - 2 * MARGIN, false);
        gc.dispose();
        return new Point(widthHint == SWT.DEFAULT ? 200 : widthHint, heightHint == SWT.DEFAULT ? height : heightHint);
    }

    private int draw(GC gc, int width, boolean ink) {
        int y = MARGIN;
        tops.clear();
        if (ink) {
            cut.clear();
        }
        for (AnswerFace answer : answers) {
            tops.put(answer.key(), y - MARGIN);
            y = answer.lead() ? large(gc, answer, width, y, ink) : small(gc, answer, width, y, ink);
            if (answer.met().isPresent()) {
                y = met(gc, answer.met().get(), width, y, ink);
            } else if (answer.pending()) {
                y = line(gc, "…", y, ink);
            }
            if (answer.shares().isPresent()) {
                y = shares(gc, answer, width, y, ink);
            }
        }
        return y + MARGIN;
    }

    private int large(GC gc, AnswerFace answer, int width, int from, boolean ink) {
        String label = wrapped(gc, label(answer), SMALL, false, width);
        int y = text(gc, label, 0, from, SMALL, false, inks.palette().quiet(), ink).y;
        double size = size(gc, answer, width);
        Point number = text(gc, wrapped(gc, answer.number(), size, true, width), 0, y, size, true, colour(answer), ink);
        int base = number.y - (int) (ascent(gc, 1) * 1.5);
        Point unit = text(
                gc, answer.unit(), number.x + 4, base, 1, false, inks.palette().ink(), ink);
        gc.setFont(inks.font(SMALL, false));
        boolean room = answer.beside().isEmpty() || unit.x + 8 + gc.textExtent(answer.beside()).x <= width;
        Point beside = text(
                gc,
                answer.beside(),
                room ? unit.x + 8 : 0,
                room ? base : number.y,
                SMALL,
                false,
                inks.palette().quiet(),
                ink);
        int old = oldWidth(gc, answer);
        if (room && beside.x + 8 + old <= width) {
            old(gc, answer, beside.x + 8, base, ink);
        } else {
            old(gc, answer, width - old, from, ink); // beside the label
        }
        return (room ? number.y : beside.y) + 2;
    }

    private double size(GC gc, AnswerFace answer, int width) {
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

    private int small(GC gc, AnswerFace answer, int width, int from, boolean ink) {
        String called = wrapped(gc, label(answer), 1, false, width);
        Point label = text(gc, called, 0, from, 1, false, inks.palette().quiet(), ink);
        gc.setFont(inks.font(1, false));
        int wide = gc.textExtent(answer.inline()).x;
        wide = Math.min(wide, width);
        boolean beside = label.x + 8 + wide <= width;
        int y = beside ? from : label.y;
        int x = beside ? width - wide : 0;
        Point value = text(gc, wrapped(gc, answer.inline(), 1, false, width), x, y, 1, false, colour(answer), ink);
        int old = x - 8 - oldWidth(gc, answer);
        if (old >= (beside ? label.x + 8 : 0)) { // else it is told when it is pointed at
            old(gc, answer, old, y, ink);
        }
        return Math.max(label.y, value.y) + 2;
    }

    /** In as many lines as it needs: an answer in words may be longer than a slip is wide. */
    private String wrapped(GC gc, String text, double larger, boolean bold, int width) {
        gc.setFont(inks.font(larger, bold));
        return Wrapped.within(gc, text, width);
    }

    private int oldWidth(GC gc, AnswerFace answer) {
        gc.setFont(inks.font(SMALL, false));
        return gc.textExtent(before.getOrDefault(answer.key(), "")).x;
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
            gc.drawLine(MARGIN + x, middle, MARGIN + end.x, middle);
        }
    }

    /** With a mark where other slips take it. */
    private static String label(AnswerFace answer) {
        return answer.hangs().isEmpty()
                ? answer.label()
                : answer.label() + "  →" + answer.hangs().size();
    }

    /** From-to in numbers, as a bar as long as it moves for its size, and what moves it. */
    private int met(GC gc, RangeWords.Met met, int width, int from, boolean ink) {
        int line = inks.palette().hairline();
        if (ink) {
            double middle = Math.abs(met.low() + met.high()) / 2;
            double share = middle == 0 ? 1 : (met.high() - met.low()) / middle / FULL_BAR;
            gc.setBackground(inks.color(line));
            gc.fillRectangle(MARGIN, from, BAR, 3);
            gc.setBackground(inks.color(inks.palette().accent()));
            int length = (int) Math.max(2, Math.round(Math.min(1, share) * BAR));
            gc.fillRectangle(MARGIN + (BAR - length) / 2, from, length, 3);
        }
        String text = met.shares().isPresent() ? range(met) : range(met) + "  " + met.movedBy();
        return line(gc, wrapped(gc, text, SMALL, false, width), from, ink);
    }

    /** A line under the bar of an answer. */
    private int line(GC gc, String text, int from, boolean ink) {
        return text(gc, text, 0, from + BAR_HEIGHT, SMALL, false, inks.palette().quiet(), ink).y + 2;
    }

    /** What moves an answer, each input with its share; while that is worked out, the room for it. */
    private int shares(GC gc, AnswerFace answer, int width, int from, boolean ink) {
        BarsView bars = new BarsView(
                gc, inks, List.of(Bars.of("", answer.shares().orElseThrow().bars())), width);
        if (ink && answer.met().isPresent()) {
            bars.draw(0, from);
        }
        return from + bars.height() + 4;
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
            gc.drawText(text, MARGIN + x, y, true);
            Rectangle room = getClientArea();
            if (!text.isEmpty() && (x < 0 || MARGIN + x + extent.x > room.width || y + extent.y > room.height)) {
                cut.add(text);
            }
        }
        return new Point(x + (text.isEmpty() ? 0 : extent.x), y + extent.y);
    }
}
