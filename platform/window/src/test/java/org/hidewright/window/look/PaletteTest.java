package org.hidewright.window.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.documents.page.Tone;
import org.junit.jupiter.api.Test;

class PaletteTest {
    /** WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text; black on white is 21 to 1 and #767676 on white 4.54 to 1. */
    @Test
    void whateverIsReadHasTheContrastOfWcag() {
        assertEquals(21, Palette.contrast(0x000000, 0xFFFFFF), 1e-9);
        assertEquals(4.54, Palette.contrast(0x767676, 0xFFFFFF), 0.005);
        for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
            for (int letters : List.of(palette.ink(), palette.quiet(), palette.accent(), palette.warning())) {
                for (int behind : List.of(palette.paper(), palette.board())) {
                    double contrast = Palette.contrast(letters, behind);
                    assertTrue(
                            contrast >= 4.5,
                            Integer.toHexString(letters) + " on " + Integer.toHexString(behind) + ": " + contrast);
                }
            }
        }
    }

    @Test
    void everyInkHasAColour() {
        for (Tone tone : Tone.values()) {
            assertTrue(Palette.LIGHT.of(tone) >= 0);
        }
        assertEquals(Palette.DARK.warning(), Palette.DARK.of(Tone.ACCENT));
    }
}
