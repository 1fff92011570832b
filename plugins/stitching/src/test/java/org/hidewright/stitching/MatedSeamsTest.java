package org.hidewright.stitching;

import static org.hidewright.stitching.Sewn.answers;
import static org.hidewright.stitching.Sewn.drawn;
import static org.hidewright.stitching.Sewn.mm;
import static org.hidewright.stitching.Sewn.shown;
import static org.hidewright.stitching.Sewn.straight;
import static org.hidewright.stitching.Sewn.told;
import static org.hidewright.stitching.Sewn.working;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.AtCorners;
import org.junit.jupiter.api.Test;

class MatedSeamsTest {
    private static final String SLANT = "slant-mirrored at  []";

    private final MatedSeams seams = new MatedSeams();

    private static MatedSeams.Lines lines(SewnLine line, SewnLine mate, AtCorners corners) {
        return new MatedSeams.Lines(line, mate, mm(4), corners);
    }

    @Test
    void bothLinesHaveTheSameNumberOfHoles() {
        MatedSeams.Lines asked = lines(straight(40), straight(42), AtCorners.PASS);
        MatedSeams.Mated mated = answers(seams, asked);
        assertEquals(11, mated.holes());
        assertEquals("4", shown(mated.gap()));
        assertEquals("4.2", shown(mated.gapOnMate()));
        assertEquals(0.05, mated.ease(), 1e-12);
        assertEquals(List.of("0", "4", "8"), shown(mated.places()).subList(0, 3));
        assertEquals(List.of("0", "4.2", "8.4"), shown(mated.placesOnMate()).subList(0, 3));
        assertEquals(11, mated.placesOnMate().size());
        assertEquals(
                11,
                mated.marksOnMate().shapes().stream()
                        .filter(shape -> shape.role() == Role.STITCH_HOLE)
                        .count());
        assertEquals(List.of(SLANT), told(seams, asked));
        assertEquals(
                List.of("p2 = L2 / g | L2 42, g 10 | 4.2", "e = L2 / L1 - 1 | L2 42, L1 40 | 0.05"),
                working(seams, asked));
    }

    /** A gusset round three sides: corners answer corners, so each side has as many holes as its mate. */
    @Test
    void cornersAnswerCorners() {
        SewnLine panel = drawn("M 0 40 V 0 H 60 V 40");
        SewnLine gusset = drawn("M 0 42 V 0 H 63 V 42");
        MatedSeams.Mated mated = answers(seams, lines(panel, gusset, AtCorners.MARK));
        assertEquals(36, mated.holes());
        assertEquals("42", shown(mated.placesOnMate().get(10)));
        assertEquals("105", shown(mated.placesOnMate().get(25)));
        assertEquals(
                List.of("corners-differ at mate [2, 0]"), told(seams, lines(panel, straight(140), AtCorners.MARK)));
        assertEquals(List.of(SLANT), told(seams, lines(panel, straight(140), AtCorners.PASS)));
    }

    @Test
    void whatCannotMeetIsTold() {
        assertEquals(
                List.of("open-and-closed at mate []"),
                told(seams, lines(straight(40), drawn("M 0 0 H 10 V 10 H 0 Z"), AtCorners.PASS)));
        assertEquals(
                List.of(SLANT, "much-ease at mate [9]"),
                told(seams, lines(straight(100), straight(91), AtCorners.PASS)));
        assertEquals(List.of(SLANT), told(seams, lines(straight(100), straight(108), AtCorners.PASS)));
        assertEquals(
                "line-unreadable at mate",
                told(seams, lines(straight(100), drawn("?"), AtCorners.PASS))
                        .get(0)
                        .substring(0, 23));
    }
}
