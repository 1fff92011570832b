package org.hidewright.edges;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Units;
import org.hidewright.testkit.CalculatorRun;

/** Works calculators as a host does, and builds what they are asked. */
final class Finished {
    static final EdgeFinish BURNISHED = new EdgeFinish.Burnished(2, 2, true);
    static final EdgeFinish PAINTED = new EdgeFinish.Painted(3);
    static final EdgeFinish TURNED = new EdgeFinish.Turned(Length.ofMm(8));
    static final EdgeFinish PLAIN = new EdgeFinish.Plain(0);
    /** A burnished mouth of a pocket. */
    static final Edge MOUTH = edge("mouth", 100, 1.5, EdgePlace.POCKET_MOUTH, BURNISHED);

    private Finished() {}

    static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    static Edge edge(String id, double length, double thickness, EdgePlace lies, EdgeFinish finish) {
        return new Edge(id, mm(length), mm(thickness), 1, lies, finish, CutBy.KNIFE, true);
    }

    static Edge byLaser(Edge edge) {
        return new Edge(
                edge.id(),
                edge.length(),
                edge.thickness(),
                edge.count(),
                edge.lies(),
                edge.finish(),
                CutBy.LASER,
                edge.beveled());
    }

    static Faces faces(double dm2, int sides, int dyeCoats, int sealerCoats) {
        return new Faces(Area.of(dm2, Units.DM2), sides, dyeCoats, sealerCoats);
    }

    static Abrasive paper(int grit) {
        return new Abrasive("p" + grit, grit, GritScale.P);
    }

    static EdgeTool beveler(String id, double width) {
        return new EdgeTool(id, EdgeTool.Kind.BEVELER, Optional.of(mm(width)));
    }

    /** A piece of vegetable-tanned leather, dyed with water dye in a usual room, and nothing owned. */
    static Finishing.Piece piece(Edge... edges) {
        return new Finishing.Piece(
                Tannage.VEGETABLE,
                List.of(edges),
                Optional.empty(),
                DyeKind.WATER,
                Room.USUAL,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0.3,
                1);
    }

    static Finishing.Piece of(Tannage tannage, Edge... edges) {
        Finishing.Piece piece = piece(edges);
        return new Finishing.Piece(
                tannage,
                piece.edges(),
                piece.faces(),
                piece.dye(),
                piece.room(),
                piece.edgeTools(),
                piece.abrasives(),
                piece.bottles(),
                piece.lost(),
                piece.pace());
    }

    static Finishing.Piece with(Finishing.Piece piece, Faces faces, DyeKind dye, Room room) {
        return new Finishing.Piece(
                piece.tannage(),
                piece.edges(),
                Optional.ofNullable(faces),
                dye,
                room,
                piece.edgeTools(),
                piece.abrasives(),
                piece.bottles(),
                piece.lost(),
                piece.pace());
    }

    static Finishing.Piece owning(
            Finishing.Piece piece, List<EdgeTool> tools, List<Abrasive> abrasives, List<Bottle> bottles) {
        return new Finishing.Piece(
                piece.tannage(),
                piece.edges(),
                piece.faces(),
                piece.dye(),
                piece.room(),
                Optional.of(tools),
                Optional.of(abrasives),
                Optional.of(bottles),
                piece.lost(),
                piece.pace());
    }

    static <Q extends Record, A extends Record> Outcome<A> outcome(Calculator<Q, A> calculator, Q asked) {
        return CalculatorRun.of(calculator, asked).outcome();
    }

    static <Q extends Record, A extends Record> A answers(Calculator<Q, A> calculator, Q asked) {
        return CalculatorRun.of(calculator, asked).answers();
    }

    static Finishing.Finished answers(Finishing.Piece piece) {
        return answers(new Finishing(), piece);
    }

    /** Ids of the steps, in order. */
    static List<String> steps(Finishing.Piece piece) {
        return answers(piece).steps().stream().map(Finishing.StepRow::id).toList();
    }

    /** What is told, as {@code key at place [arguments]}. */
    static <Q extends Record> List<String> told(Calculator<Q, ?> calculator, Q asked) {
        return outcome(calculator, asked).notices().stream()
                .map(notice -> (notice.kind().key() + " at " + notice.place()).strip() + " " + notice.args())
                .toList();
    }

    /** Keys of what is told. */
    static List<String> keys(Finishing.Piece piece) {
        return outcome(new Finishing(), piece).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    /** The working: each formula with what was put in and what it came to; then the sources of answers. */
    static <Q extends Record> List<String> working(Calculator<Q, ?> calculator, Q asked) {
        return CalculatorRun.of(calculator, asked).working(Finished::shown);
    }

    static double minutes(Duration time) {
        return time.in(Units.MINUTE);
    }

    private static String shown(Object value) {
        if (value instanceof Duration time) {
            return number(minutes(time)) + " min";
        } else if (value instanceof Area area) {
            return number(area.in(Units.DM2)) + " dm²";
        } else if (value instanceof Length length) {
            return number(length.mm()) + " mm";
        } else if (value instanceof Quantity<?> quantity) {
            return quantity.toString();
        }
        return number(((Number) value).doubleValue());
    }

    private static String number(double value) {
        return new DecimalFormat("0.####", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }
}
