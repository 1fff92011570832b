package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is typed by keys of the screen comes whole into the field that has the keyboard, and into no other. */
class TypedKeysWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        real.shell.forceActive();
    }

    @AfterEach
    void close() {
        real.close();
    }

    private Text field(String id) {
        return real.find(Text.class, id);
    }

    private String answer(String slip, String question) {
        return real.window
                .project()
                .orElseThrow()
                .typed(slip, AnswerPath.of(question))
                .orElse("");
    }

    /** The letters come faster than anything is worked out, so that the link is still shown while they do. */
    @Test
    void theFirstLetterAloneTakesTheLinkAway() {
        Text width = field("bag/width");
        assertFalse(width.getText().isEmpty());
        width.setFocus();
        real.hands.write("123.5");
        real.until(() -> width.getText().endsWith("5"));
        real.settle();
        assertEquals("\"123.5\"", answer("bag", "width"));
        assertEquals("123.5", width.getText());
    }

    @Test
    void whatIsTakenBackStandsInTheFieldAgain() {
        Text width = field("bag/width");
        String linked = width.getText();
        width.setFocus();
        real.hands.write("5");
        real.until(() -> !answer("bag", "width").contains("roll"));
        real.window.project().orElseThrow().undo();
        real.settle();
        assertTrue(answer("bag", "width").contains("roll"), answer("bag", "width"));
        assertEquals(linked, width.getText());
    }

    /** Its question then stands at its usual answer, and those are folded away as soon as they are three. */
    @Test
    void aFieldThatIsEmptiedStaysUnderTheKeys() {
        Text turns = field("hem/turns");
        assertEquals("1", turns.getText());
        assertFalse(real.has(Text.class, "roll/turns"), "what stands at its usual answer is folded away");
        turns.setFocus();
        real.hands.key(SWT.BS);
        real.until(() -> answer("hem", "turns").isEmpty());
        real.settle();
        assertEquals("", answer("hem", "turns"));
        assertSame(turns, real.display().getFocusControl());
        real.hands.write("4");
        real.until(() -> !answer("hem", "turns").isEmpty()); // a busy screen sends keys late
        real.settle();
        assertEquals("\"4\"", answer("hem", "turns"));
        assertSame(turns, real.display().getFocusControl());
    }
}
