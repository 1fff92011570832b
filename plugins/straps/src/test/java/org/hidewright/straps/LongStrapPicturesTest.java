package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;

/** What the pictures of a strap too long for its paper show. */
class LongStrapPicturesTest {
    private static final double EXACT = 1e-6;

    private static StrapLayout.Strap neckStrap() {
        return strap(
                2.5,
                List.of(
                        straight("left", 45),
                        turnBack("left-ring", 4, 12, Face.GRAIN, DRY),
                        straight("neck", 860),
                        turnBack("right-ring", 4, 12, Face.GRAIN, DRY),
                        straight("right", 45)),
                hole("left-rivet", "left", From.END, 9, "neck"),
                hole("right-rivet", "right", From.START, 9, "neck"));
    }

    private static <S> List<S> shapes(Drawing drawing, Class<S> type, Role role) {
        return drawing.shapes().stream()
                .filter(shape -> shape.role() == role && type.isInstance(shape))
                .map(type::cast)
                .toList();
    }

    private static List<Label> labels(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    private static Label label(Drawing drawing, String words) {
        return labels(drawing).stream()
                .filter(label -> label.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLongNeckIsBrokenOffAndBothFoldsStayLarge() {
        Drawing folded = layout(neckStrap()).foldedView();
        List<Path> leather = shapes(folded, Path.class, Role.SECTION);
        assertEquals(2, leather.size());
        double length =
                leather.stream().mapToDouble(part -> part.bounds().width()).sum();
        assertTrue(length < 200, "still " + length + " mm long");
        // each end whole: 45 mm of leg, 12 mm of turn-back, half the bar and the leather round it
        for (Path end : leather) {
            assertEquals(45 + 12 + 2 + 2.5 + 14, end.bounds().width(), 0.01);
        }
        assertEquals(2, shapes(folded, Circle.class, Role.HARDWARE).size());
    }

    @Test
    void anAxisStandsAsFarFromItsFoldAsInTheWholeStrap() {
        Drawing folded = layout(neckStrap()).foldedView();
        List<Path> axes = shapes(folded, Path.class, Role.MARK);
        List<Circle> bars = shapes(folded, Circle.class, Role.HARDWARE);
        assertEquals(4, axes.size());
        assertEquals(
                12 + 9,
                Math.abs(axes.get(0).bounds().minX() - bars.get(0).centre().x()),
                EXACT);
        assertEquals(axes.get(0).bounds().minX(), axes.get(1).bounds().minX(), EXACT);
        assertEquals(
                12 + 9,
                Math.abs(axes.get(2).bounds().minX() - bars.get(1).centre().x()),
                EXACT);
        assertEquals(axes.get(2).bounds().minX(), axes.get(3).bounds().minX(), EXACT);
    }

    @Test
    void layersBesideABreakAreBrokenAlike() {
        StrapLayout.Layout layout =
                layout(strap(3, List.of(straight("leg", 400), roundBar("ring", 6), straight("back", 400))));
        List<Path> leather = shapes(layout.foldedView(), Path.class, Role.SECTION);
        assertEquals(3, leather.size());
        assertEquals(leather.get(0).bounds().minX(), leather.get(2).bounds().minX(), EXACT);
        assertEquals(leather.get(0).bounds().maxX(), leather.get(2).bounds().maxX(), EXACT);
        assertEquals(4, shapes(layout.foldedView(), Path.class, Role.NOTE).size());
    }

    @Test
    void aShortStrapIsLeftWhole() {
        StrapLayout.Layout layout =
                layout(strap(3, List.of(straight("leg", 100), roundBar("ring", 6), straight("back", 60))));
        assertEquals(1, shapes(layout.foldedView(), Path.class, Role.SECTION).size());
        assertEquals(List.of(), shapes(layout.foldedView(), Path.class, Role.NOTE));
        Path edge = shapes(layout.flatView(), Path.class, Role.CUT).get(0);
        assertEquals(strapLength(layout), edge.bounds().width(), EXACT);
    }

    private static double strapLength(StrapLayout.Layout layout) {
        return layout.cutLength().mm();
    }

    @Test
    void namesStandOffTheLeather() {
        Drawing folded = layout(neckStrap()).foldedView();
        // the legs lie on top once folded, the neck under them
        double top = folded.shapes().stream()
                .filter(shape -> shape.role() == Role.SECTION)
                .mapToDouble(shape -> shape.bounds().maxY())
                .max()
                .orElseThrow();
        double bottom = folded.shapes().stream()
                .filter(shape -> shape.role() == Role.SECTION)
                .mapToDouble(shape -> shape.bounds().minY())
                .min()
                .orElseThrow();
        assertTrue(label(folded, "neck").at().y() < -5, "under the neck, whose grain lies at -5 mm");
        assertTrue(label(folded, "neck").at().y() > bottom - 5);
        assertTrue(label(folded, "left").at().y() > 0, "over the leg, whose grain lies at 0");
        assertTrue(label(folded, "left").at().y() < top + 5);
        assertTrue(label(folded, "left-rivet").at().y() > 0);
    }

    @Test
    void aLegendTellsTheFacesApart() {
        Drawing folded = layout(neckStrap()).foldedView();
        List<String> words = labels(folded).stream()
                .map(label -> String.valueOf(label.words()))
                .toList();
        assertTrue(words.contains("grain-face[]"), words::toString);
        assertTrue(words.contains("flesh-face[]"), words::toString);
        assertEquals(3, shapes(folded, Path.class, Role.GRAIN).size());
        assertEquals(3, shapes(folded, Path.class, Role.FLESH).size());
    }

    @Test
    void theFlatStrapIsBrokenWhereNothingHappensAndKeepsItsNumbers() {
        StrapLayout.Layout layout = layout(neckStrap());
        Drawing flat = layout.flatView();
        double drawn =
                shapes(flat, Circle.class, Role.INNER_CUT).get(3).centre().x();
        assertTrue(drawn < 300, "still " + drawn + " mm along");
        List<Double> numbers = dimensions(flat).stream()
                .map(line -> ((Length) line.words()).mm())
                .toList();
        for (StrapLayout.FlatFeature feature : layout.features()) {
            assertTrue(numbers.contains(feature.fromStart().mm()), feature.id());
        }
    }

    private static List<DimensionLine> dimensions(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(DimensionLine.class::isInstance)
                .map(DimensionLine.class::cast)
                .toList();
    }

    @Test
    void widthAndEdgeDistanceAreDimensionedAcross() {
        List<DimensionLine> across = dimensions(layout(neckStrap()).flatView()).stream()
                .filter(line -> line.from().x() == line.to().x())
                .toList();
        assertEquals(
                List.of(20.0, 10.0),
                across.stream().map(line -> ((Length) line.words()).mm()).toList());
        List<DimensionLine> unpierced = dimensions(
                        layout(strap(2, List.of(straight("a", 60)))).flatView())
                .stream()
                .filter(line -> line.from().x() == line.to().x())
                .toList();
        assertEquals(1, unpierced.size());
    }
}
