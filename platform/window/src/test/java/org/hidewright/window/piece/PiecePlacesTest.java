package org.hidewright.window.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Part;
import org.hidewright.core.item.PartInPlace;
import org.hidewright.documents.page.Face;
import org.hidewright.documents.page.Typeface;
import org.junit.jupiter.api.Test;

/** Where a drawing lies in its view, and what is met on it. */
class PiecePlacesTest {
    private static final Drawing PART = Drawing.builder()
            .rectangle(Role.CUT, Point.of(0, 0), 100, 60)
            .hole(Point.of(20, 30), 6)
            .line(Role.FOLD, Point.of(50, 0), Point.of(50, 60))
            .label("Front", Point.of(70, 30), Anchor.CENTRE, 3)
            .build();

    @Test
    void aPlaceOfTheViewIsOneOfTheDrawingAndBack() {
        Sheet sheet = new Sheet(2, 4, Box.around(Point.of(0, 0), Point.of(200, 120)), 10, 20);
        Point place = Point.of(30, 45);
        assertEquals(10 + 30 * 2 * 4, sheet.x(place), 1e-9);
        assertEquals(20 + (120 - 45 * 2) * 4, sheet.y(place), 1e-9, "down from the top");
        Point back = sheet.onDrawing(sheet.x(place), sheet.y(place));
        assertEquals(0, back.distanceTo(place), 1e-9);
        assertEquals(1, sheet.mm(8), 1e-9);
        assertTrue(sheet.holds(10, 20));
        assertFalse(sheet.holds(9, 20));
    }

    @Test
    void whatIsNearestIsMet() {
        assertEquals(Optional.of(new Pointing.Met(Role.CUT, 100, false)), Pointing.at(PART, Point.of(30, 1), 3));
        assertEquals(Optional.of(new Pointing.Met(Role.INNER_CUT, 6, true)), Pointing.at(PART, Point.of(22, 31), 3));
        assertEquals(Optional.of(new Pointing.Met(Role.FOLD, 60, false)), Pointing.at(PART, Point.of(51, 30), 3));
        assertEquals(Optional.empty(), Pointing.at(PART, Point.of(75, 20), 3));
    }

    @Test
    void aClickTakesTheCornerOrCentreNearby() {
        assertEquals(Point.of(100, 60), Pointing.corner(PART, Point.of(98, 59), 4));
        assertEquals(Point.of(20, 30), Pointing.corner(PART, Point.of(21, 29), 4));
        assertEquals(
                Point.of(75, 20), Pointing.corner(PART, Point.of(75, 20), 4), "the place itself where none is near");
    }

    /** Every letter half as wide as it is high. */
    private static final Typeface HALVES = new Typeface() {
        @Override
        public double width(Face face, String text) {
            return text.length() / 2.0;
        }

        @Override
        public String printable(String text) {
            return text;
        }
    };

    @Test
    void aNameIsAsSmallAsItsPartNeedsAndNoSmallerThanCanBeRead() {
        Part part = Part.of("pocket", "Card pocket", Path.rectangle(Role.CUT, Point.of(0, 0), 100, 60))
                .leather("side")
                .thickness(1)
                .build();
        Drawing drawing = Drawing.builder()
                .rectangle(Role.CUT, Point.of(0, 0), 100, 60)
                .label("Card pocket", Point.of(50, 30), Anchor.CENTRE, 3)
                .label("Front", Point.of(50, 10), Anchor.CENTRE, 3)
                .build();
        double whole = nameHeight(drawing, part, 1, 1);
        assertEquals(3, whole, 1e-9, "there is room");
        double width = Names.fitted(drawing, List.of(new PartInPlace(part, drawing)), 1, HALVES)
                .bounds()
                .width();
        assertEquals(100, width, 1e-9);
        double tight = nameHeight(drawing, part, 0.18, 1);
        assertTrue(tight < 3 && tight > 1.8, "smaller: " + tight);
        assertEquals(1.8, nameHeight(drawing, part, 0.01, 1), 1e-9, "no smaller than can be read");
        assertEquals(3, nameHeight(drawing, part, 0.01, 2), 1e-9, "what is no name of a part keeps its size");
    }

    private static double nameHeight(Drawing drawing, Part part, double factor, int label) {
        Drawing fitted = Names.fitted(drawing, List.of(new PartInPlace(part, drawing)), factor, HALVES);
        return ((Label) fitted.shapes().get(label)).height();
    }

    @Test
    void kindsOfLineAreLeftOut() {
        Drawing bare = LineKind.without(PART, EnumSet.of(LineKind.FOLDS, LineKind.NAMES))
                .orElseThrow();
        assertEquals(2, bare.shapes().size());
        assertTrue(LineKind.without(PART, EnumSet.allOf(LineKind.class)).isEmpty());
    }

    @Test
    void drawingsStandWhereTheyAreLargest() {
        Box wide = Box.around(Point.of(0, 0), Point.of(300, 20));
        Box high = Box.around(Point.of(0, 0), Point.of(20, 300));
        assertFalse(Fit.isBeside(List.of(wide, wide), 400, 300), "two straps under each other");
        assertTrue(Fit.isBeside(List.of(high, high), 300, 400));
        // two of 300 by 20 in 318 by 400: a gap of 6 on either side of the length
        assertEquals((318 - 12) / 300.0, Fit.factor(List.of(wide, wide), 318, 400), 1e-9);
    }

    @Test
    void leatherIsShownInTheColourOfItsName() {
        assertEquals(LeatherColour.of("Black bridle, 3-4 oz"), LeatherColour.of("black"));
        assertFalse(LeatherColour.of("dark brown side") == LeatherColour.of("brown side"));
        assertEquals(LeatherColour.of(""), LeatherColour.of("natural shoulder"), "undyed");
        assertFalse(LeatherColour.of("titanium") == LeatherColour.of("tan"), "only whole words count");
        assertEquals(0x808080, LeatherColour.shade(0x404040, 2));
        assertEquals(0xFFFFFF, LeatherColour.shade(0xC0C0C0, 2));
    }
}
