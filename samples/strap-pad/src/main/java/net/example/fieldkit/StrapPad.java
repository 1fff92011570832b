package net.example.fieldkit;

import java.util.List;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** A pad of two layers that slides on the strap of binoculars, which goes through a slot at either end. */
@Component(service = Calculator.class)
@Calculates("strap-pad")
public final class StrapPad implements Calculator<StrapPad.Pad, StrapPad.Made> {

    /** The slide on the strap; what goes through it goes through the slots. Its keys are columns of the workshop’s hardware. */
    public record Slide(
            @Asked(unit = "mm", min = "8 mm", max = "60 mm", usual = "15-30 mm", example = "20 mm")
            Length insideWidth,

            @Asked(unit = "mm", min = "0.5 mm", max = "8 mm", usual = "1-4 mm", example = "2.5 mm")
            Length strapAtMost) {}

    /** What is asked. */
    public record Pad(
            @Asked Slide slide,

            @Asked(unit = "mm", min = "80 mm", max = "600 mm", usual = "150-300 mm", preset = "220 mm")
            Length length,

            @Asked(unit = "mm", min = "25 mm", max = "150 mm", usual = "45-80 mm", preset = "55 mm")
            Length width,

            @Asked(unit = "mm", min = "6 mm", max = "60 mm", usual = "10-25 mm", preset = "15 mm")
            Length beyondSlot,

            @Asked(unit = "mm", min = "2 mm", max = "12 mm", usual = "3-5 mm", preset = "4 mm")
            Length margin,

            @Asked(unit = "mm", min = "0.6 mm", max = "5 mm", usual = "1-2.5 mm", preset = "1.6 mm")
            Length thickness,

            @Asked(unit = "mm", min = "1.5 mm", max = "10 mm", usual = "2.7-5 mm", preset = "3.85 mm")
            Length pitch) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "slot-length", lead = true)
            Length slotLength,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "slot-width", lead = true)
            Length slotWidth,

            @Answered(unit = "mm", step = "1 mm", round = Rounding.UP, by = "rim")
            Length rim,

            @Answered Item item) {}

    private static final Source ROOM = Source.of("slot-room", Source.Kind.COMMON_PRACTICE);
    private static final Source GEOMETRY = Source.of("pad-geometry", Source.Kind.DEFINITION);

    static final Formula SLOT_LENGTH = Formula.of("slot-length", "l = b + 1 mm", ROOM);
    static final Formula SLOT_WIDTH = Formula.of("slot-width", "w = t + 1 mm", ROOM);
    static final Formula RIM = Formula.of("rim", "S = 2 · (L + W - 4 · m) - (8 - 2 · π) · (r - m)", GEOMETRY);

    static final NoticeKind NO_ROOM = NoticeKind.stop("no-room");
    static final NoticeKind SLOTS_MEET = NoticeKind.stop("slots-meet");
    static final NoticeKind KNIFE = NoticeKind.caution("knife");

    @Override
    public List<Formula> formulas() {
        return List.of(SLOT_LENGTH, SLOT_WIDTH, RIM);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, SLOTS_MEET, KNIFE);
    }

    @Override
    public Outcome<Made> calculate(Pad asked, Working working) {
        PadSizes sizes = PadSizes.of(asked);
        // The strap pulls on the leather between the slots as on that beyond them.
        if (sizes.between().compareTo(asked.beyondSlot()) < 0) {
            return Outcome.refuse(SLOTS_MEET.at("beyond-slot", asked.beyondSlot(), asked.length()));
        }
        working.step(SLOT_LENGTH, sizes.slotLength(), "b", asked.slide().insideWidth());
        working.step(SLOT_WIDTH, sizes.slotWidth(), "t", asked.slide().strapAtMost());
        working.step(
                RIM, sizes.rim(), "L", asked.length(), "W", asked.width(), "m", asked.margin(), "r", sizes.corner());
        try {
            Item item = new PadParts(asked, sizes).item();
            return Outcome.of(
                    new Made(sizes.slotLength(), sizes.slotWidth(), sizes.rim(), item), List.of(KNIFE.with()));
        } catch (NoRoom e) {
            return Outcome.refuse(NO_ROOM.at("width", sizes.slotLength(), asked.width()));
        }
    }
}
