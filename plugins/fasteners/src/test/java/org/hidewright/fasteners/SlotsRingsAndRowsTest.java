package org.hidewright.fasteners;

import static org.hidewright.fasteners.Fitted.PLAIN;
import static org.hidewright.fasteners.Fitted.answers;
import static org.hidewright.fasteners.Fitted.mm;
import static org.hidewright.fasteners.Fitted.notice;
import static org.hidewright.fasteners.Fitted.told;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;
import org.junit.jupiter.api.Test;

/** Prong slots, rings, magnetic closures and rows, worked by hand on paper. */
class SlotsRingsAndRowsTest {
    private static ProngSlot.Prong prong(double base, double width, double strap, ProngSlot.SlotPunch... punches) {
        return new ProngSlot.Prong(
                mm(base),
                mm(width),
                mm(3),
                mm(strap),
                Optional.of(List.of(punches)).filter(p -> !p.isEmpty()),
                false);
    }

    private static ProngSlot.SlotPunch slot(String id, double length, double width) {
        return new ProngSlot.SlotPunch(id, mm(length), mm(width));
    }

    /** Base 12 and twice 3 mm of leather: 18 long; prong 3 and a millimetre: 4 wide; 25 mm of strap leave 10.5. */
    @Test
    void aSlotIsAsLongAsTheProngsBaseAndTwiceTheLeather() {
        ProngSlot.Slot slot = answers(new ProngSlot(), prong(12, 3, 25));
        assertEquals(mm(18), slot.length());
        assertEquals(mm(4), slot.width());
        assertEquals(mm(10.5), slot.leftBeside());
        assertEquals(Optional.empty(), slot.punch());
        Path outline = slot.slot().shapes().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .filter(path -> path.role() == Role.INNER_CUT)
                .findFirst()
                .orElseThrow();
        assertEquals(18, outline.bounds().width(), 1e-9);
        assertEquals(4, outline.bounds().height(), 1e-9);
        assertEquals(List.of("struck-tools"), told(new ProngSlot(), prong(12, 3, 25)));
    }

    @Test
    void theShortestPunchThatIsLargeEnoughIsTaken() {
        ProngSlot.Prong asked = prong(
                12,
                3,
                25,
                slot("short", 17, 4),
                slot("thin", 18, 3.4),
                slot("long", 25, 4),
                slot("right", 20, 5),
                slot("same", 20, 4),
                slot("wide", 18, 7.5));
        ProngSlot.Slot slot = answers(new ProngSlot(), asked);
        assertEquals(Optional.of("same"), slot.punch());
        assertEquals(
                Optional.of("at"),
                answers(new ProngSlot(), prong(12, 3, 25, slot("at", 24, 7))).punch());
        assertEquals(
                Optional.of("half"),
                answers(new ProngSlot(), prong(12, 3, 25, slot("half", 18, 3.5)))
                        .punch());
        assertEquals(
                "no-slot-punch-fits at slot-punches [18.0, 4.0]",
                notice(new ProngSlot(), prong(12, 3, 25, slot("short", 17, 4)), "no-slot-punch-fits"));
        assertEquals(
                mm(9),
                answers(new ProngSlot(), prong(12, 3, 25, slot("at", 24, 7))).leftBeside());
    }

    @Test
    void littleLeatherBesideASlotIsCaught() {
        assertEquals(
                "slot-leaves-little at strap-width [5.9, 6.0]",
                notice(new ProngSlot(), prong(12, 3, 15.8), "slot-leaves-little"));
        assertEquals("not told", notice(new ProngSlot(), prong(12, 3, 16), "slot-leaves-little"));
        assertEquals(
                "slot-wider-than-strap at strap-width [4.0, 4.0]",
                notice(new ProngSlot(), prong(12, 3, 4), "slot-wider-than-strap"));
        ProngSlot.Prong pulled = new ProngSlot.Prong(mm(12), mm(3), mm(3), mm(25), Optional.empty(), true);
        assertEquals(List.of("struck-tools", "fitting-no-load"), told(new ProngSlot(), pulled));
    }

    private static RingHeld.Held ring(double inside, double bar, double thickness) {
        return new RingHeld.Held(new RingHeld.Ring(mm(inside), mm(bar)), mm(thickness), mm(9), PLAIN);
    }

