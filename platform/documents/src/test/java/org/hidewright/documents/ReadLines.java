package org.hidewright.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.store.FileTrouble;

/** What a reader reads, and the plain sums over it that outside references are held against. */
public final class ReadLines {
    private ReadLines() {}

    public static ReadDrawing of(DrawingReader reader, String file) throws FileTrouble {
        return reader.read(file.getBytes(StandardCharsets.UTF_8));
    }

    /** The closed lines whose nearest name is this. */
    public static List<DrawnLine> named(ReadDrawing drawing, String name) {
        return drawing.lines().stream()
                .filter(line -> line.closed() && line.names().get(0).equals(name))
                .toList();
    }

    /** The only one. */
    public static DrawnLine one(ReadDrawing drawing, String name) {
        List<DrawnLine> lines = named(drawing, name);
        assertEquals(1, lines.size(), () -> name + " among " + drawing.lines());
        return lines.get(0);
    }

    /** Gauss’s formula. */
    public static double area(List<Point> places) {
        double twice = 0;
        for (int i = 0; i < places.size(); i++) {
            Point one = places.get(i);
            Point next = places.get((i + 1) % places.size());
            twice += one.x() * next.y() - next.x() * one.y();
        }
        return Math.abs(twice) / 2;
    }

    public static double length(List<Point> places) {
        double length = 0;
        for (int i = 0; i < places.size(); i++) {
            length += places.get(i).distanceTo(places.get((i + 1) % places.size()));
        }
        return length;
    }

    public static Box box(List<Point> places) {
        return Box.around(places.get(0), places.toArray(Point[]::new));
    }

    /** The line may leave the curve by so much all round, and no more. */
    public static void assertArea(double mm2, DrawnLine line) {
        assertArea(mm2, line, 0);
    }

    /** @param more square millimetres by which the reference itself may be off */
    public static void assertArea(double mm2, DrawnLine line, double more) {
        assertEquals(mm2, area(line.places()), DrawingReader.NEAR_MM * length(line.places()) + more, line::entity);
    }

    /** Keys of what is told. */
    public static List<String> told(ReadDrawing drawing) {
        return drawing.remarks().stream().map(remark -> remark.key()).toList();
    }

    /** What ends the reading: its key and the line it stands in. */
    public static String trouble(FileTrouble trouble) {
        return trouble.remarks().get(0).key() + " "
                + trouble.remarks().get(0).place().line();
    }
}
