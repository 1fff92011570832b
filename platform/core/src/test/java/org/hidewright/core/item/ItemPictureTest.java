package org.hidewright.core.item;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fold;
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
                ItemPicture.of(Item.builder().part(cover).build()));
    }

    @Test
    void aPartFullOfLinesHasItsNameAllTheSame() {
        Part.Builder full = Part.of("full", "Full of lines", Path.rectangle(Role.CUT, Point.of(0, 0), 30, 130));
        for (int x = 1; x < 30; x++) {
            full.fold(fold("at-" + x, x));
        }
        assertEquals(
                1,
                ItemPicture.of(Item.builder().part(full.build()).build()).shapes().stream()
                        .filter(Label.class::isInstance)
                        .count());
    }
}
