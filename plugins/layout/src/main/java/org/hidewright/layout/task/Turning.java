package org.hidewright.layout.task;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The angles at which a part may lie: one or more windows, in radians, counter-clockwise. A window without width is one
 * angle; leather cut along the backbone has two windows, about 0 and about half a turn.
 */
public final class Turning {
    private static final double FULL = 2 * Math.PI;

    private final double[] from;
    private final double[] to;
    private final boolean stepwise;

    /** The cosine, exact at whole quarters of a turn. */
    public static double cos(double radians) {
        return sin(radians + Math.PI / 2);
    }

    /** The sine, exact at whole quarters of a turn, so that what was square to the sheet stays so. */
    public static double sin(double radians) {
        double quarters = radians / (Math.PI / 2);
        long whole = Math.round(quarters);
        if (Math.abs(quarters - whole) > 1e-12) {
            return Math.sin(radians);
        }
        int quarter = (int) Math.floorMod(whole, 4L);
        return quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
    }

    private Turning(double[] from, double[] to) {
        this.from = from;
        this.to = to;
        boolean narrow = true;
        for (int window = 0; window < from.length; window++) {
            narrow &= from[window] == to[window];
        }
        this.stepwise = narrow;
    }

    /** Any angle. */
    public static Turning free() {
        return new Turning(new double[] {-Math.PI}, new double[] {Math.PI});
    }

    /** These angles and no others, in degrees. */
    public static Turning steps(List<Double> degrees) {
        return about(degrees, 0);
    }

    /** These angles in degrees, and up to {@code slack} degrees to either side of each. */
    public static Turning about(List<Double> degrees, double slack) {
        if (degrees.isEmpty()) {
            throw new IllegalArgumentException("A part needs at least one angle at which it may lie.");
        }
        if (slack >= 180) {
            return free();
        }
        double half = Math.toRadians(slack);
        double[] centres = degrees.stream().mapToDouble(Math::toRadians).toArray();
        double[] from = new double[centres.length];
        double[] to = new double[centres.length];
        for (int window = 0; window < centres.length; window++) {
            from[window] = centres[window] - half;
            to[window] = centres[window] + half;
        }
        return new Turning(from, to);
    }

    /** Whether there are only single angles, so that a part has no more shapes than {@link #windows()}. */
    public boolean stepwise() {
        return stepwise;
    }

    /**
     * The middle of the window nearest to this angle, in radians: the direction that is asked for. The angle itself where any is as good as
     * any other.
     */
    public double straight(double angle) {
        double best = angle;
        double least = Double.POSITIVE_INFINITY;
        for (int window = 0; window < from.length; window++) {
            if (to[window] - from[window] >= FULL) {
                return angle;
            }
            double middle = (from[window] + to[window]) / 2;
            double off = Math.abs(Math.IEEEremainder(angle - middle, FULL));
            if (off < least) {
                least = off;
                best = middle;
            }
        }
        return best;
    }

    /** How far an angle is off the direction that is asked for, in radians; nought where any angle is as good as any other. */
    public double askew(double angle) {
        return Math.abs(Math.IEEEremainder(angle - straight(angle), FULL));
    }

    /** The directions that are asked for alone; the same where any angle is as good as any other. */
    public Turning straightened() {
        for (int window = 0; window < from.length; window++) {
            if (to[window] - from[window] >= FULL) {
                return this;
            }
        }
        double[] middles = IntStream.range(0, from.length)
                .mapToDouble(window -> (from[window] + to[window]) / 2)
                .toArray();
        return new Turning(middles, middles);
    }

    /** Those whole quarters of a turn that are allowed; empty where none is. */
    public Optional<Turning> quarters() {
        List<Double> quarters = Stream.of(0.0, 90.0, 180.0, 270.0)
                .filter(quarter -> allows(Math.toRadians(quarter)))
                .toList();
        return quarters.isEmpty() ? Optional.empty() : Optional.of(steps(quarters));
    }

    /** Whether there are only whole quarters of a turn, so that what is square to the sheet stays so. */
    public boolean square() {
        double quarter = Math.PI / 2;
        return stepwise
                && DoubleStream.of(from).allMatch(angle -> Math.abs(Math.IEEEremainder(angle, quarter)) < 1e-12);
    }

    public int windows() {
        return from.length;
    }

    /** The least angle of a window, in radians. */
    public double from(int window) {
        return from[window];
    }

    /** Allowed angles, in radians: the ends of every window, and so many between them that no two neighbours are further apart. */
    public DoubleStream spread(double step) {
        return IntStream.range(0, from.length).boxed().flatMapToDouble(window -> {
            double width = to[window] - from[window];
            int steps = (int) Math.ceil(width / step);
            return IntStream.rangeClosed(0, steps)
                    .mapToDouble(nth -> steps == 0 ? from[window] : from[window] + width * nth / steps);
        });
    }

    /** Any allowed angle, windows taken by their width. */
    public double any(SplittableRandom random) {
        if (from.length == 1) {
            return from[0] + random.nextDouble() * (to[0] - from[0]);
        }
        int window = random.nextInt(from.length);
        return from[window] + random.nextDouble() * (to[window] - from[window]);
    }

    /** The allowed angle nearest to this one, in radians. */
    public double nearest(double angle) {
        double best = angle;
        double least = Double.POSITIVE_INFINITY;
        for (int window = 0; window < from.length; window++) {
            double width = to[window] - from[window];
            if (width >= FULL) {
                return angle;
            }
            // how far the angle lies past the window's start, within one turn
            double past = (angle - from[window]) % FULL;
            if (past < 0) {
                past += FULL;
            }
            if (past <= width) {
                return angle;
            }
            double beyond = past - width;
            double before = FULL - past;
            if (Math.min(beyond, before) < least) {
                least = Math.min(beyond, before);
                best = beyond < before ? to[window] : from[window];
            }
        }
        return best;
    }

    /** Whether this angle, in radians, is one of those allowed, within rounding. */
    public boolean allows(double angle) {
        double off = Math.abs(angle - nearest(angle)) % FULL;
        return Math.min(off, FULL - off) < 1e-9;
    }
}
