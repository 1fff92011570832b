package org.hidewright.window.piece;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.window.look.FocusRing;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Wrapped;
import org.hidewright.window.look.WritesItself;
import org.hidewright.window.model.DrawingFace;

/**
 * Drawings of one slip beside each other, all in one size: as large as their place lets them be, or larger, or in true size.
 * What is pointed at is told; two places that are clicked are measured.
 */
public final class PieceView extends Canvas implements WritesItself {
    private static final double MM_PER_INCH = 25.4;
    private static final double STEP = 1.25;
    private static final double SMALLEST = 0.02;
    private static final double LARGEST = 40;
    /** How near, in pixels, something must be to be pointed at. */
    private static final int REACH = 9;

    private final Inks inks;
    private final Set<LineKind> left = EnumSet.noneOf(LineKind.class);
    private List<DrawingFace> faces = List.of();
    private String instead = "";
    private String about = "";
    private final Cross cross = new Cross();
    private List<Placed> planned = List.of();
    private boolean likeness;
    /** Paper millimetres for one of the thing; 0 as long as it fits itself into its place. */
    private double factor;

    private double pixelsPerMm;
    private double panX;
    private double panY;
    private Event grabbed;
    /** Whether what is larger than its place is to be seen from its upper left on. */
    private boolean fromStart;
    /** What is to stay where it is while all is enlarged; null where nothing is. */
    private Held held;

    private final Measuring measuring = new Measuring();

    private Consumer<String> told = text -> {};
    private Consumer<Pointing.Met> met = found -> {};
    private DoubleFunction<String> lengths = Double::toString;
    private Runnable sized = () -> {};

    /** A place of a drawing that lies somewhere in the view. */
    private record Held(int drawing, Point place, int x, int y) {}

