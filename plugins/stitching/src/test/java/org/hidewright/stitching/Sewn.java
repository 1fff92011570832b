package org.hidewright.stitching;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.testkit.CalculatorRun;

/** Works calculators as a host does, and builds what they are asked. */
final class Sewn {
    private Sewn() {}

    static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    static SewnLine straight(double mm) {
        return new SewnLine.Straight(mm(mm));
    }

    static SewnLine drawn(String data) {
        return new SewnLine.Drawn(data);
    }

    static <Q extends Record, A extends Record> Outcome<A> outcome(Calculator<Q, A> calculator, Q asked) {
        return CalculatorRun.of(calculator, asked).outcome();
    }

    static <Q extends Record, A extends Record> A answers(Calculator<Q, A> calculator, Q asked) {
        return CalculatorRun.of(calculator, asked).answers();
    }

    /** Each notice as {@code key at place [arguments]}. */
    static <Q extends Record> List<String> told(Calculator<Q, ?> calculator, Q asked) {
        return outcome(calculator, asked).notices().stream()
                .map(notice -> notice.kind().key() + " at " + notice.place() + " "
                        + notice.args().stream().map(Sewn::shown).toList())
                .toList();
    }

    static <Q extends Record> List<String> working(Calculator<Q, ?> calculator, Q asked) {
        return CalculatorRun.of(calculator, asked).working(Sewn::shown);
    }

    static String shown(Object value) {
        if (value instanceof Length length) {
            return number(length.mm());
        } else if (value instanceof Angle angle) {
            return number(Math.toDegrees(angle.radians())) + "°";
        }
        return value instanceof Number plain ? number(plain.doubleValue()) : String.valueOf(value);
    }

    private static String number(double plain) {
        return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(plain);
    }

    static List<String> shown(List<Length> lengths) {
        return lengths.stream().map(Sewn::shown).toList();
    }

    /** Two plates sewn by lines of holes 5 mm apart, and a row on the front for looks. */
    static Item plates(Optional<Double> thickness) {
        Part.Builder front = plate("front", 4);
        Part.Builder back = plate("back", 4);
        front.thickness(2);
        thickness.ifPresent(back::thickness);
        front.stitchLine(StitchLine.of("bare", Path.line(Role.STITCH, Point.of(5, 10), Point.of(25, 10)), List.of()));
        return Item.builder()
                .part(front.build())
                .part(back.build())
                .seam(Seam.of("side", List.of(new OnPart("front", "rim"), new OnPart("back", "rim"))))
                .seam(Seam.of("row", List.of(new OnPart("front", "rim"))))
                .seam(Seam.of("plain", List.of(new OnPart("front", "bare"))))
                .build();
    }

    private static Part.Builder plate(String id, int stitches) {
        List<Point> holes = IntStream.rangeClosed(0, stitches)
                .mapToObj(i -> Point.of(5 + 5 * i, 5))
                .toList();
        return Part.of(id, "Plate " + id, Path.rectangle(Role.CUT, Point.of(0, 0), 30, 20))
                .stitchLine(StitchLine.of(
                        "rim", Path.line(Role.STITCH, Point.of(5, 5), Point.of(5 + 5 * stitches, 5)), holes));
    }
}
