package org.hidewright.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.stream.Stream;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.HideOutlines;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.documents.dxf.DxfReader;
import org.hidewright.documents.dxf.DxfWriter;
import org.hidewright.documents.svg.SvgReader;
import org.hidewright.documents.svg.SvgWriter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Drawings with letters changed, lost, doubled or cut off are read or told, whatever they say; the seed gives the same ones again. */
class SpoiltDrawingsTest {
    private static final String LETTERS = "0123456789.-eE \n\"<>/&;AMZzmac()%\u0000ü";
    private static final int ROUNDS = 1500;

    static Stream<Arguments> drawings() {
        String shapes =
                "<svg xmlns='http://www.w3.org/2000/svg' width='90mm' viewBox='0 0 90 90'><g id='hole' transform="
                        + "'rotate(9 1 2) scale(.5)'><rect rx='4' width='30' height='20'/><ellipse cx='5' rx='9' ry='3'/></g>"
                        + "<path d='M0 0C9 9 20 9 30 0a9 5 30 1 0 7 9zm3 3h5v5z'/><polygon points='1,2 3,4 9,0'/></svg>";
        return Stream.of(
                Arguments.of(new SvgReader(), shapes.getBytes(StandardCharsets.UTF_8)),
                Arguments.of(new SvgReader(), new SvgWriter().write("Kit", SamplePattern.named())),
                Arguments.of(new DxfReader(), new DxfWriter().write("Kit", SamplePattern.named())));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void nothingBreaks(DrawingReader reader, byte[] sound) {
        Random chance = new Random(20260301);
        String text = new String(sound, StandardCharsets.ISO_8859_1);
        int read = 0;
        for (int round = 0; round < ROUNDS; round++) {
            String spoilt = spoilt(text, chance);
            try {
                new HideOutlines(reader.read(spoilt.getBytes(StandardCharsets.ISO_8859_1)));
                read++;
            } catch (FileTrouble told) {
                assertEquals(1, told.remarks().size());
            } catch (RuntimeException broken) {
                throw new AssertionError(spoilt, broken);
            }
        }
        assertTrue(read > ROUNDS / 50 && read < ROUNDS, read + " were read");
    }

    private static String spoilt(String text, Random chance) {
        StringBuilder spoilt = new StringBuilder(text);
        for (int change = 0; change <= chance.nextInt(3); change++) {
            int at = chance.nextInt(spoilt.length());
            int end = Math.min(spoilt.length(), at + 1 + chance.nextInt(6));
            char letter = LETTERS.charAt(chance.nextInt(LETTERS.length()));
            switch (chance.nextInt(5)) {
                case 0 -> spoilt.deleteCharAt(at);
                case 1 -> spoilt.insert(at, spoilt.substring(at, end));
                case 2 -> spoilt.insert(at, letter);
                case 3 -> spoilt.setCharAt(at, letter);
                default -> spoilt.setLength(chance.nextInt(20) == 0 ? Math.max(1, at) : spoilt.length());
            }
        }
        return spoilt.toString();
    }
}
