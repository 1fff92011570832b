package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Marks along a line, evenly spaced: the gap is drawn out or closed up a little so that no odd gap is left at the end.
 *
 * <p>Gaps are lengths along the line. The line is taken in runs, from corner to corner, or whole. Within a run all gaps are
 * equal; between runs they differ by what rounding to whole gaps takes. An open line has a mark on both ends.
 */
public final class Spacing {
    private static final double SAME_MM = 1e-6;

    private final Curve line;
    private final List<Run> runs;

    private Spacing(Curve line, List<Run> runs) {
        this.line = line;
        this.runs = runs;
    }

    /**
     * One run: where it starts, how long it is, how many gaps are whole within it, and the share of a gap before the first
     * mark and after the last.
     */
    private record Run(double start, double length, int gaps, double before, double after, boolean endMarked) {
        double gap() {
            return length / (gaps + before + after);
        }

        double at(int mark) {
            return start + (before + mark) * gap();
        }

        int marks() {
            return endMarked ? gaps + 1 : gaps;
        }
    }

    /**
     * As many gaps in each run as come nearest to the pitch, at least one.
     *
     * @param pitchMm gap wanted, above 0
     * @throws IllegalArgumentException if the pitch is not above 0
     */
    public static Spacing of(Curve line, double pitchMm, AtCorners atCorners) {
        return of(line, pitchMm, atCorners, List.of());
    }

    /**
     * The same, with marks at given places besides; each begins a run of its own.
     *
     * @param also lengths along the line, from 0 to its length
     * @throws IllegalArgumentException if the pitch is not above 0, or a place is not on the line
     */
    public static Spacing of(Curve line, double pitchMm, AtCorners atCorners, List<Double> also) {
        if (!(pitchMm > 0)) {
            throw new IllegalArgumentException("marks need a pitch above 0, not " + pitchMm + " mm");
        }
        for (double along : also) {
            if (!(along >= 0 && along <= line.length())) {
                throw new IllegalArgumentException(
                        "the line is " + line.length() + " mm long; there is no place at " + along);
            }
        }
        List<Run> runs = new ArrayList<>();
        for (Run run : whole(line, atCorners, also)) {
            int least = run.before + run.after > 0 ? 0 : 1;
            long gaps = Math.max(least, Math.round(run.length / pitchMm - run.before - run.after));
            runs.add(new Run(run.start, run.length, Math.toIntExact(gaps), run.before, run.after, run.endMarked));
        }
        return new Spacing(line, List.copyOf(runs));
    }

    /**
     * The same number of gaps in each run as another spacing has, on a line of another length: so that two pieces pierced
     * apart meet hole on hole.
     *
     * @throws IllegalArgumentException if the lines do not have as many runs, or only one of them is closed
     */
    public Spacing on(Curve mate, AtCorners atCorners) {
        List<Run> others = whole(mate, atCorners, List.of());
        if (others.size() != runs.size() || mate.isClosed() != line.isClosed()) {
            throw new IllegalArgumentException("a line of " + runs.size() + " runs and one of " + others.size()
                    + " cannot have the same marks; corners must answer corners");
        }
        List<Run> mated = new ArrayList<>();
        for (int i = 0; i < others.size(); i++) {
            Run run = others.get(i);
            mated.add(new Run(run.start, run.length, runs.get(i).gaps, run.before, run.after, run.endMarked));
        }
        return new Spacing(mate, List.copyOf(mated));
    }

    /** Where one run ends and the next begins, and the share of a gap that is left on either side of it. */
    private record Break(double along, double share) {}

    private static List<Run> whole(Curve line, AtCorners atCorners, List<Double> also) {
        List<Break> breaks = breaks(line, atCorners, also);
        if (line.isClosed()) {
            if (breaks.isEmpty()) {
                return List.of(new Run(0, line.length(), 0, 0, 0, false));
            }
            breaks.add(new Break(
                    breaks.get(0).along() + line.length(), breaks.get(0).share()));
        } else {
            breaks.add(0, new Break(0, 0));
            breaks.add(new Break(line.length(), 0));
        }
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i + 1 < breaks.size(); i++) {
            Break from = breaks.get(i);
            Break to = breaks.get(i + 1);
            boolean lineEnds = !line.isClosed() && i + 2 == breaks.size();
            runs.add(new Run(
                    from.along(), to.along() - from.along(), 0, from.share(), to.share(), to.share() > 0 || lineEnds));
        }
        return runs;
    }

    /** Breaks inside the line in order; of two at one place the one that is marked. */
    private static List<Break> breaks(Curve line, AtCorners atCorners, List<Double> also) {
        List<Break> breaks = new ArrayList<>();
        also.forEach(along -> breaks.add(new Break(along, 0)));
        if (atCorners != AtCorners.PASS) {
            double share = atCorners == AtCorners.SPAN ? 0.5 : 0;
            line.corners().forEach(corner -> breaks.add(new Break(line.startOf(corner.segment()), share)));
        }
        breaks.sort(Comparator.comparingDouble(Break::along).thenComparingDouble(Break::share));
        double least = line.isClosed() ? Double.NEGATIVE_INFINITY : SAME_MM;
        double most = line.isClosed() ? Double.POSITIVE_INFINITY : line.length() - SAME_MM;
        List<Break> apart = new ArrayList<>();
        for (Break one : breaks) {
            boolean twice = !apart.isEmpty()
                    && one.along() - apart.get(apart.size() - 1).along() < SAME_MM;
            if (!twice && one.along() >= least && one.along() <= most) {
                apart.add(one);
            }
        }
        return apart;
    }

    /** What the marks lie on. */
    public Curve line() {
        return line;
    }

    /** The marks, in order. */
    public List<Spot> marks() {
        List<Spot> marks = new ArrayList<>();
        for (Run run : runs) {
            for (int i = 0; i < run.marks(); i++) {
                marks.add(line.at(line.isClosed() ? run.at(i) : Math.min(run.at(i), line.length())));
            }
        }
        return List.copyOf(marks);
    }

    /** How many marks there are. */
    public int count() {
        return runs.stream().mapToInt(Run::marks).sum();
    }

    /** The smallest gap, millimetres along the line. */
    public double smallestGap() {
        return runs.stream().mapToDouble(Run::gap).min().orElseThrow();
    }

    /** The largest gap, millimetres along the line. */
    public double largestGap() {
        return runs.stream().mapToDouble(Run::gap).max().orElseThrow();
    }
}
