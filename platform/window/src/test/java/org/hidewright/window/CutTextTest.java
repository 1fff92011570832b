package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hidewright.window.EveryState.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** No text is cut, in any state, in English, German and the pseudo-language, with letters up to half as large again. */
@EnabledOnOs(OS.LINUX)
class CutTextTest {
    private static final List<Integer> LETTERS = List.of(100, 125, 150);
    private static final int LEAST_STATES = 17;
    /** So many texts a state has at the least. */
    private static final int LEAST_LOOKS = 10;

    @TempDir
    Path folder;

    /** All of them in {@code ./verify --long}, else the longest words in the largest letters. */
    private static List<Setting> settings() {
        List<Setting> settings = new ArrayList<>();
        for (Locale language : EveryState.LANGUAGES) {
            for (int letters : LETTERS) {
                boolean always = !language.equals(Locale.ENGLISH) && letters == 150;
                if (always || Boolean.getBoolean("hidewright.long")) {
                    settings.add(new Setting(language, false, letters));
                }
            }
        }
        return settings;
    }

    private static String typed(RealWindow real) {
        return real.window.project().map(project -> project.project().text()).orElse("");
    }

    @Test
    void everyTextHasItsRoom() throws Exception {
        Set<String> faults = new LinkedHashSet<>();
        int[] looks = {0};
        int looked = 0;
        for (Setting setting : settings()) {
            int states = EveryState.walk(folder, setting, (real, state) -> {
                CutText.Found found = CutText.in(real.shell, typed(real));
                found.faults().forEach(fault -> faults.add(setting + ", " + state + ": " + fault));
                looks[0] += found.looks();
            });
            assertTrue(states >= LEAST_STATES, states + " states");
            looked += states;
        }
        assertTrue(looks[0] > LEAST_LOOKS * looked, looks[0] + " looks in " + looked + " states");
        assertEquals("", String.join("\n", faults), looks[0] + " looks in " + looked + " states");
    }
}
