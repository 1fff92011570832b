package org.hidewright.edges;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;

/**
 * The grades an edge is sanded with, coarse to fine. A grade takes out the scratches of the one before as long as its grain
 * is not finer than half of that (common practice); a wider step is a gap.
 */
final class Ladder {
    static final NoticeKind GAP = NoticeKind.check("grit-gap");

    /** Grain at most so many times finer from one grade to the next. */
    static final double WIDEST_STEP = 2;

    /** A grade stands for another when their grains differ by less than this factor. */
    private static final double STANDS_FOR = 1.25;

    /** What shops keep; taken where nobody says what there is. */
    private static final List<Grit> USUAL = List.of(80, 120, 180, 240, 320, 400, 600, 800, 1000, 1200, 2000).stream()
            .map(Grit::p)
            .toList();

    private final List<Grit> grits;

    private Ladder(List<Grit> grits) {
        this.grits = grits;
    }

    /**
     * The best ladder from one grade to another among those owned: fewest gaps and those least wide, then fewest
     * grades, then the most even steps.
     *
     * @param owned in any order; empty for the usual ones
     */
    static Ladder between(Grit coarsest, Grit finest, List<Grit> owned) {
        List<Grit> there = (owned.isEmpty() ? USUAL : owned)
                .stream()
                        .sorted(Comparator.comparingDouble(Grit::micrometres)
                                .reversed()
                                .thenComparing(Grit::label))
                        .toList();
        Grit first = nearest(there, coarsest);
        Grit last = fineEnough(there, finest);
        List<Grit> between = there.stream()
                .filter(grit -> grit.micrometres() < first.micrometres() && grit.micrometres() > last.micrometres())
                .toList();
        if (first.micrometres() <= last.micrometres()) {
            return new Ladder(List.of(last));
        }
        List<Path> paths = new ArrayList<>(List.of(new Path(List.of(first), 0, 0, 1)));
        for (Grit grit : between) {
            paths.add(best(paths, grit));
        }
        return new Ladder(best(paths, last).grits);
    }

    private static Grit nearest(List<Grit> there, Grit wanted) {
        return there.stream()
                .min(Comparator.comparingDouble(grit -> Math.abs(Math.log(grit.over(wanted)))))
                .orElseThrow();
    }

    /** The nearest; where that is too coarse, the first that is finer. */
    private static Grit fineEnough(List<Grit> there, Grit wanted) {
        Grit nearest = nearest(there, wanted);
        return isFineEnough(nearest, wanted)
                ? nearest
                : there.stream()
                        .filter(grit -> isFineEnough(grit, wanted))
                        .findFirst()
                        .orElse(nearest);
    }

    private static boolean isFineEnough(Grit grit, Grit wanted) {
        return grit.over(wanted) < STANDS_FOR;
    }

    private static Path best(List<Path> paths, Grit next) {
        return paths.stream()
                .filter(path -> path.end().micrometres() > next.micrometres())
                .map(path -> path.to(next))
                .min(Comparator.comparingInt(Path::gaps)
                        .thenComparingDouble(Path::tooFar)
                        .thenComparingInt(path -> path.grits.size())
                        .thenComparingDouble(Path::widest))
                .orElseThrow();
    }

    List<Grit> grits() {
        return grits;
    }

    /** The first step that is too wide, and the grade that would halve it. */
    Optional<Notice> gap() {
        for (int i = 1; i < grits.size(); i++) {
            Grit coarse = grits.get(i - 1);
            Grit fine = grits.get(i);
            if (isGap(coarse.over(fine))) {
                Grit between = nearestP(Math.sqrt(coarse.micrometres() * fine.micrometres()));
                return Optional.of(GAP.at("abrasives", coarse.label(), fine.label(), between.label()));
            }
        }
        return Optional.empty();
    }

    /** Whether its last grade is about as fine as was wanted. */
    boolean reaches(Grit finest) {
        return isFineEnough(grits.get(grits.size() - 1), finest);
    }

    /** Whether its first grade is not much finer than was wanted. */
    boolean startsAt(Grit coarsest) {
        return coarsest.over(grits.get(0)) < WIDEST_STEP;
    }

    static boolean isGap(double ratio) {
        return ratio > WIDEST_STEP + 1e-9;
    }

    /** The finest P grade that still takes out the scratches of a grain. */
    static Optional<Grit> furthestAfter(double micrometres) {
        return GritScale.P.grades().entrySet().stream()
                .filter(grade -> grade.getValue() < micrometres && !isGap(micrometres / grade.getValue()))
                .reduce((coarser, finer) -> finer)
                .map(grade -> Grit.p(grade.getKey()));
    }

    /** The P grade nearest to a grain. */
    static Grit nearestP(double micrometres) {
        return nearest(GritScale.P.grades().keySet().stream().map(Grit::p).toList(), new Grit("", micrometres));
    }

    /**
     * A way down to a grade.
     *
     * @param tooFar by how much its gaps are too wide, all together; logarithms, so that they add up
     */
    private record Path(List<Grit> grits, int gaps, double tooFar, double widest) {
        Grit end() {
            return grits.get(grits.size() - 1);
        }

        Path to(Grit next) {
            double ratio = end().over(next);
            List<Grit> longer = new ArrayList<>(grits);
            longer.add(next);
            boolean gap = isGap(ratio);
            return new Path(
                    List.copyOf(longer),
                    gaps + (gap ? 1 : 0),
                    tooFar + (gap ? Math.log(ratio / WIDEST_STEP) : 0),
                    Math.max(widest, ratio));
        }
    }
}
