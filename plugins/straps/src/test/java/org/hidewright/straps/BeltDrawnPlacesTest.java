package org.hidewright.straps;

import static org.hidewright.straps.OutsideChecksTest.answers;
import static org.hidewright.straps.Straps.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The drawings of a belt against its answers, for every tip and every way to measure it. */
class BeltDrawnPlacesTest {
    private static BeltLayout.Layout work(Belts belt) {
        return answers(new BeltLayout(), belt.build());
    }

    @ParameterizedTest
    @EnumSource(BeltTip.class)
    void theFlatViewShowsEveryHoleAtItsDistanceFromTheTip(BeltTip tip) {
        Belts belt = new Belts();
        belt.tip = tip;
        BeltLayout.Layout layout = work(belt);
        List<Circle> holes = circles(layout.flatView());
        assertEquals(5, holes.size());
        Box outline = cut(layout.flatView());
        for (int i = 0; i < 5; i++) {
            assertEquals(
                    layout.holes().get(i).fromTip().mm(),
                    outline.maxX() - holes.get(i).centre().x(),
                    1e-9);
            assertEquals(19, holes.get(i).centre().y(), 1e-9);
        }
        assertEquals(38, outline.height(), 1e-6);
        assertTrue(outline.width() < 400, "the long middle is left out: " + outline.width());
    }

    @Test
    void aShortStrapIsDrawnWhole() {
        Belts collar = new Belts();
        collar.size = 170;
        BeltLayout.Layout layout = work(collar);
        assertEquals(layout.cutLength().mm(), cut(layout.flatView()).width(), 1e-6);
        assertEquals(
                layout.holes().get(0).fromTurnBackEnd().mm(),
                circles(layout.flatView()).get(0).centre().x(),
                1e-9);
    }

    @ParameterizedTest
    @EnumSource(BeltMeasure.class)
    void thePictureMeasuresTheSizeFromTheDatumToTheWornHole(BeltMeasure datum) {
        Belts collar = new Belts();
        collar.size = 157;
        collar.datum = datum;
        Drawing picture = work(collar).sizePicture();
        String key = "belt-size-from-" + datum.name().toLowerCase(Locale.ROOT).replace('_', '-');
        Phrase words = Phrase.of(key, mm(157));
        DimensionLine size = picture.shapes().stream()
                .filter(DimensionLine.class::isInstance)
                .map(DimensionLine.class::cast)
                .filter(line -> line.words().equals(words))
                .findFirst()
                .orElseThrow();
        double behind = datum == BeltMeasure.FOLD ? 2.5 + 3.5 : datum == BeltMeasure.FRAME_END ? 30 : 0;
        assertEquals(-behind, size.from().x(), 1e-9);
        assertEquals(157 - behind, size.to().x(), 1e-9);
        assertTrue(picture.shapes().stream()
                .anyMatch(shape ->
                        shape.role() == Role.SECTION && Math.abs(shape.bounds().minX() + 6) < 0.01));
    }

    @Test
    void aLongBeltIsPicturedShortenedButMarkedWithItsWholeSize() {
        Drawing picture = work(new Belts()).sizePicture();
        assertTrue(
                picture.bounds().width() < 250, "as wide as " + picture.bounds().width());
        assertTrue(picture.shapes().stream()
                .anyMatch(shape -> shape instanceof DimensionLine line
                        && line.words().equals(Phrase.of("belt-size-from-frame-end", mm(900)))));
    }

    private static List<Circle> circles(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .toList();
    }

    private static Box cut(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(shape -> shape.role() == Role.CUT)
                .map(Shape::bounds)
                .reduce(Box::with)
                .orElseThrow();
    }
}
