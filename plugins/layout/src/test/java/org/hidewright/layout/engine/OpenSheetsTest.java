package org.hidewright.layout.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OpenSheetsTest {
    private static Stack[] carrying(double... areas) {
        Stack[] stacks = new Stack[areas.length];
        for (int sheet = 0; sheet < areas.length; sheet++) {
            stacks[sheet] = areas[sheet] == 0 ? Stack.EMPTY : new Stack(List.of(sheet), new Places(1), areas[sheet]);
        }
        return stacks;
    }

    private static OpenSheets sheets(double[] areas, double[] costs) {
        return new OpenSheets(areas, costs, false, new SplittableRandom(4));
    }

    @Test
    void theCheapestForTheirAreaComeFirst() {
        OpenSheets sheets = sheets(new double[] {100, 200, 50}, new double[] {5, 8, 1});
        assertArrayEquals(new int[] {2, 1, 0}, sheets.open());
    }

    /** 60 of 100 for 5, 20 of 100 for 5: by price for what it carries the second is dearest; the first alone has room for all. */
    @Test
    void theOneThatSavesMostForWhatItCarriesIsClosed() {
        Stack[] stacks = carrying(60, 20);
        OpenSheets sheets = sheets(new double[] {100, 100}, new double[] {5, 5});
        assertTrue(sheets.closeTheDearest(stacks));
        assertArrayEquals(new int[] {0}, sheets.open());
        assertFalse(sheets.closeTheDearest(stacks), "nothing would be left");
    }

    @Test
    void noneIsClosedWhereTheOthersAreTooSmall() {
        Stack[] stacks = carrying(60, 50);
        OpenSheets sheets = sheets(new double[] {100, 100}, new double[] {5, 5});
        assertFalse(sheets.closeTheDearest(stacks));
        assertFalse(sheets.closeAnother(stacks));
        assertEquals(2, sheets.open().length);
    }

    /** Parts that touch may fill a panel to its edges; others are kept from trying so. */
    @Test
    void onlyWhatTouchesFillsASheet() {
        Stack[] stacks = carrying(60, 40);
        double[] areas = {100, 100};
        double[] costs = {5, 5};
        OpenSheets touching = new OpenSheets(areas, costs, true, new SplittableRandom(4));
        assertEquals(100, touching.most(0));
        assertTrue(touching.closeTheDearest(stacks));
        OpenSheets apart = sheets(areas, costs);
        assertEquals(98, apart.most(0));
        assertFalse(apart.closeTheDearest(stacks));
    }

    /** A hide for 10 is given up for a remnant for 3 that was not used, but not for two that cost 10 together. */
    @Test
    void cheaperOnesAreOpenedInItsPlace() {
        Stack[] stacks = carrying(40, 0, 0);
        OpenSheets sheets = sheets(new double[] {100, 60, 60}, new double[] {10, 3, 7});
        sheets.onlyThoseInUse(stacks);
        assertArrayEquals(new int[] {0}, sheets.open());
        assertTrue(sheets.closeTheDearest(stacks));
        assertArrayEquals(new int[] {1}, sheets.open());
    }

    /** Drawn by chance, yet what is open has always room for all and never costs more than before. */
    @Test
    void anotherOneIsClosedByChanceWithinTheSameRules() {
        double[] areas = {100, 90, 80, 120, 70, 100};
        double[] costs = {4, 4, 4, 5, 3, 4};
        Stack[] stacks = carrying(50, 40, 30, 60, 0, 0);
        boolean[] wasClosed = new boolean[areas.length];
        boolean tookAnUnusedOne = false;
        OpenSheets sheets = sheets(areas, costs);
        for (int draw = 0; draw < 200; draw++) {
            sheets.onlyThoseInUse(stacks);
            assertTrue(sheets.closeAnother(stacks));
            int[] open = sheets.open();
            assertTrue(180
                    <= 0.98
                            * Arrays.stream(open)
                                    .mapToDouble(sheet -> areas[sheet])
                                    .sum());
            assertTrue(Arrays.stream(open).mapToDouble(sheet -> costs[sheet]).sum() < 17);
            for (int sheet = 0; sheet < areas.length; sheet++) {
                wasClosed[sheet] |= sheets.isClosed(sheet);
            }
            tookAnUnusedOne |= !sheets.isClosed(4) || !sheets.isClosed(5);
        }
        assertArrayEquals(new boolean[] {true, true, true, true, true, true}, wasClosed);
        assertTrue(tookAnUnusedOne);
    }
}
