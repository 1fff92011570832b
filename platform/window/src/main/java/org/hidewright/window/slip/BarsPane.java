package org.hidewright.window.slip;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.hidewright.api.document.Bars;
import org.hidewright.window.look.Inks;

/** What a slip shows as bars. Every bar is told when it is pointed at, and by the arrow keys, one after the other. */
final class BarsPane extends Canvas {
    private static final int MARGIN = 2;
    private static final int LEAST_WIDTH = 200;

    private final Inks inks;
    private List<Bars> bars = List.of();
    private int chosen;

    BarsPane(Composite parent, Inks inks) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.inks = inks;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        addPaintListener(event -> draw(event.gc));
        addListener(SWT.MouseMove, event -> tell(at(event.y)));
        addListener(SWT.MouseDown, event -> {
            setFocus();
            at(event.y).ifPresent(this::choose);
        });
        addListener(SWT.FocusIn, event -> choose(chosen));
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.KeyDown, this::key);
        addListener(
                SWT.Traverse,
                event -> event.doit =
                        event.detail != SWT.TRAVERSE_ARROW_NEXT && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? text() : told(event.childID);
            }
        });
        getAccessible().addAccessibleControlListener(new Rows());
    }

    /** The bars as a list to who cannot see them. */
    private final class Rows extends AccessibleControlAdapter {
        @Override
        public void getRole(AccessibleControlEvent event) {
            event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
        }

        @Override
        public void getChildCount(AccessibleControlEvent event) {
            event.detail = rows().size();
        }

        @Override
        public void getFocus(AccessibleControlEvent event) {
            event.childID = isFocusControl() ? chosen : ACC.CHILDID_NONE;
        }
    }

    private List<String> rows() {
        return bars.stream()
                .flatMap(block -> block.bars().stream().map(bar -> told(block, bar)))
                .toList();
    }

    private static String told(Bars block, Bars.Bar bar) {
        String told = bar.label() + ": " + bar.text();
        return block.caption().isEmpty() ? told : told + "\n" + block.caption();
    }

    private String told(int row) {
        List<String> rows = rows();
        return row >= 0 && row < rows.size() ? rows.get(row) : "";
    }

    /** All of it, line by line. */
    String text() {
        return String.join(
                "\n",
                bars.stream()
                        .flatMap(block -> Stream.concat(
                                Stream.of(block.caption()).filter(caption -> !caption.isEmpty()),
                                block.bars().stream().map(bar -> bar.label() + ": " + bar.text())))
                        .toList());
    }

    private OptionalInt at(int y) {
        GC gc = new GC(this);
        OptionalInt row = view(gc, getClientArea().width).at(y - MARGIN);
        gc.dispose();
        return row;
    }

    private void tell(OptionalInt row) {
        String tip = row.isPresent() ? told(row.getAsInt()) : "";
        if (!tip.equals(getToolTipText())) {
            setToolTipText(tip);
        }
    }

    private void choose(int row) {
        chosen = Math.max(0, Math.min(row, rows().size() - 1));
        tell(OptionalInt.of(chosen));
        getAccessible().setFocus(chosen);
        redraw();
    }

    private void key(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN) {
            choose(chosen + 1);
        } else if (event.keyCode == SWT.ARROW_UP) {
            choose(chosen - 1);
        } else if (event.keyCode == SWT.HOME) {
            choose(0);
        } else if (event.keyCode == SWT.END) {
            choose(Integer.MAX_VALUE);
        }
    }

    /** Shows bars; whether they take another height than before. */
    boolean show(List<Bars> shown) {
        if (shown.equals(bars)) {
            return false;
        }
        int before = computeSize(Math.max(LEAST_WIDTH, getSize().x), SWT.DEFAULT).y;
        bars = shown;
        chosen = Math.min(chosen, Math.max(0, rows().size() - 1));
        redraw();
        return computeSize(Math.max(LEAST_WIDTH, getSize().x), SWT.DEFAULT).y != before;
    }

    private BarsView view(GC gc, int width) {
        return new BarsView(gc, inks, bars, Math.max(1, width - 2 * MARGIN));
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        int width = widthHint == SWT.DEFAULT ? LEAST_WIDTH : widthHint;
        GC gc = new GC(this);
        int height = view(gc, width).height() + 2 * MARGIN;
        gc.dispose();
        return new Point(width, heightHint == SWT.DEFAULT ? height : heightHint);
    }

    private void draw(GC gc) {
        if (bars.isEmpty()) {
            return;
        }
        BarsView view = view(gc, getClientArea().width);
        view.draw(MARGIN, MARGIN);
        if (isFocusControl()) {
            Rectangle place = view.place(chosen);
            gc.setForeground(inks.color(inks.palette().accent()));
            gc.setLineWidth(1);
            gc.setLineStyle(SWT.LINE_SOLID);
            gc.drawRectangle(place.x, place.y + MARGIN - 1, place.width + 2 * MARGIN - 1, place.height + 1);
        }
    }
}
