package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Sash;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;
import org.hidewright.window.EveryState.Setting;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Everything by keyboard, in every state: the key Tab comes to all that takes the pointer, in the order it is read, never stays
 * anywhere, and where it is can be seen (WCAG 2.2, success criteria 2.1.1, 2.1.2, 2.4.3, 2.4.7 and 1.4.11).
 */
@EnabledOnOs(OS.LINUX)
class KeyboardTest {
    private static final int MOST_STEPS = 400;
    private static final long PATIENCE_MS = 400;
    private static final long PAINTED_MS = 120;
    /** A busy screen paints late. */
    private static final int ROUNDS = 5;

    private static final double SEEN = 3;
    /** The mark of the focus may lie round a control. */
    private static final int ROUND = 3;

    @TempDir
    Path folder;

    private final Set<String> faults = new LinkedHashSet<>();
    private final Set<String> compared = new HashSet<>();
    private int reached;

    @Test
    void tabComesToEverythingAndIsSeenThere() throws Exception {
        int states = EveryState.walk(folder, Setting.USUAL, (real, state) -> {
            List<Control> round = round(real, state);
            reached += round.size();
            order(round, state);
            Set<Control> met = new HashSet<>(round);
            for (Control control : EveryState.controls(real.shell)) {
                if (takesPointer(control) && !met.contains(control) && !hasEqual(real, control, met)) {
                    faults.add(state + ": " + name(control) + " is not reached");
                }
            }
        });
        assertTrue(reached > 10 * states, reached + " reached in " + states + " states");
        assertTrue(compared.size() > 30, "seen with and without focus: " + compared);
        assertEquals("", String.join("\n", faults));
    }

    /** Where Tab leads, until it is where it was. */
    private List<Control> round(RealWindow real, String state) {
        real.shell.forceActive();
        real.shell.traverse(SWT.TRAVERSE_TAB_NEXT);
        wait(real, PAINTED_MS);
        Control first = real.display().getFocusControl();
        assertTrue(first != null, state + ": nothing has the focus");
        List<Control> round = new ArrayList<>();
        Control now = first;
        while (round.size() < MOST_STEPS) {
            round.add(now);
            boolean look = compared.add(name(now));
            wait(real, look ? PAINTED_MS : 0);
            Point place = now.toDisplay(0, 0);
            Rectangle area = ScreenInk.seen(now, -ROUND);
            ScreenInk with = look ? ScreenInk.now(real.display()) : null;
            Control next = tab(real, now);
            if (next == null || next == now) {
                faults.add(state + ": Tab stays at " + name(now));
                break;
            }
            if (look && !now.isDisposed() && now.toDisplay(0, 0).equals(place)) {
                double change = 1;
                for (int i = 0; i < ROUNDS && change < SEEN; i++) {
                    wait(real, PAINTED_MS);
                    change = with.change(ScreenInk.now(real.display()), area);
                }
                if (change < SEEN) {
                    faults.add(String.format(
                            Locale.ROOT, "%s: focus of %s is hard to see: %.2f", state, name(now), change));
                }
            } else if (look) {
                compared.remove(name(now));
            }
            now = next;
            if (now == first || round.contains(now)) {
                break;
            }
        }
        return round;
    }

    private static Control tab(RealWindow real, Control from) {
        for (int type : new int[] {SWT.KeyDown, SWT.KeyUp}) {
            Event key = new Event();
            key.type = type;
            key.keyCode = SWT.TAB;
            key.character = SWT.TAB;
            real.display().post(key);
        }
        long end = System.nanoTime() + PATIENCE_MS * 1_000_000;
        while (System.nanoTime() < end && real.display().getFocusControl() == from) {
            if (!real.display().readAndDispatch()) {
                real.display().timerExec(2, () -> {});
                real.display().sleep();
            }
        }
        return real.display().getFocusControl();
    }

    private static void wait(RealWindow real, long ms) {
        long end = System.nanoTime() + ms * 1_000_000;
        real.until(() -> System.nanoTime() > end);
    }

