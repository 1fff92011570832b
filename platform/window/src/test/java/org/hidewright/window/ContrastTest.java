package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.EveryState.Setting;
import org.hidewright.window.look.WritesItself;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Contrast as it is painted, in every state and both themes.
 *
 * <p>Source: WCAG 2.2, W3C Recommendation: definitions of contrast ratio and relative luminance; success criteria 1.4.3 (text
 * 4.5 to 1) and 1.4.11 (edges of what can be worked on, and what carries meaning, 3 to 1). What is disabled is exempt there. As
 * letters are smoothed, the clearest pixel of a word counts; the largest letters are held to 4.5 as well.
 */
@EnabledOnOs(OS.LINUX)
class ContrastTest {
    private static final double TEXT = 4.5;
    private static final double GRAPHIC = 3;
    /** What is painted by the system round what can be typed into or chosen, in pixels. */
    private static final int EDGE = 3;
    /** Wider than between two words, in pixels. */
    private static final int GAP = 14;

    private static final long PAINTED_MS = 150;
    private static final int LEAST_WORDS = 10;

    @TempDir
    Path folder;

    private final Set<String> faults = new LinkedHashSet<>();
    private int looked;

    @Test
    void whateverIsReadIsClearInBothThemes() throws Exception {
        for (boolean dark : new boolean[] {false, true}) {
            Setting setting = new Setting(Locale.ENGLISH, dark, 100);
            int before = looked;
            int states = EveryState.walk(folder, setting, (real, state) -> {
                long end = System.nanoTime() + PAINTED_MS * 1_000_000;
                real.until(() -> System.nanoTime() > end);
                ScreenInk ink = ScreenInk.now(real.display());
                for (Control control : EveryState.controls(real.shell)) {
                    look(ink, control, setting + ", " + state + ": ");
                }
            });
            assertTrue(looked - before > LEAST_WORDS * states, (looked - before) + " words in " + states + " states");
        }
        assertEquals("", String.join("\n", faults), looked + " words");
    }

    private void look(ScreenInk ink, Control control, String where) {
        boolean box = control instanceof Text || control instanceof Combo;
        boolean lines = control instanceof Table || control instanceof org.eclipse.swt.widgets.List;
        boolean writes = control instanceof Label || control instanceof Link || control instanceof WritesItself;
        if (!control.isEnabled() || !box && !lines && !writes) {
            return;
        }
        if (control instanceof Canvas && "drawing".equals(control.getData("id"))) {
            return; // what is drawn is held to its palette: see PaletteTest
        }
        Rectangle seen = ScreenInk.seen(control, box || lines ? EDGE : 0);
        int high = Math.min(seen.height, control.getSize().y - (box ? 2 * EDGE : 0));
        if (seen.isEmpty() || box && high < control.getSize().y - 2 * EDGE) {
            return; // scrolled out of sight
        }
        for (ScreenInk.Word word : ink.words(inside(control, seen), GAP)) {
            looked++;
            boolean cutByBoard =
                    word.place().y <= seen.y || word.place().y + word.place().height >= seen.y + seen.height;
            if (word.contrast() < TEXT && !(cutByBoard && !box)) {
                faults.add(where
                        + name(control)
                        + String.format(Locale.ROOT, " %.2f at ", word.contrast())
                        + word.place());
            }
        }
        if (box) {
            edge(ink, control, where);
        }
    }

    /** Without the bars that scroll it, which are the system’s. */
    private static Rectangle inside(Control control, Rectangle seen) {
        if (control instanceof org.eclipse.swt.widgets.Scrollable scrolls
                && !(control instanceof Text)
                && !(control instanceof Combo)) {
            Rectangle room = scrolls.getClientArea();
            int head = control instanceof Table table ? table.getHeaderHeight() : 0; // lies above what scrolls
            room = new Rectangle(room.x, room.y - head, room.width, room.height + head);
            return seen.intersection(control.getDisplay().map(control, null, room));
        }
        return seen;
    }

    /** What can be typed into has an edge that is seen. */
    private void edge(ScreenInk ink, Control control, String where) {
        looked++;
        Rectangle all = ScreenInk.seen(control, 0);
        int behind = ink.behind(new Rectangle(all.x + EDGE, all.y + EDGE, all.width - 2 * EDGE, all.height - 2 * EDGE));
        double most = 1;
        int y = all.y + all.height / 2;
        for (int x = all.x; x < all.x + EDGE; x++) {
            most = Math.max(most, org.hidewright.window.look.Palette.contrast(ink.at(x, y), behind));
        }
        if (most < GRAPHIC) {
            faults.add(where + name(control) + String.format(Locale.ROOT, " edge %.2f at ", most) + all);
        }
    }

    private static String name(Control control) {
        Object id = control.getData("id");
        return control.getClass().getSimpleName() + " "
                + (id != null ? id : control instanceof Label label ? "“" + label.getText() + "”" : "");
    }
}
