package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.measure.Length;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.piece.PieceView;
import org.hidewright.window.piece.Sheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drawing in a real window. */
class DrawingWindowTest {
    /** Parts hang from the top of the picture. */
    private static final double HIGH = 84;

    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        painted();
    }

    @AfterEach
    void close() {
        real.close();
    }

    private PieceView view() {
        return real.find(PieceView.class, "drawing");
    }

    private void painted() {
        real.until(() -> {
            view().update();
            return !view().sheets().isEmpty();
        });
    }

    /** The colours on the screen where the drawing is. */
    private Set<Integer> colours() {
        painted();
        var area = view().getClientArea();
        Image image = new Image(real.display(), area.width, area.height);
        GC gc = new GC(view());
        gc.copyArea(image, 0, 0);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < data.height; y += 2) {
            for (int x = 0; x < data.width; x += 2) {
                var rgb = data.palette.getRGB(data.getPixel(x, y));
                colours.add(rgb.red << 16 | rgb.green << 8 | rgb.blue);
            }
        }
        return colours;
    }

    private void mouse(int type, double x, double y, int button) {
        Event event = new Event();
        event.x = (int) Math.round(x);
        event.y = (int) Math.round(y);
        event.button = button;
        view().notifyListeners(type, event);
        real.settle();
    }

    private void click(Point place) {
        Sheet sheet = view().sheets().get(0);
        mouse(SWT.MouseDown, sheet.x(place), sheet.y(place), 1);
        mouse(SWT.MouseUp, sheet.x(place), sheet.y(place), 1);
    }

    @Test
    void thePieceIsDrawn() {
        assertEquals("The piece", real.text("drawing.which"));
        assertTrue(view().shown().get(0).label().equals("Bag"), view().shown().toString());
        assertTrue(colours().size() > 3, "lines and letters on paper");
    }

    @Test
    void itIsAsLargeAsThereIsRoom() {
        Sheet sheet = view().sheets().get(0);
        var area = view().getClientArea();
        double width = sheet.box().width() * sheet.pixelsPerMm();
        double height = sheet.box().height() * sheet.pixelsPerMm();
        assertTrue(width <= area.width && height <= area.height);
        assertTrue(width > 0.8 * area.width || height > 0.8 * area.height, width + " x " + height + " in " + area);
    }

    @Test
    void inTrueSizeAMillimetreIsOneOfTheScreen() {
        real.window.view().piece().view().pixelsPerMm(5);
        real.press("drawing.true-size");
        painted();
        Sheet sheet = view().sheets().get(0);
        assertEquals(1, sheet.factor(), 1e-9);
        assertEquals(106 * 5, sheet.x(Point.of(106, 0)) - sheet.x(Point.of(0, 0)), 1e-6, "the cut width, in pixels");
    }

    @Test
    void inTrueSizeWhatIsTooLargeIsSeenFromItsUpperLeftOn() {
        view().pixelsPerMm(40);
        real.press("drawing.true-size");
        painted();
        Sheet sheet = view().sheets().get(0);
        var area = view().getClientArea();
        assertTrue(sheet.box().width() * 40 > area.width && sheet.box().height() * 40 > area.height);
        assertTrue(sheet.left() > 0 && sheet.left() < area.width / 4.0, "left " + sheet.left());
        assertTrue(sheet.top() > 0 && sheet.top() < area.height / 4.0, "top " + sheet.top());
    }

    @Test
    void itGrowsAndShrinksAndFitsAgain() {
        double fitted = view().factor();
        real.press("drawing.larger");
        assertEquals(fitted * 1.25, view().factor(), 1e-9);
        real.press("drawing.smaller");
        real.press("drawing.smaller");
        assertEquals(fitted / 1.25, view().factor(), 1e-9);
        real.press("drawing.fit");
        painted();
        assertEquals(fitted, view().factor(), 1e-9);
    }

    @Test
    void theWheelGrowsRoundThePointer() {
        Sheet before = view().sheets().get(0);
        Point place = before.onDrawing(150, 120);
        Event wheel = new Event();
        wheel.x = 150;
        wheel.y = 120;
        wheel.count = 3;
        view().notifyListeners(SWT.MouseWheel, wheel);
        painted();
        Sheet after = view().sheets().get(0);
        assertTrue(after.factor() > before.factor());
        assertEquals(150, after.x(place), 1);
        assertEquals(120, after.y(place), 1);
        assertTrue(real.text("drawing.told").contains("% of true size"), real.text("drawing.told"));
        real.press("deed.fit");
        assertFalse(real.text("drawing.told").contains("true size"), real.text("drawing.told"));
    }

    @Test
    void whatIsPointedAtIsTold() {
        Sheet sheet = view().sheets().get(0);
        mouse(SWT.MouseMove, sheet.x(Point.of(60, 0)), sheet.y(Point.of(60, 0)), 0);
        assertEquals("Edge to cut, 106.0\u00A0mm long", real.text("drawing.told"));
        mouse(SWT.MouseMove, sheet.x(Point.of(10, 20 - HIGH)), sheet.y(Point.of(10, 20 - HIGH)), 0);
        assertEquals("Opening, 4.0\u00A0mm across", real.text("drawing.told"));
    }

    @Test
    void twoPlacesAreMeasured() {
        click(Point.of(10, 20 - HIGH));
        click(Point.of(90, 20 - HIGH));
        assertTrue(real.text("drawing.told").startsWith("80.0\u00A0mm"), real.text("drawing.told"));
        click(Point.of(0, -HIGH));
        click(Point.of(106, 0));
        assertTrue(
                real.text("drawing.told")
                        .startsWith(
                                real.window.project().orElseThrow().wording().drawn(Length.ofMm(Math.hypot(106, 84)))),
                real.text("drawing.told"));
    }

    @Test
    void aKindOfLineIsLeftOut() {
        int shapes = view().sheets().size();
        assertEquals(1, shapes);
        MenuItem cuts = real.find(MenuItem.class, "drawing.lines.cuts");
        double before = view().sheets().get(0).box().width();
        cuts.setSelection(false);
        cuts.notifyListeners(SWT.Selection, new Event());
        painted();
        assertTrue(view().leftOut().size() == 1);
        cuts.setSelection(true);
        cuts.notifyListeners(SWT.Selection, new Event());
        painted();
        assertEquals(before, view().sheets().get(0).box().width(), 1e-6);
    }

    @Test
    void theLikenessHasTheColourOfTheLeather() {
        int brown = 0x6B4630;
        assertFalse(colours().contains(brown));
        real.press("drawing.likeness");
        assertTrue(colours().contains(brown), "the part is called brown side");
        assertEquals("Outlines", real.text("drawing.likeness"));
        real.press("drawing.likeness");
        assertFalse(colours().contains(brown));
    }

    @Test
    void theDrawingsOfASlipAreShownInstead() {
        assertEquals(
                List.of("The piece", "Roll", "Bag", "Hem"),
                List.of(real.find(Combo.class, "drawing.which").getItems()));
        real.choose("drawing.which", "Hem");
        assertEquals("hem", view().shown().get(0).slip());
        real.press("bag/draw");
        assertEquals("bag", view().shown().get(0).slip());
        assertEquals("Bag", real.text("drawing.which"));
    }
}
