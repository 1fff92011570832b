package org.hidewright.straps.geometry;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * How deep the leather of one section lies in that of another once both are in their places on the folded strap.
 *
 * <p>Across a section, square to it, the other takes up some of its thickness; of the most it takes anywhere, across the
 * one and across the other, the less is how deep they lie in each other. Layers that run alongside each other so lie in
 * each other by what would have to give way, and layers that cross lie in each other by the thinner one. Straight runs and
 * bends are taken as they are, as strips between two lines or two circles.
 */
public final class InEachOther {
    /** Nearer to the end of a part than this share of it, since an end itself belongs to neither side. */
    private static final double BESIDE_END = 1e-7;

    /** Two places no further apart than this share of a stretch, or of a line through it, are one, at a corner. */
    private static final double SAME = 1e-12;

    private static final int LOOKED_AT = 8;
    /** Halves what is in doubt some thirty times over, from one eighth of a part to less than a billionth. */
    private static final int NARROWED = 45;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private InEachOther() {}

    /** Millimetres; 0 where two sections are clear of each other or only touch. */
    public static double deepMm(PlacedPiece one, PlacedPiece other) {
        double deep = 0;
        for (SideView first : leather(one)) {
            for (SideView second : leather(other)) {
                if (first.near(second)) {
                    deep = Math.max(deep, Math.min(acrossMm(first, second), acrossMm(second, first)));
                }
            }
        }
        return deep;
    }

    /** A stretch between the corners of a flat bar may have no length. */
    private static List<SideView> leather(PlacedPiece piece) {
        return piece.stretches().stream()
                .filter(placed -> placed.stretch().outsideMm() > 0)
                .map(SideView::of)
                .toList();
    }

    /** The most of the thickness of a stretch that other leather takes up anywhere along it. */
    private static double acrossMm(SideView leather, SideView other) {
        double[] parts = leather.steadyBetween(other);
        double most = 0;
        for (int i = 0; i + 1 < parts.length; i++) {
            if (parts[i + 1] - parts[i] > SAME) {
                most = Math.max(most, most(parts[i], parts[i + 1], share -> takenMm(leather.through(share), other)));
            }
        }
        return Math.min(most, leather.thicknessMm());
    }

    private static double most(double from, double to, DoubleUnaryOperator taken) {
        double[] shares = new double[LOOKED_AT + 1];
        int best = 0;
        double most = 0;
        for (int i = 0; i <= LOOKED_AT; i++) {
            double inside = Math.min(Math.max((double) i / LOOKED_AT, BESIDE_END), 1 - BESIDE_END);
            shares[i] = from + inside * (to - from);
            double here = taken.applyAsDouble(shares[i]);
            if (here > most) {
                most = here;
                best = i;
            }
        }
        return most > 0
                ? Math.max(most, narrowed(shares[Math.max(0, best - 1)], shares[Math.min(LOOKED_AT, best + 1)], taken))
                : 0;
    }

    /** The most between two places with one rise and one fall between them, by the golden section. */
    private static double narrowed(double from, double to, DoubleUnaryOperator taken) {
        double low = from;
        double high = to;
        for (int i = 0; i < NARROWED; i++) {
            double one = high - GOLDEN * (high - low);
            double other = low + GOLDEN * (high - low);
            if (taken.applyAsDouble(one) > taken.applyAsDouble(other)) {
                high = other;
            } else {
                low = one;
            }
        }
        return taken.applyAsDouble((low + high) / 2);
    }

    /** How much of a line through one layer lies in the other without a break. */
    private static double takenMm(SideView.Through line, SideView other) {
        double[] cuts = DoubleStream.concat(DoubleStream.of(0, 1), other.cuts(line))
                .filter(cut -> cut >= 0 && cut <= 1)
                .sorted()
                .toArray();
        double most = 0;
        double run = 0;
        for (int i = 0; i + 1 < cuts.length; i++) {
            if (cuts[i + 1] - cuts[i] < SAME) {
                continue;
            }
            run = other.holds(line.at((cuts[i] + cuts[i + 1]) / 2)) ? run + cuts[i + 1] - cuts[i] : 0;
            most = Math.max(most, run);
        }
        return most * line.grain().distanceTo(line.flesh());
    }
}
