package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/**
 * Curves written as path data of SVG 1.1 (W3C, section 8.3), with millimetres for units and y running <b>up</b>: the letters
 * M, L, H, V, C, S, Q, T, A and Z, small for steps from the place before. One curve, so one M at the start, and A for arcs of
 * circles alone; {@link #readAll} takes what a drawing program writes.
 */
public final class PathData {
    private static final Pattern TOKEN =
            Pattern.compile("\\G[\\s,]*(?:([MLHVCSQTAZmlhvcsqtaz])|([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?))");
    /** A kilometre; beyond it somebody has slipped, and sums of squares lose what they are about. */
    private static final double MOST_MM = 1e6;

    private static final Pattern BLANK = Pattern.compile("[\\s,]*");

    private final String text;
    private final boolean many;
    private final Matcher tokens;
    private final List<Curve> curves = new ArrayList<>();
    private final List<Segment> segments = new ArrayList<>();
    private int position;
    private Point start;
    private Point pen;
    /** The control point that S or T goes on from; the pen itself where there is none. */
    private Point control;

    private char controlOf;
    private boolean closed;

    private PathData(String text, boolean many) {
        this.text = text;
        this.many = many;
        this.tokens = TOKEN.matcher(text);
    }

    /** Path data that cannot be read, and where. */
    public static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1;

        private final String near;

        Unreadable(String message, String near) {
            super(message);
            this.near = near;
        }

