package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;
import org.hidewright.window.EveryState.Setting;
import org.hidewright.window.look.Palette;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a colour says is said by a word, a sign or a weight of letters as well (WCAG 2.2, success criterion 1.4.1): links,
 * refusals, how a slip stands, what differs, what is turned off. Kinds of line have KindsOfLineTest of the
 * documents.
 */
@EnabledOnOs(OS.LINUX)
class SecondSignTest {
    private static final String WELL = "●";
    private static final String LINKED = "⇠";
    private static final String DIFFERS = "≠";

    @TempDir
    Path folder;

    private final Set<String> faults = new LinkedHashSet<>();
    private int linked;
    private int warned;
    private int differing;
    private int off;

    @Test
    void noColourStandsAlone() throws Exception {
        EveryState.walk(folder, new Setting(Locale.ENGLISH, false, 100), (real, state) -> {
            for (Widget widget : real.everything()) {
                look(widget, state);
            }
        });
        assertEquals("", String.join("\n", faults));
        assertTrue(
                linked > 10 && warned > 10 && differing > 0 && off > 0,
                linked + " linked, " + warned + " warnings, " + differing + " differing, " + off + " turned off");
    }

    private void look(Widget widget, String state) {
        if (widget instanceof Text text && is(text.getForeground(), Palette.LIGHT.accent())) {
            linked++;
            boolean said = text.getData("whole") instanceof Label below
                    && below.getText().contains(LINKED);
            require(said, state + ": " + text.getData("id") + " is linked by its colour alone");
        } else if (widget instanceof Label label
                && label.isVisible()
                && is(label.getForeground(), Palette.LIGHT.warning())) {
            warned++;
            boolean sign = label.getText().length() == 1 && !label.getText().equals(WELL);
            boolean words = label.getText().length() > 3;
            require(
                    sign || words || label.getText().isEmpty(),
                    state + ": “" + label.getText() + "” warns by its colour alone");
        } else if (widget instanceof Table table && "compare.lines".equals(table.getData("id"))) {
            for (TableItem item : table.getItems()) {
                boolean differs = is(item.getForeground(), Palette.LIGHT.ink());
                differing += differs ? 1 : 0;
                require(
                        differs == item.getText(0).equals(DIFFERS),
                        state + ": " + item.getText(1) + " differs by its colour alone");
            }
        } else if (widget instanceof Table table && "bundles.lines".equals(table.getData("id"))) {
            for (TableItem item : table.getItems()) {
                boolean isOff = is(item.getForeground(), Palette.LIGHT.quiet());
                off += isOff ? 1 : 0;
                require(
                        isOff != item.getText(3).equals("On."),
                        state + ": " + item.getText(0) + " is off by its colour alone");
            }
        }
    }

    private void require(boolean so, String fault) {
        if (!so) {
            faults.add(fault);
        }
    }

    private static boolean is(Color colour, int rgb) {
        return (colour.getRed() << 16 | colour.getGreen() << 8 | colour.getBlue()) == rgb;
    }
}
