package org.hidewright.fasteners;

import static org.hidewright.fasteners.Fitted.PLAIN;
import static org.hidewright.fasteners.Fitted.answers;
import static org.hidewright.fasteners.Fitted.lengths;
import static org.hidewright.fasteners.Fitted.mm;
import static org.hidewright.fasteners.Fitted.punches;
import static org.hidewright.fasteners.Fitted.stack;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

/** What is drawn and where, in mm, worked by hand: holes are pierced by these pictures. */
class PicturesTest {
    private static String told(Drawing drawing) {
        return drawing.shapes().stream().map(PicturesTest::told).collect(Collectors.joining("\n")) + "\n";
    }

    private static String told(Shape shape) {
        if (shape instanceof Circle circle) {
            return "hole " + at(circle.centre()) + " across " + number(circle.diameter());
        } else if (shape instanceof Path path) {
            return path.role().name().toLowerCase(Locale.ROOT).replace('_', ' ') + " "
                    + path.segments().stream()
                            .map(segment -> at(segment.start()) + " to " + at(segment.end()))
                            .collect(Collectors.joining(", "));
        } else if (shape instanceof Label label) {
            return "“" + words(label.words()) + "” " + at(label.at()) + " high " + number(label.height());
        }
        DimensionLine line = (DimensionLine) shape;
        return "measure " + words(line.words()) + " from " + at(line.from()) + " to " + at(line.to()) + " beside "
                + number(line.offset());
    }

    private static String words(Object words) {
        return words instanceof Phrase phrase
                ? phrase.key()
                : words instanceof Length length ? number(length.mm()) : String.valueOf(words);
    }

    private static String at(Point point) {
        return number(point.x()) + "," + number(point.y());
    }

    private static String number(double value) {
        double rounded = Math.round(value * 100) / 100.0;
        return new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT))
                .format(rounded == 0 ? 0 : rounded);
    }

    /** Widest 4: holes as far apart as a size is long, sizes under the lowest hole edge, a frame round all. */
    @Test
    void theRowOfTestHoles() {
        assertEquals("""
                hole 9,0 across 3
                “3” 9,-5 high 3
                hole 27,0 across 4
                “4” 27,-5 high 3
                note 0,-11 to 36,-11, 36,-11 to 36,5, 36,5 to 0,5, 0,5 to 0,-11
                """, told(TestHole.drawn(TestHole.around(ShankHole.of(mm(3), Temper.MEDIUM), lengths(4, 3)))));
    }

    /** Hole 3.5 at the middle, 10.5 from the tip; slit of 3.93 from its edge to the right, ended by 1.5. */
    @Test
    void theClosingHoleOfAStud() {
        StudSizes stud = new StudSizes(mm(3), Optional.of(mm(4)), mm(6), mm(3.5), mm(3));
        Stud.Closure asked = new Stud.Closure(
                stack(2.4), stack(2.4), stud, Optional.empty(), mm(1.5), Temper.MEDIUM, punches(), PLAIN);
        assertEquals("""
                cut -10.5,-10.5 to 19.68,-10.5
                cut -10.5,10.5 to 19.68,10.5
                cut -10.5,-10.5 to -10.5,10.5
                hole 0,0 across 3.5
                inner cut 1.75,0 to 5.68,0
                hole 5.68,0 across 1.5
                measure 3.93 from 5.68,-10.5 to 1.75,-10.5 beside 9
                measure 10.5 from -10.5,-10.5 to 0,-10.5 beside -9
                “tip” -10.5,13.5 high 3
                “anchored-side” 19.68,13.5 high 3
                """, told(answers(new Stud(), asked).closing()));
    }

    /** 18 by 4 over the fold in a strap of 25: straight runs of 14 with round ends. */
    @Test
    void theSlotOverTheFold() {
        ProngSlot.Prong asked = new ProngSlot.Prong(mm(12), mm(3), mm(3), mm(25), Optional.empty(), false);
        assertEquals("""
                cut -19,-12.5 to 19,-12.5
                cut -19,12.5 to 19,12.5
                fold 0,-12.5 to 0,12.5
                inner cut -7,-2 to 7,-2, 7,-2 to 7,2, 7,2 to -7,2, -7,2 to -7,-2
                measure 18 from -9,0 to 9,0 beside -15.5
                measure 4 from 19,-2 to 19,2 beside -3
                “slot-fold” 0,13.5 high 3
                """, told(answers(new ProngSlot(), asked).slot()));
    }

    /** A punch of 22 by 4.5 is drawn as what it cuts. */
    @Test
    void theSlotOfThePunchThatIsTaken() {
        ProngSlot.Prong asked = new ProngSlot.Prong(
                mm(12),
                mm(3),
                mm(3),
                mm(25),
                Optional.of(List.of(new ProngSlot.SlotPunch("s", mm(22), mm(4.5)))),
                false);
        assertEquals(
                "inner cut -8.75,-2.25 to 8.75,-2.25, 8.75,-2.25 to 8.75,2.25, 8.75,2.25 to -8.75,2.25, -8.75,2.25 to -8.75,-2.25",
                told(answers(new ProngSlot(), asked).slot()).lines().toList().get(3));
    }

    /** Slits of 4.5, 9 apart, in a square as wide as the closure. */
    @Test
    void theSlitsOfAMagneticClosure() {
        assertEquals(
                """
                inner cut -4.5,-2.25 to -4.5,2.25
                inner cut 4.5,-2.25 to 4.5,2.25
                note -9,-9 to 9,-9, 9,-9 to 9,9, 9,9 to -9,9, -9,9 to -9,-9
                measure 9 from -4.5,0 to 4.5,0 beside -12
                measure 4.5 from 4.5,-2.25 to 4.5,2.25 beside -12
                """,
                told(answers(
                                new MagnetClosure(),
                                new MagnetClosure.Pronged(mm(18), mm(4), mm(9), mm(8), mm(0.8), mm(2), PLAIN))
                        .slits()));
    }
}
