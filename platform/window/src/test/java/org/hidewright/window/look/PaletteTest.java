package org.hidewright.window.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.documents.page.Tone;
import org.junit.jupiter.api.Test;

class PaletteTest {
    /** WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text. */
    @Test
    void whateverIsReadHasTheContrastOfWcag() {
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

    /**
     * WCAG 2.2, W3C Recommendation, definitions “contrast ratio” and “relative luminance”; the greys are the pairs that are
     * published again and again for 4.5 to 1: #767676 is the lightest that passes on white, #777777 just fails.
     */
    @Test
    void theFormulaGivesThePublishedRatios() {
        assertEquals(21, Palette.contrast(0xFFFFFF, 0x000000), 1e-9);
        assertEquals(1, Palette.contrast(0x1F5F7A, 0x1F5F7A), 1e-9);
        assertEquals(4.48, Palette.contrast(0x777777, 0xFFFFFF), 0.005);
        assertEquals(4.54, Palette.contrast(0xFFFFFF, 0x767676), 0.005);
        // pure red and blue on white by hand: 1.05 / (0.2126 + 0.05) and 1.05 / (0.0722 + 0.05)
        assertEquals(3.998, Palette.contrast(0xFF0000, 0xFFFFFF), 0.001);
        assertEquals(8.592, Palette.contrast(0x0000FF, 0xFFFFFF), 0.001);
    }

    /** Success criterion 1.4.11: what is to be told apart on a drawing stands out from the paper by 3 to 1. */
    @Test
    void linesOfDrawingsStandOutFromThePaper() {
        for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
            for (Tone tone : List.of(Tone.INK, Tone.QUIET, Tone.ACCENT)) {
                assertTrue(Palette.contrast(palette.of(tone), palette.paper()) >= 3, tone + " on paper");
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
