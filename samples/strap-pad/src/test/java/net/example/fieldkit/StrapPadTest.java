package net.example.fieldkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.example.fieldkit.StrapPad.Made;
import net.example.fieldkit.StrapPad.Pad;
import net.example.fieldkit.StrapPad.Slide;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

class StrapPadTest {
    private static Outcome<Made> worked(double strap, double width) {
        return worked(strap, width, 15);
    }

    private static Outcome<Made> worked(double strap, double width, double beyond) {
        return new StrapPad()
                .calculate(
                        new Pad(
                                new Slide(Length.ofMm(strap), Length.ofMm(2.5)),
                                Length.ofMm(220),
                                Length.ofMm(width),
                                Length.ofMm(beyond),
                                Length.ofMm(4),
                                Length.ofMm(1.6),
                                Length.ofMm(3.85)),
                        Working.NONE);
    }

    private static Made made(double strap, double width) {
        return worked(strap, width).answers().orElseThrow();
    }

    @Test
    void theSlotsLetTheStrapThrough() {
        Made made = made(20, 60);
        assertEquals(21, made.slotLength().mm(), 1e-9);
        assertEquals(3.5, made.slotWidth().mm(), 1e-9);
        for (String layer : List.of("upper", "lining")) {
            Part part = made.item().part(layer).orElseThrow();
            Box left = part.cutOuts().get(0).bounds();
            Box right = part.cutOuts().get(1).bounds();
            assertEquals(15, left.minX(), 1e-9);
            assertEquals(220 - 15, right.maxX(), 1e-9);
            assertEquals(3.5, left.width(), 1e-9);
            assertEquals(21, right.height(), 1e-9);
            assertEquals(30, (left.minY() + left.maxY()) / 2, 1e-9, "in the middle of 60 mm");
        }
    }

    @Test
    void theSeamIsAsLongAsItsLine() {
        Made made = made(20, 60);
        // two straights of 220 - 40 mm and of 60 - 40 mm, and a circle of 20 - 4 mm radius
        assertEquals(2 * (180 + 20) + 2 * Math.PI * 16, made.rim().mm(), 1e-9);
        Curve line = Curve.of(
                made.item().part("upper").orElseThrow().stitchLines().get(0).line());
        assertEquals(line.length(), made.rim().mm(), 1e-6);
    }

    @Test
    void bothLayersArePiercedAlike() {
        var item = made(20, 60).item();
        assertEquals(
                item.part("upper").orElseThrow().stitchLines().get(0).holes(),
                item.part("lining").orElseThrow().stitchLines().get(0).holes());
    }

    @Test
    void aStrapThatRunsIntoTheSeamIsRefused() {
        // 41 mm of slot, 52 mm between the seams, the last 15 mm of them round
        assertEquals(
                List.of(StrapPad.NO_ROOM.at("width", Length.ofMm(61), Length.ofMm(60))),
                worked(60, 60).notices());
        assertEquals(List.of(StrapPad.KNIFE.with()), worked(20, 60).notices());
    }

    @Test
    void asMuchLeatherIsBetweenTheSlotsAsBeyondThem() {
        // 220 mm: three stretches of 71 mm and two slots of 3.5 mm
        assertEquals(List.of(StrapPad.KNIFE.with()), worked(20, 60, 71).notices());
        assertEquals(
                List.of(StrapPad.SLOTS_MEET.at("beyond-slot", Length.ofMm(71.1), Length.ofMm(220))),
                worked(20, 60, 71.1).notices());
    }
}
