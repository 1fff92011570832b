package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Marks along a line, evenly spaced: the gap is drawn out or closed up a little so that no odd gap is left at the end.
 *
 * <p>Gaps are lengths along the line. The line is taken in runs, from corner to corner, or whole. Within a run all gaps are
 * equal; between runs they differ by what rounding to whole gaps takes. An open line has a mark on both ends.
 */
public final class Spacing {
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
        if (!(pitchMm > 0)) {
            throw new IllegalArgumentException("marks need a pitch above 0, not " + pitchMm + " mm");
        }
        List<Run> runs = new ArrayList<>();
        for (Run run : whole(line, atCorners)) {
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
        List<Run> others = whole(mate, atCorners);
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

    private static List<Run> whole(Curve line, AtCorners atCorners) {
        List<Double> corners = new ArrayList<>();
        if (atCorners != AtCorners.PASS) {
            line.corners().forEach(corner -> corners.add(line.startOf(corner.segment())));
        }
        double share = atCorners == AtCorners.SPAN ? 0.5 : 0;
        if (line.isClosed()) {
            return corners.isEmpty() ? List.of(new Run(0, line.length(), 0, 0, 0, false)) : round(line, corners, share);
        }
        List<Run> runs = new ArrayList<>();
        double from = 0;
        for (double corner : corners) {
            runs.add(new Run(from, corner - from, 0, from == 0 ? 0 : share, share, share > 0));
            from = corner;
        }
        runs.add(new Run(from, line.length() - from, 0, from == 0 ? 0 : share, 0, true));
        return runs;
    }

    private static List<Run> round(Curve line, List<Double> corners, double share) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            double from = corners.get(i);
            double to = i + 1 < corners.size() ? corners.get(i + 1) : corners.get(0) + line.length();
            runs.add(new Run(from, to - from, 0, share, share, share > 0));
        }
        return runs;
    }

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
