package org.hidewright.straps;

import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.place;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;

/** The two drawings of a strap against its answers. */
class StrapDrawnPlacesTest {
    private static final double EXACT = 1e-9;

    @Test
    void theFlatViewHasHolesAtTheirPlacesAndTheFoldsAcross() {
        StrapLayout.Layout layout = layout(Straps.ring(hole("rivet", "leg", From.END, 15, "tip")));
        List<Circle> holes = shapes(layout.flatView(), Circle.class, Role.INNER_CUT);
        assertEquals(
                List.of(85.0),
                holes.stream().map(hole -> hole.centre().x()).limit(1).toList());
        assertEquals(place(layout, "rivet-on-tip"), holes.get(1).centre().x(), EXACT);
        assertEquals(10, holes.get(1).centre().y(), EXACT);
        List<Path> folds = shapes(layout.flatView(), Path.class, Role.FOLD);
        assertEquals(
                List.of(100.0, 100 + Math.PI * 3.8),
                folds.stream().map(fold -> fold.bounds().minX()).toList());
        assertEquals(20, folds.get(0).bounds().height(), EXACT);
        Path edge = shapes(layout.flatView(), Path.class, Role.CUT).get(0);
        assertEquals(layout.cutLength().mm(), edge.bounds().width(), EXACT);
    }

    @Test
    void theFoldedViewShowsTheLeatherRoundItsBar() {
        StrapLayout.Layout layout = layout(Straps.ring(hole("rivet", "leg", From.END, 15, "tip")));
        Path leather = shapes(layout.foldedView(), Path.class, Role.SECTION).get(0);
        assertEquals(105, leather.bounds().maxX(), 1e-6); // 100 + inside radius 2 + 3 mm of leather
        assertEquals(0, leather.bounds().maxY(), 1e-6);
        assertEquals(-10, leather.bounds().minY(), 1e-6); // two layers and the 4 mm bar
        Circle bar = shapes(layout.foldedView(), Circle.class, Role.HARDWARE).get(0);
        assertEquals(100, bar.centre().x(), EXACT);
        assertEquals(-5, bar.centre().y(), EXACT);
        assertEquals(4, bar.diameter(), EXACT);
        List<Path> axes = shapes(layout.foldedView(), Path.class, Role.MARK);
        assertEquals(2, axes.size());
        assertTrue(axes.stream().allMatch(axis -> Math.abs(axis.bounds().minX() - 85) < EXACT));
    }

    @Test
    void rampsOfASkiveThinTheFleshSideOnly() {
        List<Section> sections = List.of(
                straight("leg", 60),
                bend("fold", new Core.RoundBar(mm(4)), 180, Face.GRAIN, new Preparation.Skived(mm(1.5), mm(10))),
                straight("tip", 40));
        StrapLayout.Layout layout = layout(strap(3, sections));
        Path grain = shapes(layout.foldedView(), Path.class, Role.GRAIN).get(0);
        Path flesh = shapes(layout.foldedView(), Path.class, Role.FLESH).get(0);
        assertEquals(3, grain.segments().size());
        assertEquals(-3, flesh.segments().get(0).end().y(), EXACT);
        assertEquals(50, flesh.segments().get(0).end().x(), EXACT);
        assertEquals(-1.5, flesh.segments().get(1).end().y(), EXACT);
        assertFalse(layout.skives().isEmpty());
    }

    private static <S> List<S> shapes(Drawing drawing, Class<S> type, Role role) {
        return drawing.shapes().stream()
                .filter(shape -> shape.role() == role && type.isInstance(shape))
                .map(type::cast)
                .toList();
    }
}