    /** Half a bar of 3, leather of 2.4 and half a cap of 9: 8.4 from the bar’s middle. */
    @Test
    void aRivetKeepsClearOfTheRing() {
        RingHeld.Places places = answers(new RingHeld(), ring(20, 3, 2.4));
        assertEquals(mm(19), places.leatherWidth());
        assertEquals(8.4, places.barToRivet().mm(), 1e-9);
        assertEquals(mm(4.8), places.stackAtRivet());
        assertEquals(List.of(), told(new RingHeld(), ring(20, 3, 2.4)));
        assertEquals(
                "ring-bar-thin at ring.bar-diameter [1.1, 2.4]",
                notice(new RingHeld(), ring(20, 1.1, 2.4), "ring-bar-thin"));
        assertEquals("not told", notice(new RingHeld(), ring(20, 1.2, 2.4), "ring-bar-thin"));
        assertEquals("ring-no-room at thickness [2.4, 4.8]", notice(new RingHeld(), ring(4.8, 3, 2.4), "ring-no-room"));
        assertEquals(
                List.of("nickel", "small-parts", "fitting-no-load"),
                told(
                        new RingHeld(),
                        new RingHeld.Held(
                                new RingHeld.Ring(mm(20), mm(3)), mm(2.4), mm(9), new Use(true, true, true))));
    }

    private static MagnetClosure.Pronged magnet(double apart, double prong) {
        return new MagnetClosure.Pronged(mm(18), mm(4), mm(apart), mm(prong), mm(0.8), mm(2), PLAIN);
    }

    /** Prongs of 8 through 2 mm of leather and a washer of 0.8 leave 5.2 to bend. */
    @Test
    void aMagneticClosureHasTwoSlits() {
        MagnetClosure.Slits slits = answers(new MagnetClosure(), magnet(9, 8));
        assertEquals(mm(4.5), slits.slit());
        assertEquals(mm(9), slits.apart());
        assertEquals(5.2, slits.bentOver().mm(), 1e-9);
        assertEquals(mm(12), slits.fromEdge());
        assertEquals(List.of("magnet-which-half", "magnets"), told(new MagnetClosure(), magnet(9, 8)));
        assertEquals(
                "magnet-prongs-too-short at prong-length [2.9, 3.0]",
                notice(new MagnetClosure(), magnet(9, 5.7), "magnet-prongs-too-short"));
        assertEquals("not told", notice(new MagnetClosure(), magnet(9, 5.8), "magnet-prongs-too-short"));
        assertEquals(
                "magnet-prongs-wider-than-it at prongs-apart [18.0, 18.0]",
                notice(new MagnetClosure(), magnet(18, 8), "magnet-prongs-wider-than-it"));
        double[] xs = slits.slits().shapes().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .filter(path -> path.role() == Role.INNER_CUT)
                .mapToDouble(path -> path.bounds().minX())
                .toArray();
        assertEquals(9, xs[1] - xs[0], 1e-9);
    }

    private static FittingRow.Row row(double length, int count, double margin, double head) {
        return new FittingRow.Row(mm(length), count, mm(margin), mm(4), mm(head));
    }

    @Test
    void aRowIsSpacedEvenlyFromMarginToMargin() {
        FittingRow.Spaced spaced = answers(new FittingRow(), row(140, 5, 10, 9));
        assertEquals(mm(30), spaced.pitch());
        assertEquals(mm(12), spaced.pitchAtLeast());
        assertEquals(
                List.of("f1 10.0", "f2 40.0", "f3 70.0", "f4 100.0", "f5 130.0"),
                spaced.places().stream()
                        .map(place -> place.id() + " " + place.at().mm())
                        .toList());
        assertEquals(List.of(), told(new FittingRow(), row(140, 5, 10, 9)));
        assertEquals(
                "row-too-close at count [11.0, 12.0]", notice(new FittingRow(), row(42, 3, 10, 9), "row-too-close"));
        assertEquals("not told", notice(new FittingRow(), row(44, 3, 10, 9), "row-too-close"));
        assertEquals(
                "row-heads-meet at count [11.0, 11.5]",
                notice(new FittingRow(), row(42, 3, 10, 11.5), "row-heads-meet"));
        assertEquals("not told", notice(new FittingRow(), row(42, 3, 10, 11), "row-heads-meet"));
        assertEquals(
                "row-no-room at end-margin [10.0, 20.0]", notice(new FittingRow(), row(20, 2, 10, 9), "row-no-room"));
    }
}
