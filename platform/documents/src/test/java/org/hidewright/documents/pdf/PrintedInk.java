package org.hidewright.documents.pdf;

import java.nio.charset.StandardCharsets;
import org.hidewright.documents.OutsideTool;

/** A page as grey dots, as poppler's pdftoppm paints it: 4 dots a millimetre. */
record PrintedInk(int width, int height, byte[] dots, int offset) {
    static final double DOTS_PER_MM = 4;

    static PrintedInk of(byte[] pdf, int page) {
        String number = Integer.toString(page);
        byte[] picture = OutsideTool.run(pdf, "pdftoppm", "-gray", "-r", "101.6", "-f", number, "-l", number, "FILE");
        String head = new String(picture, 0, 40, StandardCharsets.ISO_8859_1);
        String[] words = head.split("\\s", 5);
        int offset = words[0].length() + words[1].length() + words[2].length() + words[3].length() + 4;
        return new PrintedInk(Integer.parseInt(words[1]), Integer.parseInt(words[2]), picture, offset);
    }

    private int grey(int x, int y) {
        return dots[offset + y * width + x] & 0xff;
    }

    /** Distances of the outermost ink from the left, top, right and bottom edge, in millimetres. */
    double[] margins() {
        int left = width;
        int top = height;
        int right = -1;
        int bottom = -1;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (grey(x, y) < 250) {
                    left = Math.min(left, x);
                    right = Math.max(right, x);
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y);
                }
            }
        }
        return new double[] {
            left / DOTS_PER_MM,
            top / DOTS_PER_MM,
            (width - 1 - right) / DOTS_PER_MM,
            (height - 1 - bottom) / DOTS_PER_MM
        };
    }
}