        /** The first characters that could not be read; empty at the end of the text. */
        public String near() {
            return near;
        }
    }

    /**
     * The curve a text describes; closed if it ends with Z.
     *
     * @throws Unreadable if the text is no path data, or describes more than one curve or none
     */
    public static Curve read(String text) throws Unreadable {
        PathData data = new PathData(text, false);
        data.run();
        if (data.curves.isEmpty()) {
            throw data.trouble("there is no line");
        }
        return data.curves.get(0);
    }

    /**
     * All curves of a text as drawing programs write it: each begins with M or goes on behind a Z, and arcs of ellipses are
     * followed by cubics. What has no length is left out. Units are those of the text; y runs up here, so where it runs down
     * in the drawing, what is read lies mirrored.
     *
     * @throws Unreadable if the text is no path data
     */
    public static List<Curve> readAll(String text) throws Unreadable {
        PathData data = new PathData(text, true);
        data.run();
        return List.copyOf(data.curves);
    }

    private void run() throws Unreadable {
        char command = 0;
        while (!BLANK.matcher(text).region(position, text.length()).matches()) {
            char next = commandOr(command);
            boolean begins = next == 'M' || next == 'm';
            if (closed && !many) {
                throw trouble("one curve ends with Z");
            }
            if (command == 0 && !begins || command != 0 && begins && !many) {
                throw trouble("one curve begins with one M");
            }
            if (begins || closed) {
                endCurve();
            }
            run(next);
            command = next == 'M' ? 'L' : next == 'm' ? 'l' : next;
        }
        endCurve();
    }

    private void endCurve() throws Unreadable {
        if (segments.stream().anyMatch(segment -> Stretch.of(segment).length() > 0)) {
            try {
                curves.add(closed ? Curve.closed(segments) : Curve.open(segments));
            } catch (IllegalArgumentException e) {
                throw trouble(e.getMessage());
            }
        }
        segments.clear();
        closed = false;
    }

    private Unreadable trouble(String why) {
        String rest = text.substring(Math.min(position, text.length())).strip();
        return new Unreadable(why, rest.substring(0, Math.min(12, rest.length())));
    }

    private boolean next() {
        return tokens.find(position);
    }

    /** The letter that comes next, or the one before again where a number comes. */
    private char commandOr(char before) throws Unreadable {
        if (!next()) {
            throw trouble("no letter or number");
        }
        if (tokens.group(1) != null) {
            position = tokens.end();
            return tokens.group(1).charAt(0);
        }
        if (before == 0 || before == 'Z' || before == 'z') {
            throw trouble("a letter comes first");
        }
        return before;
    }

    private double number() throws Unreadable {
        if (!next() || tokens.group(2) == null) {
            throw trouble("a number is missing");
        }
        double number = Double.parseDouble(tokens.group(2));
        if (Math.abs(number) > MOST_MM) {
            throw trouble("a number is too large");
        }
        position = tokens.end();
        return number;
    }

    /** A flag is one digit, which may touch what follows. */
    private boolean flag() throws Unreadable {
        Matcher flag = Pattern.compile("\\G[\\s,]*([01])").matcher(text);
        if (!flag.find(position)) {
            throw trouble("0 or 1 is missing");
        }
        position = flag.end();
        return flag.group(1).equals("1");
    }

    private Point place(boolean step) throws Unreadable {
        double x = number();
        double y = number();
        return step ? pen.plus(x, y) : Point.of(x, y);
    }

    private void run(char command) throws Unreadable {
        boolean step = Character.isLowerCase(command);
        Point from = pen;
        char kind = Character.toUpperCase(command);
        Point turned = kind == 'S' && controlOf == 'C' || kind == 'T' && controlOf == 'Q' ? reflected() : pen;
        control = null;
        switch (kind) {
            case 'M' -> {
                pen = pen == null ? Point.of(0, 0) : pen;
                pen = place(step);
                start = pen;
            }
            case 'L' -> line(place(step));
            case 'H' -> line(Point.of(step ? pen.x() + number() : number(), pen.y()));
            case 'V' -> line(Point.of(pen.x(), step ? pen.y() + number() : number()));
            case 'C' -> cubic(place(step), place(step), place(step));
            case 'S' -> cubic(turned, place(step), place(step));
            case 'Q' -> quadratic(place(step), place(step));
            case 'T' -> quadratic(turned, place(step));
            case 'A' -> arc(step);
            default -> {
                if (!pen.equals(start)) {
                    line(start);
                }
                closed = true;
            }
        }
        controlOf = kind == 'S' ? 'C' : kind == 'T' ? 'Q' : kind;
        control = control == null ? from : control;
    }

    private Point reflected() {
        return Point.of(2 * pen.x() - control.x(), 2 * pen.y() - control.y());
    }

    private void line(Point end) {
        segments.add(Segment.line(pen, end));
        pen = end;
    }

    private void cubic(Point control1, Point control2, Point end) {
        segments.add(Segment.cubic(pen, control1, control2, end));
        control = control2;
        pen = end;
    }

    /** A quadratic curve is a cubic whose control points lie two thirds of the way to its own. */
    private void quadratic(Point middle, Point end) {
        Point leaving = pen.plus((middle.x() - pen.x()) * 2 / 3, (middle.y() - pen.y()) * 2 / 3);
        Point arriving = end.plus((middle.x() - end.x()) * 2 / 3, (middle.y() - end.y()) * 2 / 3);
        segments.add(Segment.cubic(pen, leaving, arriving, end));
        control = middle;
        pen = end;
    }

    /** By the rules of SVG 1.1, appendix F.6: a radius too small for the chord is made as large as it must be. */
    private void arc(boolean step) throws Unreadable {
        double radius = Math.abs(number());
        double other = Math.abs(number());
        double turned = Math.toRadians(number());
        boolean large = flag();
        boolean left = flag();
        Point end = place(step);
        boolean round = Math.abs(radius - other) <= 1e-9 * radius; // a turned circle is the same circle
        if (!round && !many) {
            throw trouble("an arc is part of a circle: both radii are the same");
        }
        if (radius == 0 || other == 0 || pen.distanceTo(end) == 0) {
            line(end);
            return;
        }
        if (!round) {
            segments.addAll(EllipseArc.between(pen, end, radius, other, turned, large, left));
            pen = end;
            return;
        }
        double half = pen.distanceTo(end) / 2;
        radius = Math.max(radius, half);
        double turn = 2 * Math.asin(Math.min(1, half / radius));
        double sweep = large ? 2 * Math.PI - turn : turn;
        double off = Math.sqrt(Math.max(0, (radius - half) * (radius + half)));
        Vector chord = Vector.between(pen, end);
        Point middle = chord.times(0.5).from(pen);
        Point centre = chord.unit().left().times(large == left ? -off : off).from(middle);
        segments.add(Segment.arc(pen, centre, left ? sweep : -sweep));
        pen = end;
    }
}
