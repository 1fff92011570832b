package org.hidewright.straps;

import static org.hidewright.straps.DrawnLines.dimensions;
import static org.hidewright.straps.DrawnLines.holes;
import static org.hidewright.straps.DrawnLines.labels;
import static org.hidewright.straps.DrawnLines.paths;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Role;
import org.junit.jupiter.api.Test;

/**
 * What the flat strap shows and where, worked by hand: 20 mm wide and 3 mm thick, round a bar of 4 mm, where the fold takes
 * π (2 + 0.6 · 3) = 11.938 mm.
 */
class FlatViewTest {
    @Test
    void aShortStrapIsDrawnWhole() {
        Drawing flat = layout(strap(
                        3,
                        List.of(straight("leg", 60), roundBar("ring", 4), straight("tip", 60)),
                        hole("rivet", "leg", From.START, 10),
                        new Feature.Slot("slot", mm(16), mm(4), "tip", From.MIDDLE, mm(0), Optional.empty()),
                        new Feature.StitchRow(
                                "row", "leg", From.START, mm(5), "leg", From.END, mm(15), mm(3), Optional.empty()),
                        new Feature.FoldLine("line", "tip", From.END, mm(5), Optional.empty()),
                        new Feature.Mark("notch", "leg", From.END, mm(8), Optional.empty())))
                .flatView();
        // 60 + 11.938 + 60; the slot's middle at 71.938 + 30, its round ends of 2 mm about 6 mm from there
        assertEquals(List.of("0.00 0.00, 131.94 0.00, 131.94 20.00, 0.00 20.00, 0.00 0.00"), paths(flat, Role.CUT));
        assertEquals(
                List.of("60.00 0.00, 60.00 20.00", "71.94 0.00, 71.94 20.00", "126.94 0.00, 126.94 20.00"),
                paths(flat, Role.FOLD));
        assertEquals(List.of("52.00 0.00, 52.00 20.00"), paths(flat, Role.MARK));
        assertEquals(List.of("5.00 3.00, 45.00 3.00", "5.00 17.00, 45.00 17.00"), paths(flat, Role.STITCH));
        assertEquals(
                List.of("95.94 8.00, 107.94 8.00, round 107.94 10.00 to 107.94 12.00, "
                        + "95.94 12.00, round 95.94 10.00 to 95.94 8.00"),
                paths(flat, Role.INNER_CUT));
        assertEquals(List.of("0.00 10.00, 131.94 10.00"), paths(flat, Role.NOTE));
        assertEquals(List.of("10.00 10.00 ⌀ 4.0"), holes(flat));
        assertEquals(List.of("leg at 30.00 20.00", "ring at 65.97 20.00", "tip at 101.94 20.00"), labels(flat));
        assertEquals(
                List.of(
                        "0.00 0.00 to 10.00 0.00 beside -5: 10.00",
                        "0.00 0.00 to 52.00 0.00 beside -10: 52.00",
                        "0.00 0.00 to 101.94 0.00 beside -15: 101.94",
                        "0.00 0.00 to 126.94 0.00 beside -20: 126.94",
                        "0.00 0.00 to 131.94 0.00 beside -25: 131.94",
                        "131.94 0.00 to 131.94 20.00 beside -5: 20.00",
                        "0.00 0.00 to 0.00 10.00 beside 5: 10.00"),
                dimensions(flat));
    }

    @Test
    void aSkiveIsAFieldWithItsRampsRunningOut() {
        Drawing flat = layout(Straps.skivedRing()).flatView();
        // the fold of 1 mm takes π (2 + 0.6) = 8.168 mm; ramps of 9 mm; the field 6 % of the width in from the edges
        assertEquals(List.of("60.00 0.00, 60.00 20.00", "68.17 0.00, 68.17 20.00"), paths(flat, Role.FOLD));
        assertEquals(
                List.of(
                        "60.00 1.20, 60.00 18.80",
                        "68.17 1.20, 68.17 18.80",
                        "60.00 1.20, 68.17 1.20",
                        "60.00 18.80, 68.17 18.80",
                        "51.00 10.00, 60.00 1.20",
                        "77.17 10.00, 68.17 1.20",
                        "51.00 10.00, 60.00 18.80",
                        "77.17 10.00, 68.17 18.80"),
                paths(flat, Role.NOTE));
        assertEquals(
                List.of("0.00 0.00 to 128.17 0.00 beside -5: 128.17", "128.17 0.00 to 128.17 20.00 beside -5: 20.00"),
                dimensions(flat));
    }

