package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;

/**
 * What is written on a pattern of several sheets, each text moved on its part to where one sheet has it whole: a name that is
 * parted between two is read on neither. Where there is no such place nearby it stays where it was.
 */
final class WholeNames {
    private static final double STEP = 2;
    private static final double FARTHEST = 160;
    private static final double CLEAR = 1;
    /** Lines of letters that belong together are no farther apart than this share of their height. */
    private static final double NEXT_LINE = 2.5;

    private final Drawing drawing;
    private final PaperScale scale;
    private final List<Box> sheets = new ArrayList<>();
    private final List<Point> ink = new ArrayList<>();
    private final List<Point> rim = new ArrayList<>();
    private final Map<Label, Box> letters = new HashMap<>();

    private WholeNames(Drawing drawing, FigurePlan plan, Tiling tiling, Typeface typeface) {
        this.drawing = drawing;
        this.scale = plan.scale();
        for (int row = 0; row < tiling.rows(); row++) {
            for (int column = 0; column < tiling.columns(); column++) {
                Point corner = Point.of(
                        plan.box().minX() + tiling.left(column), plan.box().maxY() - tiling.top(row));
                sheets.add(Box.around(corner, corner.plus(tiling.width(), -tiling.height()))
                        .grown(-CLEAR));
            }
        }
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Label label) {
                Label onPaper = (Label) scale.of(label);
                letters.put(
                        label,
                        FigureText.of(onPaper, typeface.printable(label.text()), typeface)
                                .box());
            } else {
                new InkTrace((x, y) -> inked(shape, Point.of(x, y))).follow(scale.of(shape));
            }
        }
    }

    private void inked(Shape shape, Point at) {
        ink.add(at);
        if (shape instanceof Path && (shape.role() == Role.CUT || shape.role() == Role.INNER_CUT)) {
            rim.add(at);
        }
    }

    /**
     * The drawing with its texts on one sheet each.
     *
     * @param plan of the same drawing
     * @param tiling the sheets that the plan is parted into
     */
    static Drawing of(Drawing drawing, FigurePlan plan, Tiling tiling, Typeface typeface) {
        return new WholeNames(drawing, plan, tiling, typeface).moved();
    }

    private Drawing moved() {
        Map<Label, Point> shifts = new HashMap<>();
        for (List<Label> block : blocks()) {
            shift(block).ifPresent(shift -> block.forEach(label -> shifts.put(label, shift)));
        }
        return Drawing.of(drawing.shapes().stream()
                .map(shape -> shifts.containsKey(shape) ? moved((Label) shape, shifts.get(shape)) : shape)
                .toList());
    }

    private Label moved(Label label, Point onPaper) {
        Point shift = scale.back(onPaper);
        return Label.of(label.text(), label.at().plus(shift.x(), shift.y()), label.anchor(), label.height())
                .turned(label.turn());
    }

    /** Texts in the order they are drawn, lines under each other together. */
    private List<List<Label>> blocks() {
        List<List<Label>> blocks = new ArrayList<>();
        Label last = null;
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Label label) {
                boolean next = last != null
                        && last.height() == label.height()
                        && last.turn() == label.turn()
                        && last.at().distanceTo(label.at()) <= NEXT_LINE * label.height();
                if (!next) {
                    blocks.add(new ArrayList<>());
                }
                blocks.get(blocks.size() - 1).add(label);
                last = label;
            }
        }
        return blocks;
    }

    /** How far a text has to move on paper; empty where one sheet has it, and where no place is free. */
    private Optional<Point> shift(List<Label> block) {
        Box box = block.stream().map(letters::get).reduce(Box::with).orElseThrow();
        if (onOneSheet(box, 0, 0)) {
            return Optional.empty();
        }
        List<Box> others = letters.entrySet().stream()
                .filter(other -> !block.contains(other.getKey()))
                .map(Map.Entry::getValue)
                .toList();
        return ways().stream()
                .filter(way -> onOneSheet(box, way.x(), way.y()))
                .filter(way -> isFree(shifted(box, way.x(), way.y()), others))
                .filter(way -> isOnThePart(box, way))
                .findFirst();
    }

    /** Along the part and across it, the nearest first. */
    private static List<Point> ways() {
        List<Point> ways = new ArrayList<>();
        int steps = (int) (FARTHEST / STEP);
        for (int i = -steps; i <= steps; i++) {
            ways.add(Point.of(i * STEP, 0));
            ways.add(Point.of(0, i * STEP));
        }
        ways.sort(Comparator.comparingDouble(way -> way.distanceTo(Point.of(0, 0))));
        return ways;
    }

    private static Box shifted(Box box, double x, double y) {
        return Box.around(Point.of(box.minX() + x, box.minY() + y), Point.of(box.maxX() + x, box.maxY() + y));
    }

    private boolean onOneSheet(Box box, double x, double y) {
        Box there = shifted(box, x, y);
        return sheets.stream()
                .anyMatch(sheet -> there.minX() >= sheet.minX()
                        && there.maxX() <= sheet.maxX()
                        && there.minY() >= sheet.minY()
                        && there.maxY() <= sheet.maxY());
    }

    private boolean isFree(Box box, List<Box> others) {
        Box clear = box.grown(CLEAR);
        return ink.stream().noneMatch(at -> isIn(clear, at))
                && others.stream().noneMatch(other -> FigureText.meet(clear, other));
    }

    /** Whether no edge lies between where it was and where it would be: a text that was on the part then still is. */
    private boolean isOnThePart(Box box, Point way) {
        Point middle = Point.of((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        Box swept = Box.around(middle, middle.plus(way.x(), way.y())).grown(CLEAR);
        return rim.stream().noneMatch(at -> isIn(swept, at));
    }

    private static boolean isIn(Box box, Point at) {
        return at.x() > box.minX() && at.x() < box.maxX() && at.y() > box.minY() && at.y() < box.maxY();
    }
}
