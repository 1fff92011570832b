package org.hidewright.straps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.InEachOther;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.PlacedStretch;
import org.hidewright.straps.geometry.Stack;
import org.hidewright.straps.geometry.Stretch;

/** Sections of a strap that could only be folded by one going through the leather of the other. */
final class ThroughEachOther {
    static final NoticeKind THROUGH_EACH_OTHER = NoticeKind.check("sections-through-each-other");

    private static final String OTHER_LENGTH = "another-length-of";
    private static final String STRAIGHT_BETWEEN = "straight-run-between";
    static final List<String> PHRASES = List.of(OTHER_LENGTH, STRAIGHT_BETWEEN);

    /** Of leather so thin that pressing would close a whole layer, half of it counts. */
    private static final double THIN_SHARE = 0.5;

    /** Depths that no rule tells apart count as one. */
    private static final double SAME_DEPTH_MM = 1e-6;

    private final List<PlacedPiece> pieces;

    ThroughEachOther(FoldedStrap strap) {
        this.pieces = strap.pieces();
    }

    private record Pair(int one, int other, double deepMm, int bends) {
        /** Where two sections go through each other, what follows them mostly does too. */
        boolean beside(Pair told) {
            return Math.abs(one - told.one) <= 1 && Math.abs(other - told.other) <= 1;
        }

        long depth() {
            return Math.round(deepMm / SAME_DEPTH_MM);
        }
    }

    /** The deepest of each place, those left out that are told of in other words. */
    List<Notice> notices(BiPredicate<PlacedPiece, PlacedPiece> toldOtherwise) {
        List<Pair> told = new ArrayList<>();
        pairs().filter(pair -> told.stream().noneMatch(pair::beside)).forEach(told::add);
        return told.stream()
                .filter(pair -> !toldOtherwise.test(pieces.get(pair.one), pieces.get(pair.other)))
                .map(this::notice)
                .toList();
    }

    /** The deepest first, of equals straight runs, which a maker finds more easily than bends. */
    private Stream<Pair> pairs() {
        return IntStream.range(0, pieces.size())
                .boxed()
                .flatMap(one -> IntStream.range(one + 1, pieces.size()).mapToObj(other -> pair(one, other)))
                .filter(pair -> tooDeep(pair.deepMm, pieces.get(pair.one), pieces.get(pair.other)))
                .sorted(Comparator.comparingLong(Pair::depth).reversed().thenComparingInt(Pair::bends));
    }

    private Pair pair(int one, int other) {
        PlacedPiece first = pieces.get(one);
        PlacedPiece second = pieces.get(other);
        double deep = other == one + 1 && clear(first, second) ? 0 : InEachOther.deepMm(first, second);
        return new Pair(one, other, deep, (first.straight() ? 0 : 1) + (second.straight() ? 0 : 1));
    }

    /** Of two that follow each other one comes round to the other only past a half turn. */
    private static boolean clear(PlacedPiece first, PlacedPiece second) {
        return idealised(first) || idealised(second) || turnedRad(first) + turnedRad(second) <= Math.PI;
    }

    private static double turnedRad(PlacedPiece piece) {
        return piece.stretches().stream()
                .map(PlacedStretch::stretch)
                .filter(Stretch.Arc.class::isInstance)
                .mapToDouble(arc -> ((Stretch.Arc) arc).turnRad())
                .sum();
    }

    /** The legs of a turn-back make a small corner with what follows, which leather rounds. */
    private static boolean idealised(PlacedPiece piece) {
        return piece.piece() instanceof Piece.TurnBack;
    }

    /** Whether two sections lie deeper in each other than stitching and pressing close without being asked. */
    private static boolean tooDeep(double deepMm, PlacedPiece one, PlacedPiece other) {
        double thinner = Math.min(thinnest(one), thinnest(other));
        return deepMm > Math.min(Stack.PRESSED_MM, THIN_SHARE * thinner) + SAME_DEPTH_MM;
    }

    /** Whether one section goes through the leather of another. */
    static boolean go(PlacedPiece one, PlacedPiece other) {
        return tooDeep(InEachOther.deepMm(one, other), one, other);
    }

    private static double thinnest(PlacedPiece piece) {
        return Math.min(piece.thickness(), piece.thicknessAtEnd());
    }

    private Notice notice(Pair pair) {
        PlacedPiece other = pieces.get(pair.other);
        List<String> between = pieces.subList(pair.one + 1, pair.other).stream()
                .filter(PlacedPiece::straight)
                .map(PlacedPiece::id)
                .toList();
        Phrase room =
                between.isEmpty() ? Phrase.of(STRAIGHT_BETWEEN) : Phrase.of(OTHER_LENGTH, String.join(", ", between));
        return THROUGH_EACH_OTHER.at(
                "sections[" + other.id() + "]", pieces.get(pair.one).id(), other.id(), Length.ofMm(pair.deepMm), room);
    }
}
