package org.hidewright.api.benchwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Three pockets for cards of 86 x 54 mm in steps of 12 mm, on a panel. */
class SteppedPocketsTest {
    private static final double EXACT = 1e-9;

    private final SteppedPockets pockets = new SteppedPockets(3, 86, 54, 1, 12, 4);
    private Piece panel;
    private Item item;

    @BeforeEach
    void draw() throws NoRoom {
        panel = Piece.of("panel", "Panel", Outlines.rectangle(Point.of(0, 0), 140, 110), 1.2);
        Fastened sewn = pockets.on(panel, "left", "Left pocket", Point.of(10, 8), 0.8, 3);
        Item.Builder builder = Item.builder().part(panel.part());
        sewn.into(builder);
        item = builder.build();
        assertEquals(3, sewn.pieces().size());
        assertEquals(7, sewn.seams().size(), "two sides and a bottom for each in the rear, a rim in front");
    }

    private List<Point> holes(String part, String row) {
        return item.stitchLine(new OnPart(part, row)).orElseThrow().holes();
    }

    @Test
    void theStackIsAsWideAsHalfTheGirthAndAsHighAsItsSteps() {
        assertEquals(86 + 1 + 4 + 7, pockets.width(), EXACT);
        // margin and half a card, the card, and a step for each pocket but one
        assertEquals(3.5 + 0.5 + 54 + 2 * 12, pockets.height(), EXACT);
        assertEquals(8, SteppedPockets.leastStep(3), EXACT);
    }

    @Test
    void thePocketInFrontIsWhole() {
        Box box = item.part("left-front").orElseThrow().outline().bounds();
        assertEquals(98, box.width(), EXACT);
        assertEquals(3.5 + 0.5 + 42, box.height(), EXACT);
        List<Point> front = holes("left-front", "rim");
        List<Point> under = holes("panel", "left-front-rim");
        for (int i = 0; i < front.size(); i++) {
            assertEquals(front.get(i).plus(10, 8), under.get(i));
        }
        assertEquals(Point.of(3.5, 46 - 2.5), front.get(0));
        assertEquals(94.5, front.get(front.size() - 1).x(), EXACT);
    }

    @Test
    void rearPocketsHangFromTabsAndAreNarrowerBelow() {
        Part first = item.part("left-1").orElseThrow();
        assertEquals("Left pocket 1 from the back", first.name());
        Box box = first.outline().bounds();
        assertEquals(98, box.width(), EXACT);
        assertEquals(42 + 3.5, box.height(), EXACT);
        // the tab of 98 x 12, and below it 5 mm less on either side
        assertEquals(98 * 12 + 88 * 33.5, Curve.of(first.outline()).area(), 1e-6);
        assertEquals(Point.of(3.5, 45.5 - 2.5), holes("left-1", "left").get(0));
        assertEquals(
                45.5 - 12 + 2.5,
                holes("left-1", "left").get(holes("left-1", "left").size() - 1).y(),
                EXACT);
        assertEquals(94.5, holes("left-1", "right").get(0).x(), EXACT);
        assertEquals(Point.of(8, 3.5), holes("left-1", "bottom").get(0));
        assertEquals(
                90,
                holes("left-1", "bottom")
                        .get(holes("left-1", "bottom").size() - 1)
                        .x(),
                EXACT);
    }

    @Test
    void eachIsAStepAboveTheOneInFrontOfIt() {
        double first = holes("panel", "left-1-bottom").get(0).y();
        double second = holes("panel", "left-2-bottom").get(0).y();
        assertEquals(8 + 4 + 24, first, EXACT);
        assertEquals(8 + 4 + 12, second, EXACT);
        assertEquals(10 + 8, holes("panel", "left-1-bottom").get(0).x(), EXACT);
        // tabs end where the next begins: mouths a step apart
        double mouth = holes("panel", "left-1-left").get(0).y();
        assertEquals(12, mouth - holes("panel", "left-2-left").get(0).y(), EXACT);
        assertEquals(
                12,
                holes("panel", "left-2-left").get(0).y()
                        - holes("panel", "left-front-rim").get(0).y(),
                EXACT);
        assertEquals(8 + pockets.height() - 12 - 2.5, mouth, EXACT);
    }

    @Test
    void onePocketHasNoTabs() throws NoRoom {
        Piece other = Piece.of("panel", "Panel", Outlines.rectangle(Point.of(0, 0), 140, 110), 1.2);
        Fastened sewn = new SteppedPockets(1, 86, 54, 1, 12, 4).on(other, "one", "Pocket", Point.of(10, 8), 0.8, 3);
        assertEquals(1, sewn.pieces().size());
        assertEquals(
                "[one-front.rim, panel.one-front-rim]",
                sewn.seams().get(0).lines().toString());
    }

    @Test
    void whatCannotHoldCardsIsNone() {
        assertThrows(IllegalArgumentException.class, () -> new SteppedPockets(0, 86, 54, 1, 12, 4));
        assertThrows(IllegalArgumentException.class, () -> new SteppedPockets(2, 86, 54, 1, 27.1, 4));
        assertEquals(27 * 3 + 31, new SteppedPockets(3, 86, 54, 1, 27, 4).height(), EXACT);
    }
}
