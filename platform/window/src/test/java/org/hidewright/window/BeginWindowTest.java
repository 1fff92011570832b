package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.window.kit.Mats;
import org.hidewright.window.piece.PieceView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guided start, from the page to begin at to a project that is saved. */
class BeginWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() {
        Catalogue catalogue = Mats.catalogue();
        real = new RealWindow(folder.resolve("settings"), catalogue, Mats.stock(catalogue));
    }

    @AfterEach
    void close() {
        real.close();
    }

    private String focused() {
        Control focus = real.display().getFocusControl();
        return focus == null ? "nothing" : String.valueOf(focus.getData("id"));
    }

    /** As a maker sees it: the widest line that is drawn. */
    private String drawn() {
        return real.find(PieceView.class, "begin.drawing").shown().isEmpty()
                ? "nothing"
                : String.valueOf(real.find(PieceView.class, "begin.drawing")
                        .shown()
                        .get(0)
                        .drawing()
                        .bounds()
                        .width());
    }

    @Test
    void byKeyboardAloneItLeadsToAProjectWithWhatFollows() {
        assertEquals("start.begin", focused());
        real.hands.key('\r');
        assertEquals("begin.piece", focused());
        assertTrue(real.shell.getDefaultButton() == real.find(Button.class, "begin.next"));
        double before = Double.parseDouble(drawn());

        real.hands.alt('n');
        assertEquals("begin.measured", focused());
        real.hands.tab();
        assertEquals("mat/width", focused());
        real.hands.write("320 mm");
        assertEquals(before + 120, Double.parseDouble(drawn()), 1, "the picture follows");

        real.hands.key('\r'); // the default button
        assertEquals("mat/corners", focused());
        real.hands.key(SWT.ARROW_DOWN);
        assertEquals("Round", real.text("mat/corners"));

        real.hands.alt('n');
        assertEquals("mat/thickness", focused());
        assertEquals("2.4\u00A0mm", real.text("mat/thickness").replace(' ', '\u00A0'));
        real.hands.tab();
        assertEquals("begin.stock.mat/thickness", focused());
        assertEquals("Bridle · 2.4 mm", real.text("begin.stock.mat/thickness"));
        real.hands.key(SWT.ARROW_DOWN);
        assertEquals("Thin side · 1.2 mm", real.text("begin.stock.mat/thickness"));

        real.hands.alt('n');
        assertEquals("begin.follows.mat-weight", focused());
        assertTrue(real.text("begin.comes.mat-weight").contains("0.60"), real.text("begin.comes.mat-weight"));
        assertEquals("Check: A hide as light as this drinks oil.", real.text("begin.told.mat-weight"));

        real.hands.alt('o');
        assertTrue(real.window.project().isPresent());
        assertTrue(real.window.project().orElseThrow().unsaved());
        assertTrue(real.answers("mat-weight").contains("0.60"), real.answers("mat-weight"));
        String text = real.window.project().orElseThrow().project().text();
        assertTrue(text.contains("320 mm") && text.contains("\"thin\""), text);
    }

    @Test
    void eachStepBeginsAtItsHead() {
        real.press("start.begin");
        for (int step = 0; step < 5; step++) {
            ScrolledComposite board = (ScrolledComposite) EveryState.controls(real.shell).stream()
                    .filter(ScrolledComposite.class::isInstance)
                    .findFirst()
                    .orElseThrow();
            Control head = ((Composite) board.getContent()).getChildren()[0];
            int top = real.display().map(head, board, 0, 0).y;
            assertTrue(top >= 0 && top < head.getSize().y, "step " + (step + 1) + " begins at " + top);
            real.push("begin.next");
        }
    }

    @Test
    void aPresetThatSuitsIsTakenWithoutAWord() {
        real.press("start.begin");
        for (int i = 0; i < 5; i++) {
            real.push("begin.next");
        }
        assertTrue(real.answers("mat-weight").contains("0.95"), real.answers("mat-weight"));
        assertEquals("All worked out", real.text("project.look"));
    }

    @Test
    void aSizeByNameIsAskedForByThatName() {
        real.press("start.begin");
        real.push("begin.next");
        Button named = real.find(Button.class, "begin.named");
        named.setSelection(true);
        real.find(Button.class, "begin.measured").setSelection(false);
        named.notifyListeners(SWT.Selection, new Event());
        real.settle();
        assertTrue(real.has(Text.class, "mat-roll/nets"));
        assertFalse(real.has(Text.class, "mat/width"), "it is answered");
        real.type("mat-roll/nets", "5");
        assertEquals(350, Double.parseDouble(drawn()), 1);
        real.press("begin.more");
        assertTrue(real.has(Text.class, "mat/width"), "and can be looked at");
    }

    @Test
    void whatIsWrongIsToldWhereItStands() {
        real.press("start.begin");
        real.push("begin.next");
        real.type("mat/width", "9 m");
        assertTrue(real.text("mat/width/told").contains("900"), real.text("mat/width/told"));
        assertEquals("nothing", drawn());
        real.type("mat/width", "90 mm");
        assertEquals("", real.text("mat/width/told"));
    }

    @Test
    void whatFollowsCanBeLeftOut() {
        real.press("start.begin");
        real.press("begin.step.5");
        Button weight = real.find(Button.class, "begin.follows.mat-weight");
        weight.setSelection(false);
        weight.notifyListeners(SWT.Selection, new Event());
        real.settle();
        real.push("begin.next");
        assertEquals(
                List.of("mat"),
                real.window.project().orElseThrow().project().slips().stream()
                        .map(slip -> slip.id())
                        .toList());
    }

    /** By hand: 200 mm are 7.874 in, so 8 in (1.6 % more, within a fiftieth); 100 mm are 3.937 in; 10 to 900 mm are 0.394 to 35.4 in. */
    @Test
    void theStepsAreInInchesOnceTheyAreSwitchedTo() {
        real.press("start.begin");
        assertEquals("Show inches", real.text("begin.units"));
        real.press("begin.units");
        real.push("begin.next");
        assertEquals("8 in", real.text("mat/width"));
        real.press("begin.more");
        assertEquals(
                "3.937 in", real.find(Text.class, "mat/height").getMessage().replace('\u00A0', ' '));
        assertTrue(
                real.find(Text.class, "mat/height").getToolTipText().contains("0.394 in – 35.4 in"),
                real.find(Text.class, "mat/height").getToolTipText());
        real.type("mat/width", "12 1/2");
        assertEquals(12.5 * 25.4, Double.parseDouble(drawn()), 1, "a number without a unit is of the unit seen");
        real.press("deed.units");
        assertEquals("= 317.5 mm", real.text("mat/width/told").replace('\u00A0', ' '), "what was typed stays");
        assertEquals("Show inches", real.text("begin.units"));
        real.press("deed.units");
        for (int i = 0; i < 4; i++) {
            real.push("begin.next");
        }
        assertTrue(real.window.project().orElseThrow().wording().inches());
        assertEquals(
                "in",
                real.window.project().orElseThrow().project().shown("units").orElse(""));
    }

    @Test
    void theNextProjectIsBegunInTheUnitsSwitchedToLast() {
        real.press("start.begin");
        real.press("begin.units");
        real.push("begin.leave");
        real.close();
        Catalogue catalogue = Mats.catalogue();
        real = new RealWindow(folder.resolve("settings"), catalogue, Mats.stock(catalogue));
        real.press("start.begin");
        real.push("begin.next");
        assertEquals("8 in", real.text("mat/width"));
    }

    @Test
    void closingItFromTheWorkshopLosesNothing() {
        real.press("start.begin");
        real.push("begin.next");
        real.type("mat/width", "90 mm");
        real.press("deed.workshop");
        real.press("deed.quit");
        assertFalse(real.shell.isDisposed());
        real.press("told.stay");
        assertTrue(real.window.project().orElseThrow().project().text().contains("90 mm"));
    }

    @Test
    void whatWasBegunIsSavedWhereTheMakerSays() throws Exception {
        real.press("start.begin");
        real.press("begin.step.5");
        real.push("begin.next");
        Path file = folder.resolve("mine.json");
        real.files.add(file);
        real.press("deed.save");
        assertTrue(Files.readString(file).contains("\"calculator\": \"mat\""), Files.readString(file));
        assertFalse(real.window.project().orElseThrow().unsaved());
        real.press("deed.close");
        assertTrue(real.has(Link.class, "start.recent"));
    }

    @Test
    void leavingItLeadsBackToThePageToBeginAt() {
        real.press("deed.begin");
        assertTrue(real.has(Label.class, "begin.told"));
        real.push("begin.leave");
        assertTrue(real.has(Link.class, "start.begin"));
        assertTrue(real.window.project().isEmpty());
    }

    @Test
    void closingTheWindowOnTheWayLosesNothing() {
        real.press("start.begin");
        real.push("begin.next");
        real.type("mat/width", "90 mm");
        real.press("deed.quit");
        assertFalse(real.shell.isDisposed());
        assertEquals("There are changes that are not saved.", real.text("told.text"));
        real.press("told.stay");
        assertTrue(real.window.project().orElseThrow().project().text().contains("90 mm"));
    }

    @Test
    void whatWasBegunAndNotSavedIsOfferedTheNextTime() {
        real.press("start.begin");
        real.press("begin.step.5");
        real.push("begin.next");
        Path copies = folder.resolve("settings/unsaved");
        real.until(() -> Files.isDirectory(copies) && copies.toFile().list().length > 0);
        real.settle();
        real.shell.dispose(); // as if the program had ended
        Catalogue catalogue = Mats.catalogue();
        RealWindow later = new RealWindow(folder.resolve("settings"), catalogue, Mats.stock(catalogue));
        assertEquals("The last time, changes of the project “Mat” were not saved.", later.text("told.text"));
        later.press("told.take");
        assertTrue(later.answers("mat-weight").contains("0.95"), later.answers("mat-weight"));
        assertTrue(later.window.project().orElseThrow().unsaved());
        later.close();
    }

    @Test
    void enterOnTheNameOfAStepGoesThereAndNotOn() {
        real.press("start.begin");
        real.find(Link.class, "begin.step.4").setFocus();
        real.hands.key('\r');
        assertTrue(real.has(Combo.class, "begin.stock.mat/thickness"), "the fourth step, and not the second");
    }

    @Test
    void theWheelOverAChoiceLeavesTheLeather() {
        real.press("start.begin");
        real.press("begin.step.4");
        Combo leather = real.find(Combo.class, "begin.stock.mat/thickness");
        Event wheel = new Event();
        wheel.count = -3;
        leather.notifyListeners(SWT.MouseVerticalWheel, wheel);
        assertFalse(wheel.doit, "the choice does not get it");
    }

    @Test
    void whatTheStepsTookFromTheWorkshopIsKept() {
        real.press("start.begin");
        real.press("begin.step.5");
        real.push("begin.next");
        assertTrue(real.window.project().orElseThrow().project().kept().isPresent());
        assertEquals(
                List.of(),
                real.window.project().orElseThrow().face().orElseThrow().differs());
    }

    /** Faster than it is worked out: the row is chosen and the project opened before the other thread has seen either. */
    @Test
    void aRowTakenInTheLastMomentIsKept() {
        real.press("start.begin");
        real.press("begin.step.4");
        Combo leather = real.find(Combo.class, "begin.stock.mat/thickness");
        leather.select(List.of(leather.getItems()).indexOf("Thin side · 1.2 mm"));
        leather.notifyListeners(SWT.Selection, new Event());
        for (int i = 0; i < 2; i++) {
            real.find(Button.class, "begin.next").notifyListeners(SWT.Selection, new Event());
        }
        real.settle();
        assertEquals(
                List.of("thin"),
                real.window.project().orElseThrow().project().kept().orElseThrow().rows("leather").stream()
                        .map(row -> row.id())
                        .toList());
        assertEquals(
                List.of(),
                real.window.project().orElseThrow().face().orElseThrow().differs());
    }

    @Test
    void withoutAWorkshopNothingIsKept() {
        real.close();
        real = new RealWindow(folder.resolve("settings"), Mats.catalogue());
        real.press("start.begin");
        real.press("begin.step.5");
        real.push("begin.next");
        assertTrue(real.window.project().orElseThrow().project().kept().isEmpty());
    }
}
