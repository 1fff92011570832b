package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.window.kit.Mats;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** While somebody types, fields stay where they are: whatever is told comes and goes, and so do answers above them. */
class SteadyWindowTest {
    private static final List<String> TYPED = List.of("12 in", "a hand’s breadth", "130 mm", "5 m", "120 mm");

    @TempDir
    Path folder;

    private RealWindow real;

    @AfterEach
    void close() {
        real.close();
    }

    private static int top(Control control) {
        return control.getDisplay().map(control, null, 0, 0).y;
    }

    /** Types one after the other; what is told has to change, or nothing was tried. */
    private void stays(String typed, Control below, List<String> texts) {
        Text field = real.find(Text.class, typed);
        field.setFocus();
        real.settle();
        int at = top(field);
        int other = top(below);
        Label told = (Label) field.getData("whole");
        for (String text : texts) {
            String before = told.getText();
            real.type(typed, text);
            assertNotEquals(before, told.getText(), "what is told after " + text);
            assertEquals(at, top(field), typed + " after " + text + ": " + told.getText());
            assertEquals(other, top(below), "what is below " + typed + " after " + text + ": " + told.getText());
        }
    }

    @Test
    void onASlip() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        real.press("roll/rest");
        String before = real.answers("roll");
        stays("roll/round", below("roll/round"), TYPED);
        stays(
                "roll/round",
                real.find(Text.class, "bag/height"),
                List.of("12 in", "a hand’s breadth", "5 in", "one", "13 in"));
        real.type("roll/round", "50 mm");
        real.until(() -> real.answers("roll").equals(before));
    }

    @Test
    void inTheSteps() {
        Catalogue catalogue = Mats.catalogue();
        real = new RealWindow(folder.resolve("settings"), catalogue, Mats.stock(catalogue));
        real.press("start.begin");
        real.push("begin.next");
        real.press("begin.more");
        stays("mat/width", below("mat/width"), List.of("12 in", "a hand’s breadth", "320 mm", "one", "300 mm"));
    }

    /** The next that can be answered below a field. */
    private Control below(String field) {
        int top = top(real.find(Text.class, field));
        return EveryState.controls(real.shell).stream()
                .filter(control -> control instanceof Text || control instanceof Combo)
                .filter(control -> String.valueOf(control.getData("id")).startsWith(field.replaceAll("/.*", "/")))
                .filter(control -> top(control) > top)
                .findFirst()
                .orElseThrow();
    }
}
