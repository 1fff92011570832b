package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.window.kit.FakeWriters;
import org.hidewright.window.kit.Mats;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.look.Palette;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The letters that press the buttons of the steps: each button has one of its own, underlined for everybody to see. */
class LettersWindowTest {
    private static final int STEPS = 5;
    private static final long PAINTED_MS = 150;
    /** A line of one dot is hardly less than this against what is behind it. */
    private static final double SEEN = 1.5;

    @TempDir
    Path folder;

    private RealWindow real;

    @AfterEach
    void close() {
        real.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyButtonOfTheStepsShowsALetterThatNoMenuHas(String language) {
        Catalogue catalogue = Mats.catalogue();
        real = new RealWindow(
                folder.resolve("settings"),
                catalogue,
                Mats.stock(catalogue),
                null,
                FakeWriters.all(),
                Locale.forLanguageTag(language),
                Palette.LIGHT);
        real.press("start.begin");
        Set<String> said = new HashSet<>();
        for (int step = 1; step <= STEPS; step++) {
            Set<String> taken = new HashSet<>();
            for (MenuItem menu : real.shell.getMenuBar().getItems()) {
                taken.add(letter(menu.getText()));
            }
            for (Button button : buttons()) {
                assertTrue(taken.add(letter(button.getText())), button.getText() + " in step " + step + ": " + taken);
                if (button.isEnabled()) { // else all of it is pale, and cannot be pressed
                    assertUnderlined(button);
                }
                said.add(button.getText());
            }
            real.hands.key(SWT.ALT); // once it was pressed, the desktop would hide them
            real.push("begin.next");
        }
        assertEquals(4, said.size(), said + " to the last step");
    }

    private List<Button> buttons() {
        return Stream.of("begin.leave", "begin.back", "begin.next")
                .map(id -> real.find(Button.class, id))
                .toList();
    }

    private static String letter(String text) {
        int at = text.indexOf('&');
        assertTrue(at >= 0, "no letter in “" + text + "”");
        return text.substring(at + 1, at + 2).toLowerCase(Locale.ROOT);
    }

    /** It looks otherwise than without its letter. */
    private void assertUnderlined(Button button) {
        String text = button.getText();
        Rectangle area = ScreenInk.seen(button, 0);
        painted();
        ScreenInk with = ScreenInk.now(real.display());
        painted();
        assertFalse(with.change(ScreenInk.now(real.display()), area) >= SEEN, "it stands still");
        button.setText(Mnemonics.plain(text));
        painted();
        assertTrue(with.change(ScreenInk.now(real.display()), area) >= SEEN, "no line under a letter of " + text);
        button.setText(text);
        painted();
    }

    private void painted() {
        long end = System.nanoTime() + PAINTED_MS * 1_000_000;
        real.until(() -> System.nanoTime() > end);
    }
}