    /** From the upper left to the lower right, among those that stand together. */
    private void order(List<Control> round, String state) {
        for (int i = 1; i < round.size(); i++) {
            Control before = round.get(i - 1);
            Control after = round.get(i);
            if (before.getParent() == after.getParent()) {
                Rectangle one = before.getBounds();
                Rectangle other = after.getBounds();
                boolean below = other.y >= one.y + one.height / 2;
                boolean beside = other.x >= one.x && other.y + other.height > one.y;
                if (!below && !beside) {
                    faults.add(
                            state + ": after " + name(before) + " comes " + name(after) + ", which stands before it");
                }
            }
        }
    }

    private static boolean takesPointer(Control control) {
        boolean own = control.isListening(SWT.MouseDown)
                || control.isListening(SWT.MouseUp)
                || control instanceof Canvas && control.isListening(SWT.MouseMove)
                || control.getData("drag") != null;
        boolean systems = control instanceof Link
                || control instanceof Text
                || control instanceof Combo
                || control instanceof org.eclipse.swt.widgets.List
                || control instanceof org.eclipse.swt.widgets.Table
                || control instanceof org.eclipse.swt.widgets.Tree
                || control instanceof org.eclipse.swt.widgets.Button
                || control instanceof Sash;
        return control.isEnabled() && (own || systems);
    }

    /** Whether a line of a menu does the same, or a key in a control that is reached. */
    private static boolean hasEqual(RealWindow real, Control control, Set<Control> met) {
        Object equal = control instanceof Sash ? "deed.wider" : control.getData("equal");
        if (equal instanceof Control other) {
            return met.contains(other);
        }
        return equal != null && real.has(MenuItem.class, String.valueOf(equal));
    }

    private static String name(Control control) {
        Object id = control.getData("id");
        return control.getClass().getSimpleName() + " "
                + (id != null ? id : control instanceof Label label ? label.getText() : "");
    }

    @Test
    void everyLineOfAMenuHasAKeyOfItsOwn() throws Exception {
        try (RealWindow real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.everything(folder))) {
            real.has(MenuItem.class, ""); // opens them all
            int lines = 0;
            for (Widget widget : real.everything()) {
                if (widget instanceof Menu menu) {
                    lines += keys(menu);
                }
            }
            assertTrue(lines > 60, lines + " lines");
        }
        assertEquals("", String.join("\n", faults));
    }

    private int keys(Menu menu) {
        Set<String> taken = new HashSet<>();
        int lines = 0;
        for (MenuItem item : menu.getItems()) {
            String text = item.getText();
            boolean line = (item.getStyle() & SWT.SEPARATOR) == 0;
            String letter = text.replace("&&", "").replaceAll("(?s)[^&]*(?:&(.).*)?", "$1");
            if (line && item.isEnabled() && letter.isEmpty() && item.getAccelerator() == 0) {
                faults.add("no key for “" + text + "”");
            } else if (line && !letter.isEmpty() && !taken.add(letter.toLowerCase(Locale.ROOT))) {
                faults.add("the key of “" + text + "” is another’s too");
            }
            lines += line ? 1 : 0;
        }
        return lines;
    }

    @Test
    void aFieldForATitleEndsWithEnterAndWithEscape() throws Exception {
        try (RealWindow real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.everything(folder))) {
            real.press("roll/title");
            Event escape = new Event();
            escape.keyCode = SWT.ESC;
            real.find(Text.class, "roll/title-field").notifyListeners(SWT.KeyDown, escape);
            real.settle();
            assertFalse(real.has(Text.class, "roll/title-field"));
            real.press("roll/title");
            real.find(Text.class, "roll/title-field").notifyListeners(SWT.DefaultSelection, new Event());
            real.settle();
            assertFalse(real.has(Text.class, "roll/title-field"));
        }
    }

    @Test
    void aDrawingIsMeasuredWithoutThePointer() throws Exception {
        try (RealWindow real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.everything(folder))) {
            Control drawing = real.find(Canvas.class, "drawing");
            key(drawing, ' ', 0, 0);
            for (int i = 0; i < 8; i++) {
                key(drawing, (char) 0, SWT.ARROW_UP, SWT.MOD2);
            }
            key(drawing, ' ', 0, 0);
            real.settle();
            assertTrue(real.text("drawing.told").contains("mm"), real.text("drawing.told"));
        }
    }

    private static void key(Control control, char character, int code, int modifiers) {
        Event event = new Event();
        event.character = character;
        event.keyCode = code;
        event.stateMask = modifiers;
        control.notifyListeners(SWT.KeyDown, event);
    }
}
