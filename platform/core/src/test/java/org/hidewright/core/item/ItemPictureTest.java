package org.hidewright.core.item;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.junit.jupiter.api.Test;

/** All parts of an item on one picture. */
class ItemPictureTest {
    private static Fold fold(String id, double x) {
        return Fold.of(id, Path.line(Role.FOLD, Point.of(x, 0), Point.of(x, 130)), 0, Face.GRAIN);
    }

    @Test
    void aNameLiesOnNoFoldNorArrow() {
        Part cover = Part.of("cover", "Cover", Path.rectangle(Role.CUT, Point.of(0, 0), 190, 130))
                .fold(fold("left", 88))
                .fold(fold("right", 102))
                .direction(Math.PI / 2)
                .build();
        PartPatternTest.assertLettersLieOnNothing(
                ItemPicture.of(Item.builder().part(cover).build()).drawing());
    }

    /**
     * A collar of 600 x 25 mm and its keeper of 76 x 12 mm: on a page 170 mm wide all is at most 0.28 of its size and letters
     * of 2.6 mm are 9 mm high beside it, which the keeper has no room for.
     */
    @Test
    void aNameLiesOnNoLineAlsoWhereThePictureIsMadeSmaller() {
        Part collar = Part.of("collar", "Collar", Path.rectangle(Role.CUT, Point.of(0, 0), 600, 25))
                .hole(Hole.of("hole", Point.of(450, 12.5), 4))
                .build();
        Part keeper = Part.of("keeper", "Keeper", Path.rectangle(Role.CUT, Point.of(0, 0), 76, 12))
                .build();
        Part second = Part.of("second", "Second keeper", Path.rectangle(Role.CUT, Point.of(0, 0), 76, 12))
                .build();
        Drawing picture = ItemPicture.of(
                        Item.builder().part(collar).part(keeper).part(second).build())
                .drawing();
        double smaller =
                Math.max(picture.bounds().width() / 170, picture.bounds().height() / 90);
        Drawing.Builder seen = Drawing.builder();
        for (Shape shape : picture.shapes()) {
            seen.add(
                    shape instanceof Label name
                            ? Label.of(name.text(), name.at(), name.anchor(), smaller * name.height())
                                    .turned(name.turn())
                            : shape);
        }
        PartPatternTest.assertLettersLieOnNothing(seen.build());
        List<Label> names = seen.build().shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
        assertEquals(
                List.of(2.6 * smaller, 2.6 * smaller, 2.6 * smaller),
                names.stream().map(Label::height).toList());
        for (Label one : names) {
            for (Label other : names) {
                assertTrue(one == other || apart(one.bounds(), other.bounds()), one + " lies on " + other);
            }
        }
    }

    private static boolean apart(Box one, Box other) {
        return one.maxX() < other.minX()
                || other.maxX() < one.minX()
                || one.maxY() < other.minY()
                || other.maxY() < one.minY();
    }

    @Test
    void aPartFullOfLinesHasItsNameAllTheSame() {
        Part.Builder full = Part.of("full", "Full of lines", Path.rectangle(Role.CUT, Point.of(0, 0), 30, 130));
        for (int x = 1; x < 30; x++) {
            full.fold(fold("at-" + x, x));
        }
        assertEquals(
                1,
                ItemPicture.of(Item.builder().part(full.build()).build()).drawing().shapes().stream()
                        .filter(Label.class::isInstance)
                        .count());
    }
}
