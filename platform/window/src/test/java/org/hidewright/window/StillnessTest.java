package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.graphics.Rectangle;
import org.hidewright.window.EveryState.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing in the window moves by itself, so there is nothing to switch off for those whom motion disturbs. What the system
 * moves, such as the caret, obeys the system’s settings.
 */
@EnabledOnOs(OS.LINUX)
class StillnessTest {
    /** At uneven moments, so that what comes back to where it was is not met there each time. */
    private static final long[] WATCHED_MS = {30, 50, 80, 130};
    /** What a change leaves behind is put away once; what moves goes on moving. */
    private static final int ROUNDS = 12;

    @TempDir
    Path folder;

    @Test
    void whatIsNotTouchedStandsStill() throws Exception {
        List<String> moving = new ArrayList<>();
        GtkSettings.still(true);
        int states = EveryState.walk(folder, Setting.USUAL, (real, state) -> {
            Rectangle all = real.shell.getBounds();
            double change = 2;
            for (int i = 0; i < ROUNDS && change > 1; i++) {
                change = most(real, all);
            }
            if (change > 1) {
                moving.add(state);
            }
        });
        GtkSettings.still(false);
        assertTrue(states > 10, states + " states");
        assertEquals(List.of(), moving);
    }

    /** How much is another than before, at any of several moments. */
    private static double most(RealWindow real, Rectangle all) {
        double most = 1;
        ScreenInk before = ScreenInk.now(real.display());
        for (long ms : WATCHED_MS) {
            long end = System.nanoTime() + ms * 1_000_000;
            real.until(() -> System.nanoTime() > end);
            most = Math.max(most, ScreenInk.now(real.display()).change(before, all));
        }
        return most;
    }
}
