package org.hidewright.stitching;

import static org.hidewright.stitching.Sewn.answers;
import static org.hidewright.stitching.Sewn.mm;
import static org.hidewright.stitching.Sewn.shown;
import static org.hidewright.stitching.Sewn.told;
import static org.hidewright.stitching.Sewn.working;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.api.measure.Angle;
import org.junit.jupiter.api.Test;

class PiercingTest {
    private static final String STRUCK = "irons-struck at  []";

    private final Piercing piercing = new Piercing();

    private static Piercing.Stack stack(double mm, double prongs, double degrees) {
        return new Piercing.Stack(mm(mm), mm(prongs), mm(1), Angle.ofRadians(Math.toRadians(degrees)), mm(0.5));
    }

    private String how(Piercing.Stack stack) {
        return answers(piercing, stack).how().key();
    }

    /** 6 mm · tan 3° = 0.3145 mm by a table of tangents (0.0524078). */
    @Test
    void aThinStackIsPiercedTogether() {
        Piercing.Pierced pierced = answers(piercing, stack(6, 8, 3));
        assertEquals("together", pierced.how().key());
        assertEquals("2", shown(pierced.out()));
        assertEquals(0.314447, pierced.drift().mm(), 1e-6);
        assertEquals(9.540568, pierced.thickestTogether().mm(), 1e-6);
        assertEquals(List.of(STRUCK), told(piercing, stack(6, 8, 3)));
        assertEquals(
                List.of(
                        "o = l - T | l 8, T 6 | 2",
                        "d = T · tan α | T 6, α 3° | 0.314",
                        "T = d / tan α | d 0.5, α 3° | 9.541"),
                working(piercing, stack(6, 8, 3)));
    }

    @Test
    void prongsThatDoNotComeOutAreTold() {
        assertEquals("apart", how(stack(5, 5.9, 3)));
        assertEquals(List.of(STRUCK, "prongs-too-short at prong-length [5.9, 5, 1]"), told(piercing, stack(5, 5.9, 3)));
        assertEquals("together", how(stack(5, 6, 3)), "just as far as they should");
    }

    @Test
    void holesThatDriftAreTold() {
        assertEquals("apart", how(stack(5, 9, 6)));
        assertEquals(List.of(STRUCK, "holes-drift at stack [0.526, 0.5, 4.757]"), told(piercing, stack(5, 9, 6)));
    }

    @Test
    void aThickStackTakesAnAwl() {
        assertEquals("by-awl", how(stack(6.1, 12, 1)));
        assertEquals(List.of(STRUCK, "take-an-awl at stack [6.1, 6]"), told(piercing, stack(6.1, 12, 1)));
    }
}
