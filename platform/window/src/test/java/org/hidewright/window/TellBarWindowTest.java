package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What is asked above all else is answered from the keyboard, which then is where it was. */
@EnabledOnOs(OS.LINUX)
class TellBarWindowTest {
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

    private String focused() {
        Control focus = real.display().getFocusControl();
        return focus == null ? "nothing" : String.valueOf(focus.getData("id"));
    }

    @Test
    void aQuestionTakesTheKeyboardAndGivesItBack() {
        real.find(Text.class, "roll/round").setFocus();
        real.type("roll/round", "60 mm");
        real.shell.close();
        real.settle();
        assertEquals("told.save", focused());
        real.hands.tab();
        real.hands.tab();
        assertEquals("told.stay", focused());
        real.hands.key('\r');
        assertEquals("roll/round", focused());
    }

    @Test
    void whatOnlyTellsLeavesTheKeyboardWhereItIs() {
        real.find(Text.class, "roll/round").setFocus();
        real.window.broke(new IllegalStateException("for once"));
        real.settle();
        assertEquals("roll/round", focused());
    }
}
