package org.hidewright.documents.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.junit.jupiter.api.Test;

/** Which names of a drawing become numbers. Letters of the test’s typeface are all equally wide. */
class FigurePlanTest {
    private static final double LETTER = 2.2;

    /** Names of ten letters, 40 mm apart where they have room and 4 mm where they have none. */
    private static List<String> legend(double... places) {
        Drawing.Builder drawing = Drawing.builder();
        for (int i = 0; i < places.length; i++) {
            drawing.line(Role.CUT, Point.of(places[i], 0), Point.of(places[i], 30))
                    .label("strap no " + i, Point.of(places[i], 15), Anchor.CENTRE, LETTER);
        }
        return new FigurePlan(drawing.build(), new PaperScale(1, false), 100, WrappingTest.EVEN).legend();
    }

    @Test
    void namesThatHaveRoomStandWhereTheyBelong() {
        assertEquals(List.of(), legend(0, 40, 80, 120));
    }

    @Test
    void aFewThatMeetBecomeNumbers() {
        assertEquals(List.of("strap no 2", "strap no 3"), legend(0, 40, 80, 84, 120));
    }

    @Test
    void whereMostMeetAllBecomeNumbers() {
        assertEquals(
                List.of("strap no 0", "strap no 1", "strap no 2", "strap no 3", "strap no 4"),
                legend(0, 40, 44, 48, 90));
    }
}
