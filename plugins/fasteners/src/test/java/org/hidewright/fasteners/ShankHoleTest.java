package org.hidewright.fasteners;

import static org.hidewright.fasteners.Fitted.lengths;
import static org.hidewright.fasteners.Fitted.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

/** The punch nearest to what is wanted, held against trying each. */
class ShankHoleTest {
    @Test
    void theNearestPunchThatSuitsIsFoundWhateverThePunches() {
        Random random = new Random(273);
        int found = 0;
        for (int round = 0; round < 20_000; round++) {
            double shank = 1 + 9 * random.nextDouble();
            Temper temper = Temper.values()[random.nextInt(3)];
            ShankHole hole = ShankHole.of(mm(shank), temper);
            List<Length> punches = new ArrayList<>();
            for (int i = random.nextInt(8); i > 0; i--) {
                punches.add(mm(Math.rint((shank - 1 + 2 * random.nextDouble()) * 10) / 10));
            }
            Length best = null;
            for (Length punch : punches) {
                boolean suits = punch.mm() >= hole.least().mm() - 1e-9
                        && punch.mm() <= hole.most().mm() + 1e-9;
                double off = Math.abs(punch.mm() - hole.wanted().mm());
                if (suits
                        && (best == null
                                || off < Math.abs(best.mm() - hole.wanted().mm()) - 1e-6)) {
                    best = punch;
                }
            }
            Optional<Length> nearest = hole.nearest(punches);
            assertEquals(best != null, nearest.isPresent());
            if (best != null) {
                found++;
                assertEquals(
                        Math.abs(best.mm() - hole.wanted().mm()),
                        Math.abs(nearest.get().mm() - hole.wanted().mm()),
                        1e-6);
            }
        }
        assertTrue(found > 1000, "punches were found " + found + " times");
    }

    @Test
    void ofTwoAsNearTheNarrowerIsTakenSinceAHoleCanBeOpened() {
        ShankHole hole = ShankHole.of(mm(3), Temper.SOFT);
        assertEquals(Optional.of(mm(2.8)), hole.nearest(lengths(3.2, 2.8)));
        assertEquals(Optional.of(mm(3.2)), hole.nearest(lengths(3.2, 2.6)));
        assertEquals(Optional.empty(), hole.nearest(lengths(2.6, 3.5)));
        assertEquals(Optional.of(mm(2.6)), hole.nearestAtAll(lengths(2.6, 3.5)));
    }

    @Test
    void softLeatherMayBeNarrowerAndFirmMayNot() {
        assertEquals(mm(2.7), ShankHole.of(mm(3), Temper.SOFT).least());
        assertEquals(mm(2.85), ShankHole.of(mm(3), Temper.MEDIUM).least());
        assertEquals(mm(3), ShankHole.of(mm(3), Temper.FIRM).least());
        assertEquals(Origins.ISO_273, ShankHole.of(mm(3), Temper.FIRM).source());
        assertEquals(Origins.HOLE_HABIT, ShankHole.of(mm(3), Temper.SOFT).source());
    }

    /** Common practice: barrel less 0 to 0.3 mm. */
    @Test
    void aBarrelThatIsRolledOverIsNeverLoose() {
        ShankHole hole = ShankHole.ofBarrel(mm(5));
        assertEquals(mm(5), hole.wanted());
        assertTrue(hole.suits(mm(4.7)));
        assertTrue(hole.suits(mm(5)));
        assertFalse(hole.suits(mm(4.69)));
        assertFalse(hole.suits(mm(5.01)));
    }

    /** Of a shank between two threads the clearance of the thinner one, below M1.6 that of M1.6, above M10 that of M10. */
    @Test
    void betweenThreadsTheThinnerOneCounts() {
        assertEquals(3.4 + 0.2, ClearanceHoles.fine(mm(3.4)).mm(), 1e-9);
        assertEquals(3.4 + 0.4, ClearanceHoles.medium(mm(3.4)).mm(), 1e-9);
        assertEquals(1.1, ClearanceHoles.fine(mm(1)).mm(), 1e-9);
        assertEquals(12 + 0.5, ClearanceHoles.fine(mm(12)).mm(), 1e-9);
        assertEquals(12 + 1, ClearanceHoles.medium(mm(12)).mm(), 1e-9);
    }
}
