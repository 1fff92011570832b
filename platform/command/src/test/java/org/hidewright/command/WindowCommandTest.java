package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.hidewright.command.kit.Strap;
import org.junit.jupiter.api.Test;

class WindowCommandTest {
    /** DISPLAY: X(7) of X.Org; WAYLAND_DISPLAY: wl_display_connect of Wayland; both from memory. */
    @Test
    void onLinuxAScreenIsNamedByTheEnvironment() {
        assertTrue(WindowCommand.hasScreen("Linux", Map.of("DISPLAY", ":0")));
        assertTrue(WindowCommand.hasScreen("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0")));
        assertFalse(WindowCommand.hasScreen("Linux", Map.of("DISPLAY", "")));
        assertFalse(WindowCommand.hasScreen("FreeBSD", Map.of()));
    }

    @Test
    void elsewhereThereIsOne() {
        assertTrue(WindowCommand.hasScreen("Windows 11", Map.of()));
        assertTrue(WindowCommand.hasScreen("Mac OS X", Map.of()));
    }

    @Test
    void withoutAScreenOrABundleThatShowsOneItSaysHowToGoOn() {
        Terminal terminal = new Terminal(new Strap());
        assertEquals(2, terminal.run("window", "kit.json", "--language=en"));
        assertTrue(terminal.err.contains("hidewright make PROJECT"), terminal.err);
    }
}
