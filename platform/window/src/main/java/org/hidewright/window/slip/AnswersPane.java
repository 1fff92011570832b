package org.hidewright.window.slip;

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
import org.hidewright.core.project.Link;
import org.hidewright.window.look.FocusRing;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.WritesItself;
import org.hidewright.window.model.AnswerFace;
import org.hidewright.window.words.WindowTexts;

/**
 * The answers of a slip: those that lead as the largest thing on it, the others in lines below; under a number that moves, how
 * far and by what. What has changed keeps its old value beside it, struck out, until {@link #settle}. An answer can be dragged
 * to a question.
 */
final class AnswersPane extends Canvas implements WritesItself {
    /** Above and below. */
    private static final int MARGIN = 4;

    private final Inks inks;
    private final WindowTexts texts;
    private final String slip;
    private final Map<String, Integer> tops = new LinkedHashMap<>();
    /** As they are, or were when there were any. */
    private List<AnswerFace> answers = List.of();
    /** Why there are none until something is mended; empty where there are. */
    private String why = "";

    private int whyColour;
    private final Map<String, String> before = new HashMap<>();
    /** What had no room where it was painted last. */
    private List<String> cut = List.of();

    AnswersPane(Composite parent, Desk desk, String slip) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.inks = desk.inks();
        this.texts = desk.texts();
        this.slip = slip;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        addPaintListener(event -> paint(event.gc, getClientArea()));
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
        for (AnswerFace answer : why.isEmpty() ? answers : List.<AnswerFace>of()) {
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
                .map(met -> "\n" + AnswerLines.range(met) + "  " + met.movedBy())
                .orElse("");
        return answer.label() + " " + answer.inline() + was + moved + "\n" + hangs;
    }

    /** Shows answers; whether it takes another height than before. */
    boolean show(List<AnswerFace> shown) {
        if (shown.equals(answers) && why.isEmpty()) {
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
        why = "";
        return isOther();
    }

    /**
     * Shows why there are no answers until something is mended. They keep their room without their values, so that what is being
     * typed below stays where it is.
     *
     * @return whether it takes another height than before
     */
    boolean showOpen(String reason, int colour) {
        if (reason.equals(why)) {
            return false;
        }
        why = reason;
        whyColour = colour;
        return isOther();
    }

    private boolean isOther() {
        redraw();
        return computeSize(Math.max(1, getSize().x), SWT.DEFAULT).y != getSize().y;
    }

    /** Whether there never were any. */
    boolean isEmpty() {
        return answers.isEmpty();
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
        if (!why.isEmpty()) {
            return why;
        }
        StringBuilder text = new StringBuilder();
        for (AnswerFace answer : answers) {
            text.append(answer.label()).append(' ').append(answer.inline());
            answer.met()
                    .ifPresent(met -> text.append(" (")
                            .append(AnswerLines.range(met))
                            .append(") ")
                            .append(met.movedBy()));
            if (before.containsKey(answer.key())) {
                text.append(" [").append(before.get(answer.key())).append(']');
            }
            text.append('\n');
        }
        return text.toString();
    }

    @Override
    public List<String> cut() {
        return cut;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        int width = widthHint == SWT.DEFAULT ? 200 : widthHint;
        GC gc = new GC(this);
        int height = Math.max(drawAll(gc, width, null), why.isEmpty() ? 0 : drawOpen(gc, width, null));
        gc.dispose();
        return new Point(width, heightHint == SWT.DEFAULT ? height : heightHint);
    }

    private void paint(GC gc, Rectangle paper) {
        if (why.isEmpty()) {
            drawAll(gc, paper.width, paper);
        } else {
            drawOpen(gc, paper.width, paper);
        }
    }

    private int drawAll(GC gc, int width, Rectangle paper) {
        AnswerLines lines = new AnswerLines(gc, inks, before, width, paper);
        int y = MARGIN;
        tops.clear();
        for (AnswerFace answer : answers) {
            tops.put(answer.key(), y - MARGIN);
            y = lines.write(answer, y);
        }
        take(lines, paper);
        return y + MARGIN;
    }

    private int drawOpen(GC gc, int width, Rectangle paper) {
        AnswerLines lines = new AnswerLines(gc, inks, Map.of(), width, paper);
        tops.clear();
        int y = lines.write(why, whyColour, MARGIN);
        for (AnswerFace answer : answers) {
            tops.put(answer.key(), y - MARGIN);
            y = lines.writeOpen(answer, y);
        }
        take(lines, paper);
        return y + MARGIN;
    }

    private void take(AnswerLines lines, Rectangle paper) {
        if (paper != null) {
            cut = lines.cut();
        }
    }
}
