package org.hidewright.straps;

import static org.hidewright.straps.OutsideChecksTest.answers;
import static org.hidewright.straps.Straps.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hidewright.straps.KeeperLength.KeeperJoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeeperLengthTest {
    private static double cut(KeeperJoint joint) {
        return answers(new KeeperLength(), Keepers.keeper(3, 1.5, 1, joint))
                .cutLength()
                .mm();
    }

    /** 2 (38 + 9) - 8 + 2 π round the stack, 1.5 ease, 2 π · 0.5 · 2 for the thickness. */
    private static final double BUTTED = 2 * (38 + 9) - 8 + 2 * Math.PI + 1.5 + 2 * Math.PI;

    @Test
    void aButtedKeeperGoesOnceRoundTheStackItsEaseAndItsOwnThickness() {
        KeeperLength.Blank blank = answers(new KeeperLength(), Keepers.keeper(3, 1.5, 1));
        assertEquals(BUTTED, blank.cutLength().mm(), 1e-9);
        assertEquals(blank.cutLength(), blank.blank().width());
        assertEquals(12, blank.blank().height().mm());
        assertEquals(9, blank.stackHeight().mm(), 1e-9);
        assertEquals(BUTTED - 2 * Math.PI, blank.insideLength().mm(), 1e-9);
        assertEquals(38 + 1.5 / 4, blank.inside().width().mm(), 1e-9);
        assertEquals(9 + 1.5 / 4, blank.inside().height().mm(), 1e-9);
    }

    @ParameterizedTest(name = "lap {0} goes round {1} corners")
    @CsvSource({"12, 0", "36, 0", "37, 1", "44, 1", "45.6, 2", "82.1, 2", "82.2, 3"})
    void aLapAddsItsLengthAndAQuarterTurnOfThicknessForEachCornerItGoesRound(double lap, int corners) {
        // broad side 36 between corners of π/2, then 7 on the narrow side, then 36 again
        assertEquals(BUTTED + lap + corners * Math.PI / 2 * 2, cut(new KeeperJoint.Lapped(mm(lap))), 1e-9);
    }
}
