package org.hidewright.window.look;

import org.hidewright.documents.page.Tone;

/**
 * The colours of the window, red, green and blue in one number each: paper, ink, one accent that marks what is linked and what
 * has moved, one warning. The warning is the rust of the printed pages.
 *
 * @param board behind the slips
 * @param paper of slips and drawings
 * @param ink of what is read first
 * @param quiet of what explains; AA on paper
 * @param hairline between rows
 * @param accent of links and of what has moved; AA on paper
 * @param warning of what is to be looked at; AA on paper
 */
public record Palette(int board, int paper, int ink, int quiet, int hairline, int accent, int warning) {
    public static final Palette LIGHT =
            new Palette(0xE9E6E0, 0xFDFCFA, 0x1A1A1A, 0x5C5C5C, 0xCBC7C0, 0x1F5F7A, 0x9E3314);
    public static final Palette DARK =
            new Palette(0x1B1A19, 0x262523, 0xECE9E4, 0xB4AFA7, 0x4A4744, 0x7FC1DC, 0xF0906C);

    /** The colour of an ink of the printed pages. */
    public int of(Tone tone) {
        return switch (tone) {
            case INK -> ink;
            case QUIET -> quiet;
            case HAIRLINE, METAL -> hairline;
            case LEATHER -> board;
            case ACCENT -> warning;
            case PAPER -> paper;
        };
    }

    /** Contrast of two colours by WCAG 2.2, from 1 to 21. */
    public static double contrast(int one, int other) {
        double first = luminance(one) + 0.05;
        double second = luminance(other) + 0.05;
        return Math.max(first, second) / Math.min(first, second);
    }

    /** Relative luminance by WCAG 2.2. */
    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xFF) + 0.7152 * linear(rgb >> 8 & 0xFF) + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
