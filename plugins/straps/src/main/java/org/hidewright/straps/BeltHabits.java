package org.hidewright.straps;

import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** Which answers about a belt stand on habits of the trade, because what was asked keeps to them. */
final class BeltHabits {
    private static final double INCH_MM = 25.4;
    static final Length SPACING = Length.ofMm(25);
    private static final double LEAST_TIP_MM = 75;
    private static final double MOST_TIP_MM = 125;
    static final Length LEAST_TURN_BACK = Length.ofMm(60);
    static final Length MOST_TURN_BACK = Length.ofMm(90);
    private static final double SLOT_MM = 25;
    private static final double SLOT_WIDTH_MM = 5;

    private BeltHabits() {}

    static void credit(BeltLayout.Belt belt, Working working) {
        boolean row = (belt.holes() == 5 || belt.holes() == 7)
                && (belt.spacing().mm() == SPACING.mm() || belt.spacing().mm() == INCH_MM);
        credit(working, "smallest-size", row);
        credit(working, "largest-size", row);
        credit(working, "fold-to-tip", within(belt.tipBeyond(), LEAST_TIP_MM, MOST_TIP_MM));
        credit(working, "slot-centre", within(belt.turnBackLength(), LEAST_TURN_BACK.mm(), MOST_TURN_BACK.mm()));
        boolean slot = belt.slotLength().mm() == SLOT_MM && belt.slotWidth().mm() == SLOT_WIDTH_MM;
        credit(working, "slot-start", slot);
        credit(working, "slot-end", slot);
    }

    private static void credit(Working working, String answer, boolean kept) {
        Origins.creditHabit(working, answer, Origins.BELT_HABITS, kept);
    }

    private static boolean within(Length length, double leastMm, double mostMm) {
        return length.mm() >= leastMm && length.mm() <= mostMm;
    }
}
