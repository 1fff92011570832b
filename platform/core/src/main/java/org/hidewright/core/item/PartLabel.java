package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.PartShape;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Part;

/**
 * Lines of letters on a part, where they lie on nothing that is drawn there: as large as there is room, level or upright,
 * and beside the part where there is none.
 */
final class PartLabel {
    private static final double[] LETTERS_MM = {3.5, 3, 2.6, 2.2, 1.9};
    /** From letters as large as a hand on. */
    private static final double[] ROOMY_MM = {24, 16, 12, 9, 7, 5.5, 4.5, 3.5, 3};

    private static final double BESIDE_MM = 2.6;
    private static final double LINE = 1.8;
    private static final int GRID = 24;

    private final Region finished;
    private final Box box;
    private final Ink ink;
    private final List<Point> places;

    private PartLabel(Part part, Drawing drawing) {
        this.finished = PartShape.finished(part);
        this.box = drawing.bounds();
        this.ink = new Ink(drawing);
        this.places = places();
    }

    /**
     * The letters.
     *
     * @param drawing what is drawn on the part
     * @param lines at least one
     */
    static Drawing of(Part part, Drawing drawing, List<String> lines) {
        PartLabel label = new PartLabel(part, drawing);
        for (double height : LETTERS_MM) {
            for (double turn : new double[] {0, Math.PI / 2}) {
                Optional<Point> place = label.place(lines, height, turn);
                if (place.isPresent()) {
                    return block(lines, place.get(), height, turn);
                }
            }
        }
        return label.beside(lines);
    }

    /**
     * A name where letters could be the largest, so that it lies clear of lines also where the part is seen smaller than it is.
     * Empty where it has no such place.
     *
     * @param drawing what is drawn on the part
     * @param letters how high they are beside the part
     */
    static Optional<Label> roomiest(Part part, Drawing drawing, String name, double letters) {
        PartLabel label = new PartLabel(part, drawing);
        double[] heights = DoubleStream.concat(
                        DoubleStream.of(ROOMY_MM).filter(height -> height > letters), DoubleStream.of(letters))
                .toArray();
        for (double height : heights) {
            for (double turn : new double[] {0, Math.PI / 2}) {
                Optional<Point> place = label.place(List.of(name), height, turn);
                if (place.isPresent()) {
                    return Optional.of(
                            Label.of(name, place.get(), Anchor.CENTRE, letters).turned(turn));
                }
            }
        }
        return Optional.empty();
    }

    /** Middles to try: the roomiest place of the part, then those around it, the nearest first. */
    private List<Point> places() {
        Point roomiest = finished.roomiest();
        List<Point> around = new ArrayList<>(List.of(roomiest));
        for (int i = 1; i < GRID; i++) {
            for (int j = 1; j < GRID; j++) {
                around.add(Point.of(box.minX() + box.width() * i / GRID, box.minY() + box.height() * j / GRID));
            }
        }
        around.sort(Comparator.comparingDouble(roomiest::distanceTo));
        return around;
    }

    private Optional<Point> place(List<String> lines, double height, double turn) {
        double length = lines.stream()
                .map(line -> Label.of(line, Point.of(0, 0), Anchor.CENTRE, height))
                .mapToDouble(label -> label.bounds().width()) // a page that knows its typeface sets them narrower
                .max()
                .orElseThrow();
        double across = lines.size() * LINE * height;
        double halfX = (turn == 0 ? length : across) / 2 + height / 2;
        double halfY = (turn == 0 ? across : length) / 2 + height / 2;
        return places.stream()
                .filter(middle -> ink.isClear(middle, halfX, halfY))
                .filter(finished::contains)
                .findFirst();
    }

    private static Drawing block(List<String> lines, Point middle, double height, double turn) {
        Drawing.Builder letters = Drawing.builder();
        for (int i = 0; i < lines.size(); i++) {
            double up = ((lines.size() - 1) / 2.0 - i) * LINE * height;
            Point at = middle.towards(turn + Math.PI / 2, up);
            letters.add(Label.of(lines.get(i), at, Anchor.CENTRE, height).turned(turn));
        }
        return letters.build();
    }

    private Drawing beside(List<String> lines) {
        Drawing.Builder letters = Drawing.builder();
        double y = box.minY() - BESIDE_MM;
        for (String line : lines) {
            letters.add(Label.of(line, Point.of(box.minX(), y), Anchor.TOP_LEFT, BESIDE_MM));
            y -= LINE * BESIDE_MM;
        }
        return letters.build();
    }
}
