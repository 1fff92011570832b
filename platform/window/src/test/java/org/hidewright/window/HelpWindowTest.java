package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Help where one stands: the line of a question and the drawing of what it measures, below its field. */
class HelpWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
    }

    @AfterEach
    void close() {
        real.close();
    }

    private void help(String question) {
        Event key = new Event();
        key.keyCode = SWT.F1;
        real.find(Text.class, question).notifyListeners(SWT.KeyDown, key);
    }

    @Test
    void theKeyForHelpOpensItBelowTheFieldAndClosesItAgain() {
        int before = real.find(Text.class, "roll/round").getParent().getSize().y;
        help("roll/round");
        Composite help = real.find(Composite.class, "roll/round/help");
        Text field = real.find(Text.class, "roll/round");
        assertTrue(help.getLocation().y >= field.getLocation().y + field.getSize().y, "below its field");
        assertTrue(field.getParent().getSize().y > before, "the slip has made room");
        help("roll/round");
        assertFalse(real.has(Composite.class, "roll/round/help"));
        assertEquals(before, field.getParent().getSize().y);
    }

    @Test
    void whatIsMeasuredIsDrawnWithRoomForIt() {
        help("roll/round");
        Canvas picture = real.find(Canvas.class, "roll/round/picture");
        assertTrue(picture.getSize().x >= 200 && picture.getSize().y >= 120, "" + picture.getSize());
        assertTrue(picture.getParent().getSize().y >= picture.getSize().y + picture.getLocation().y);
    }

    @Test
    void aQuestionWithoutADrawingHasItsLineAlone() {
        help("bag/height");
        assertTrue(real.has(Composite.class, "bag/height/help"));
        assertFalse(real.has(Canvas.class, "bag/height/picture"));
    }

    @Test
    void aFieldSaysThatThereIsADrawing() {
        assertTrue(real.find(Text.class, "roll/round").getToolTipText().contains("F1"));
        assertFalse(real.find(Text.class, "bag/height").getToolTipText().contains("F1"));
    }

    @Test
    void aClickOnTheNameOfAQuestionDoesTheSame() {
        Text field = real.find(Text.class, "roll/round");
        Label name = EveryState.controls(field.getParent()).stream()
                .filter(control -> control instanceof Label && control.getData("equal") == field)
                .map(Label.class::cast)
                .findFirst()
                .orElseThrow();
        name.notifyListeners(SWT.MouseUp, new Event());
        assertTrue(real.has(Composite.class, "roll/round/help"));
        name.notifyListeners(SWT.MouseUp, new Event());
        assertFalse(real.has(Composite.class, "roll/round/help"));
    }

    @Test
    void itStaysWhileTheAnswerIsTyped() {
        help("roll/round");
        real.type("roll/round", "70 mm");
        assertTrue(real.has(Composite.class, "roll/round/help"));
    }
}
