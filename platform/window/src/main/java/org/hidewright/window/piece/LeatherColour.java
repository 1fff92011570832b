package org.hidewright.window.piece;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The colour a leather is shown in, by the words it is called by; where they say nothing, undyed vegetable-tanned. */
final class LeatherColour {
    private static final int UNDYED = 0xD9B38C;
    private static final Map<String, Integer> WORDS = new LinkedHashMap<>();

    static {
        WORDS.put("black", 0x2E2B29);
        WORDS.put("dark brown", 0x4A3023);
        WORDS.put("chocolate", 0x4A3023);
        WORDS.put("chestnut", 0x7A4428);
        WORDS.put("brown", 0x6B4630);
        WORDS.put("tan", 0xB57B4A);
        WORDS.put("red", 0x8E2F2A);
        WORDS.put("green", 0x4F5F3F);
        WORDS.put("blue", 0x344B63);
        WORDS.put("grey", 0x77726C);
        WORDS.put("white", 0xEFEAE2);
    }

    private LeatherColour() {}

    static int of(String leather) {
        String words = " " + leather.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ") + " ";
        return WORDS.entrySet().stream()
                .filter(entry -> words.contains(" " + entry.getKey() + " "))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(UNDYED);
    }

    /** A shade of a colour, darker below 1 and lighter above. */
    static int shade(int rgb, double factor) {
        int shaded = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int channel = (int) Math.round((rgb >> shift & 0xFF) * factor);
            shaded |= Math.min(255, channel) << shift;
        }
        return shaded;
    }
}
