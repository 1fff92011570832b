package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The old values that stand struck out beside new ones: those from before what is being typed, whatever was half typed. */
class OldValuesWindowTest {
    /** Longer than old values stand after all is done. */
    private static final long THOUGHT_MS = 6500;

    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        real.press("roll/rest");
        shows("Length 100.0\u00A0mm");
    }

    @AfterEach
    void close() {
        real.close();
    }

    private void shows(String said) {
        assertTrue(real.answers("roll").contains(said), real.answers("roll"));
    }

    private void think() {
        long end = System.nanoTime() + THOUGHT_MS * 1_000_000;
        real.until(() -> System.nanoTime() > end);
    }

    /** Goes on typing where the keyboard is. */
    private void writes(String text) {
        Text field = real.find(Text.class, "roll/round");
        for (char letter : text.toCharArray()) {
            field.append(String.valueOf(letter));
        }
        real.settle();
    }

    @Test
    void aNumberThatIsThoughtAboutHalfTypedIsNoOldValue() {
        real.find(Text.class, "roll/round").setFocus();
        real.type("roll/round", "6");
        shows("Length 12.0\u00A0mm [100.0\u00A0mm]");
        think();
        writes("0 mm");
        shows("Length 120.0\u00A0mm [100.0\u00A0mm]");
    }

    @Test
    void onceTheFieldIsLeftTheyGoAndTheNextBeginsAnew() {
        real.type("roll/round", "60 mm");
        real.find(Text.class, "bag/height").setFocus();
        real.type("roll/round", "70 mm");
        shows("Length 140.0\u00A0mm [120.0\u00A0mm]");
        real.find(Text.class, "bag/height").setFocus();
        real.settle();
        think();
        think();
        assertFalse(real.answers("roll").contains("["), real.answers("roll"));
    }
}
