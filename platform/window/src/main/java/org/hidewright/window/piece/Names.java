package org.hidewright.window.piece;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Shape;
import org.hidewright.core.item.PartInPlace;
import org.hidewright.documents.page.FigurePlan;
import org.hidewright.documents.page.Typeface;

/** Names of parts, smaller where a part has no room for them. */
final class Names {
    /** Below this share of their size letters are no longer read. */
    private static final double SMALLEST = 0.6;
    /** Share of a part that its name may take. */
    private static final double ROOM = 0.92;

    private Names() {}

    /**
     * A drawing with names that fit its parts.
     *
     * @param factor paper millimetres for one of the thing
     */
    static Drawing fitted(Drawing drawing, List<PartInPlace> parts, double factor, Typeface typeface) {
        return Drawing.of(drawing.shapes().stream()
                .<Shape>map(shape -> shape instanceof Label label ? fitted(label, parts, factor, typeface) : shape)
                .toList());
    }

    private static Label fitted(Label label, List<PartInPlace> parts, double factor, Typeface typeface) {
        return parts.stream()
                .filter(place -> place.part().name().equals(label.text())
                        && holds(place.drawing().bounds(), label))
                .findFirst()
                .map(place -> {
                    Box part = place.drawing().bounds();
                    Box name = FigurePlan.at(Drawing.of(List.of(label)), factor, typeface)
                            .box();
                    double room = ROOM * factor * Math.min(part.width() / name.width(), part.height() / name.height());
                    double share = Math.max(SMALLEST, Math.min(1, room));
                    return Label.of(label.text(), label.at(), label.anchor(), label.height() * share)
                            .turned(label.turn());
                })
                .orElse(label);
    }

    private static boolean holds(Box box, Label label) {
        return label.at().x() >= box.minX()
                && label.at().x() <= box.maxX()
                && label.at().y() >= box.minY()
                && label.at().y() <= box.maxY();
    }
}
