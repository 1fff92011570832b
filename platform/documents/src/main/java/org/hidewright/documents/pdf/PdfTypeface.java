package org.hidewright.documents.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.hidewright.documents.page.Face;
import org.hidewright.documents.page.Typeface;

/** The embedded typeface: an open one whose digits are all of one width. */
final class PdfTypeface implements Typeface {
    private static final String MISSING = "\u25a1";
    private static final Map<Face, String> FILES =
            Map.of(Face.REGULAR, "SourceSans3-Regular.ttf", Face.SEMIBOLD, "SourceSans3-SemiBold.ttf");

    private final Map<Face, TrueTypeFont> fonts = new EnumMap<>(Face.class);
    private final Map<Face, CmapLookup> glyphs = new EnumMap<>(Face.class);

    PdfTypeface() throws IOException {
        for (Face face : Face.values()) {
            try (InputStream file = PdfTypeface.class.getResourceAsStream(FILES.get(face))) {
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
                font.setEnableGsub(false); // no ligatures: what is measured letter by letter is set letter by letter
                fonts.put(face, font);
                glyphs.put(face, font.getUnicodeCmapLookup());
            }
        }
    }

    TrueTypeFont font(Face face) {
        return fonts.get(face);
    }

    @Override
    public double width(Face face, String text) {
        try {
            TrueTypeFont font = fonts.get(face);
            CmapLookup lookup = glyphs.get(face);
            double width = 0;
            for (int letter : text.codePoints().toArray()) {
                width += font.getAdvanceWidth(lookup.getGlyphId(letter));
            }
            return width / font.getUnitsPerEm();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public String printable(String text) {
        StringBuilder shown = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(letter -> {
            if (Character.isISOControl(letter)) {
                shown.append(' ');
            } else if (letter == 0x2300) {
                shown.append('\u00d8'); // the diameter sign, which few typefaces have
            } else if (Character.getType(letter) != Character.FORMAT) { // marks of direction and joining have no shape
                shown.append(isKnown(letter) ? Character.toString(letter) : MISSING);
            }
        });
        return shown.toString();
    }

    private boolean isKnown(int letter) {
        return glyphs.values().stream().allMatch(lookup -> lookup.getGlyphId(letter) != 0);
    }
}