    /**
     * Kept are 14 mm round the ends, the fold (200 to 211.938), the hole at 100, the slot (303.938 to 319.938) and the ends
     * of the row (5 and 185). Left out are 19 to 86, 114 to 171, 225.938 to 289.938 and 333.938 to 397.938, each for a gap of
     * 8 mm: what lies beyond them is drawn 59, 108, 164 and 220 mm nearer.
     */
    @Test
    void aLongStrapIsBrokenWhereNothingHappens() {
        Drawing flat = layout(strap(
                        3,
                        List.of(straight("leg", 200), roundBar("ring", 4), straight("tip", 200)),
                        hole("rivet", "leg", From.START, 100),
                        new Feature.Slot("slot", mm(16), mm(4), "tip", From.MIDDLE, mm(0), Optional.empty()),
                        new Feature.StitchRow(
                                "row", "leg", From.START, mm(5), "leg", From.END, mm(15), mm(3), Optional.empty())))
                .flatView();
        assertEquals(
                List.of(
                        "19.00 0.00, 0.00 0.00, 0.00 20.00, 19.00 20.00",
                        "27.00 0.00, 55.00 0.00",
                        "27.00 20.00, 55.00 20.00",
                        "63.00 0.00, 117.94 0.00",
                        "63.00 20.00, 117.94 20.00",
                        "125.94 0.00, 169.94 0.00",
                        "125.94 20.00, 169.94 20.00",
                        "177.94 0.00, 191.94 0.00, 191.94 20.00, 177.94 20.00"),
                paths(flat, Role.CUT));
        assertEquals(List.of("92.00 0.00, 92.00 20.00", "103.94 0.00, 103.94 20.00"), paths(flat, Role.FOLD));
        assertEquals(
                List.of(
                        "19.00 0.00, 19.00 20.00",
                        "27.00 0.00, 27.00 20.00",
                        "55.00 0.00, 55.00 20.00",
                        "63.00 0.00, 63.00 20.00",
                        "117.94 0.00, 117.94 20.00",
                        "125.94 0.00, 125.94 20.00",
                        "169.94 0.00, 169.94 20.00",
                        "177.94 0.00, 177.94 20.00",
                        "0.00 10.00, 19.00 10.00",
                        "27.00 10.00, 55.00 10.00",
                        "63.00 10.00, 117.94 10.00",
                        "125.94 10.00, 169.94 10.00",
                        "177.94 10.00, 191.94 10.00"),
                paths(flat, Role.NOTE));
        assertEquals(
                List.of(
                        "5.00 3.00, 19.00 3.00",
                        "27.00 3.00, 55.00 3.00",
                        "63.00 3.00, 77.00 3.00",
                        "5.00 17.00, 19.00 17.00",
                        "27.00 17.00, 55.00 17.00",
                        "63.00 17.00, 77.00 17.00"),
                paths(flat, Role.STITCH));
        assertEquals(List.of("41.00 10.00 ⌀ 4.0"), holes(flat));
        assertEquals(
                List.of("141.94 8.00, 153.94 8.00, round 153.94 10.00 to 153.94 12.00, "
                        + "141.94 12.00, round 141.94 10.00 to 141.94 8.00"),
                paths(flat, Role.INNER_CUT));
        // the leg's longest part is drawn from 171 to 200, the tip's from 289.938 to 333.938
        assertEquals(List.of("leg at 77.50 20.00", "ring at 97.97 20.00", "tip at 147.94 20.00"), labels(flat));
        assertEquals(
                List.of(
                        "0.00 0.00 to 41.00 0.00 beside -5: 100.00",
                        "0.00 0.00 to 147.94 0.00 beside -10: 311.94",
                        "0.00 0.00 to 191.94 0.00 beside -15: 411.94",
                        "191.94 0.00 to 191.94 20.00 beside -5: 20.00",
                        "0.00 0.00 to 0.00 10.00 beside 5: 10.00"),
                dimensions(flat));
    }
}
