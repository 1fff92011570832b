package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.window.kit.Mats;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.slip.SlipCard;
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

    /** As when ranges are worked out while the pointer is on its way: what is above the field comes and goes late. */
    @Test
    void whatThePointerIsAtOnAnotherSlip() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        Text hem = real.find(Text.class, "hem/round");
        real.hands.point(hem, 8, 8);
        int at = top(hem);
        Set<Integer> within = new HashSet<>();
        for (String text : List.of("48-52 mm", "50 mm", "a hand’s breadth", "45-55 mm", "50 mm")) {
            real.window.project().orElseThrow().type("roll", AnswerPath.of("round"), text);
            real.settle();
            within.add(top(hem) - top(card(hem)));
            assertEquals(at, top(hem), "hem/round after " + text);
        }
        assertTrue(within.size() > 1, "what is above it on its slip comes and goes: " + within);
    }

    /** As when a project is opened by a key while the pointer lies where its slips come to be. */
    @Test
    void aBoardBeneathAPointerAtRestBeginsAtItsBeginning() throws Exception {
        Path bag = Nets.bag(folder);
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), bag);
        Text low = real.find(Text.class, "bag/height");
        real.hands.point(low, 8, 8);
        real.press("deed.close");
        real.window.open(bag);
        real.settle();
        assertEquals(0, board(real.find(Text.class, "roll/round")).getOrigin().y);
    }

    private static ScrolledComposite board(Control in) {
        Control at = in;
        while (!(at instanceof ScrolledComposite)) {
            at = at.getParent();
        }
        return (ScrolledComposite) at;
    }

    /** The field that was typed into is left by a click on what is below it. */
    @Test
    void whatIsClickedWhenAFieldWithMuchToldIsLeft() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        real.press("roll/rest");
        Text field = real.find(Text.class, "roll/round");
        Control below = below("roll/round");
        Label told = (Label) field.getData("whole");
        Set<Integer> heights = new HashSet<>();
        for (String text : List.of("12 in", "50 mm")) {
            real.type("roll/round", text);
            real.hands.point(below, 8, 8);
            int at = top(below);
            below.setFocus();
            real.settle();
            heights.add(told.getSize().y);
            assertEquals(at, top(below), "what is below after " + text);
        }
        assertEquals(2, heights.size(), "what is told takes its room once the field is left: " + heights);
    }

    private static Control card(Control in) {
        Control at = in;
        while (!(at instanceof SlipCard)) {
            at = at.getParent();
        }
        return at;
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