    public PieceView(Composite parent, Inks inks) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.inks = inks;
        this.pixelsPerMm = getDisplay().getDPI().x / MM_PER_INCH;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        addPaintListener(event -> paint(event.gc));
        addListener(SWT.Resize, event -> forget());
        addListener(SWT.MouseWheel, event -> zoomAt(event.count > 0 ? STEP : 1 / STEP, event.x, event.y));
        addListener(SWT.MouseDown, event -> grabbed = event);
        addListener(SWT.MouseUp, this::released);
        addListener(SWT.MouseMove, this::moved);
        addListener(SWT.KeyDown, this::key);
        FocusRing.on(this, inks);
        Spoken.name(
                this,
                () -> instead()
                        + String.join(", ", faces.stream().map(this::inWords).toList()));
        Spoken.about(this, () -> about);
    }

    /**
     * Who hears of what is pointed at and what is measured.
     *
     * @param told of two places that were measured, in words
     * @param met of a line or hole under the pointer; null where there is none
     * @param lengths writes millimetres in the units that are shown
     * @param sized called when it has become larger or smaller
     */
    public void tells(
            Consumer<String> told, Consumer<Pointing.Met> met, DoubleFunction<String> lengths, Runnable sized) {
        this.told = told;
        this.met = met;
        this.lengths = lengths;
        this.sized = sized;
    }

    /** What a drawing is called and how large what it shows is. */
    private String inWords(DrawingFace face) {
        Box box = face.drawing().bounds();
        return face.label() + " " + lengths.apply(box.width()) + " × " + lengths.apply(box.height());
    }

    /** What else those hear of it who do not see it. */
    public void about(String words) {
        about = words;
    }

    /**
     * Shows drawings.
     *
     * @param otherwise what is said where there are none
     */
    public void show(List<DrawingFace> shown, String otherwise) {
        if (!shown.equals(faces) || !otherwise.equals(instead)) {
            faces = shown;
            instead = otherwise;
            forget();
        }
    }

    /** What is said in place of a drawing; empty where there is one. */
    public String instead() {
        return faces.isEmpty() ? instead : "";
    }

    public List<DrawingFace> shown() {
        return faces;
    }

    /** Shows parts in the colour of their leather, or their lines. */
    public void likeness(boolean on) {
        likeness = on;
        redraw();
    }

    public boolean isLikeness() {
        return likeness;
    }

    /** Shows a kind of line, or leaves it out. */
    public void show(LineKind kind, boolean on) {
        if (on ? left.remove(kind) : left.add(kind)) {
            forget();
        }
    }

    /** The kinds of line that are left out. */
    public Set<LineKind> leftOut() {
        return Set.copyOf(left);
    }

    /** As large as its place lets it be. */
    public void fit() {
        factor = 0;
        panX = 0;
        panY = 0;
        forget();
    }

    /** In true size, as far as the screen’s own measure goes; what is larger than its place from its upper left on. */
    public void trueSize() {
        factor = 1;
        fromStart = true;
        forget();
    }

    /** Larger by a factor, round the middle. */
    public void zoom(double by) {
        zoomAt(by, getClientArea().width / 2, getClientArea().height / 2);
    }

    private void zoomAt(double by, int x, int y) {
        double now = factor();
        held = at(x, y).map(on -> new Held(planned.indexOf(on), on.sheet().onDrawing(x, y), x, y))
                .orElse(null);
        factor = Math.max(SMALLEST, Math.min(LARGEST, now * by));
        double grown = factor / now;
        Rectangle area = getClientArea();
        panX = (panX + area.width / 2.0 - x) * grown + x - area.width / 2.0;
        panY = (panY + area.height / 2.0 - y) * grown + y - area.height / 2.0;
        forget();
        sized.run();
    }

    /** How much larger than life it is shown, 1 for true size. */
    public double factor() {
        if (factor > 0) {
            return factor;
        }
        return planned.isEmpty() ? 1 : planned.get(0).sheet().factor();
    }

    /** The measure of this screen. */
    public void pixelsPerMm(double pixels) {
        pixelsPerMm = pixels;
        forget();
    }

    public double pixelsPerMm() {
        return pixelsPerMm;
    }

    private void forget() {
        measuring.clear();
        shift();
    }

    /** What was measured stays. */
    private void shift() {
        planned = List.of();
        redraw();
    }

    private void key(Event event) {
        if (event.keyCode == SWT.ESC) {
            measuring.clear();
            cross.hide();
            redraw();
        } else if ((event.stateMask & SWT.MOD2) != 0 && cross.move(event.keyCode, REACH, getClientArea())) {
            meet(cross.x(), cross.y());
            redraw();
        } else if (event.character == ' ' || event.character == SWT.CR) {
            cross.show(getClientArea());
            take(cross.x(), cross.y());
        } else if (event.character == '+' || event.character == '=') {
            zoom(STEP);
        } else if (event.character == '-') {
            zoom(1 / STEP);
        } else {
            int step = REACH * 4;
            panX += event.keyCode == SWT.ARROW_LEFT ? step : event.keyCode == SWT.ARROW_RIGHT ? -step : 0;
            panY += event.keyCode == SWT.ARROW_UP ? step : event.keyCode == SWT.ARROW_DOWN ? -step : 0;
            forget();
        }
    }

    private void moved(Event event) {
        if (grabbed != null && (event.stateMask & SWT.BUTTON1) != 0) {
            panX += event.x - grabbed.x;
            panY += event.y - grabbed.y;
            grabbed.x = event.x;
            grabbed.y = event.y;
            grabbed.detail = 1; // dragged, not clicked
            shift();
            return;
        }
        meet(event.x, event.y);
    }

    private void meet(int x, int y) {
        met.accept(at(x, y).flatMap(on -> Pointing.at(
                        on.drawing(), on.sheet().onDrawing(x, y), on.sheet().mm(REACH)))
                .orElse(null));
    }

    private Optional<Placed> at(int x, int y) {
        return planned.stream().filter(one -> one.sheet().holds(x, y)).findFirst();
    }

    private void released(Event event) {
        boolean click = grabbed != null && grabbed.detail == 0;
        grabbed = null;
        setFocus();
        if (click) {
            take(event.x, event.y);
        }
    }

    /** Takes a place to measure from or to. */
    private void take(int x, int y) {
        Optional<Placed> on = at(x, y);
        if (on.isEmpty()) {
            redraw();
            return;
        }
        Sheet sheet = on.get().sheet();
        measuring.take(
                planned.indexOf(on.get()), Pointing.corner(on.get().drawing(), sheet.onDrawing(x, y), sheet.mm(REACH)));
        if (measuring.isWhole()) {
            told.accept(measuring.told(lengths));
        }
        redraw();
    }

    private void paint(GC gc) {
        if (planned.isEmpty()) {
            plan(gc);
        }
        say(gc);
        GcCanvas canvas = new GcCanvas(gc, inks, pixelsPerMm);
        for (Placed one : planned) {
            if (likeness && !one.face().parts().isEmpty()) {
                new Likeness(gc, inks, one.sheet()).draw(one.face().parts());
            } else {
                one.plan()
                        .draw(
                                canvas,
                                one.sheet().left() / pixelsPerMm,
                                one.sheet().top() / pixelsPerMm);
            }
            caption(gc, one);
        }
        new Legend(gc, inks, getClientArea()).draw(planned);
        measuring.draw(gc, inks, planned, lengths);
        if (isFocusControl()) {
            cross.draw(gc, inks);
        }
    }

    private void say(GC gc) {
        Rectangle area = getClientArea();
        gc.setFont(inks.font(1, false));
        gc.setForeground(inks.color(inks.palette().quiet()));
        int y = area.height / 3;
        for (String line : Wrapped.within(gc, instead(), area.width).split("\n")) {
            gc.drawText(line, Math.max(0, (area.width - gc.textExtent(line).x) / 2), y, true);
            y += gc.getFontMetrics().getHeight();
        }
    }

    private void caption(GC gc, Placed one) {
        if (planned.size() > 1) {
            gc.setFont(inks.font(1, false));
            gc.setForeground(inks.color(inks.palette().quiet()));
            gc.drawText(
                    one.face().label(),
                    (int) one.sheet().left(),
                    (int) (one.sheet().top() - gc.getFontMetrics().getHeight() - 2),
                    true);
        }
    }

    @Override
    public List<String> cut() {
        Rectangle area = getClientArea();
        GC gc = new GC(this);
        gc.setFont(inks.font(1, false));
        List<String> written = new ArrayList<>(
                Wrapped.within(gc, instead(), area.width).lines().toList());
        written.addAll(new Legend(gc, inks, area).lines(planned));
        if (factor == 0 && planned.size() > 1) { // what is shifted out of sight was shifted by the maker
            planned.forEach(one -> written.add(one.face().label()));
        }
        List<String> cut = written.stream()
                .filter(text -> gc.textExtent(text).x > area.width)
                .toList();
        gc.dispose();
        return cut;
    }

    private void plan(GC gc) {
        List<Placed> middle = new Arrangement(gc, inks, getClientArea(), pixelsPerMm).of(faces, left, factor);
        if (held != null && held.drawing() < middle.size()) {
            Sheet sheet = middle.get(held.drawing()).sheet();
            panX = held.x() - sheet.x(held.place());
            panY = held.y() - sheet.y(held.place());
        }
        held = null;
        if (fromStart) {
            panX = reach(middle.stream().mapToDouble(one -> one.sheet().left()));
            panY = reach(middle.stream().mapToDouble(one -> one.sheet().top()));
        }
        fromStart = false;
        planned = middle.stream().map(one -> one.shifted(panX, panY)).toList();
    }

    /** How far all has to move for its edge to be seen; 0 where it is. */
    private double reach(DoubleStream edges) {
        return Math.max(0, 2 * inks.em() - edges.min().orElse(0));
    }

    /** Where each drawing lies, as it was painted last. */
    public List<Sheet> sheets() {
        return planned.stream().map(Placed::sheet).toList();
    }
}
