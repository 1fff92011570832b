package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Table;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.core.wording.ItemNames;
import org.hidewright.core.wording.Wording;

/**
 * Where holes and windows lie on each part, so that a strap can be marked with a rule, without its pattern: from the left and
 * the bottom edge as the part is drawn, from left to right.
 */
final class HoleList {
    private final Wording wording;
    private final ItemNames names;

    HoleList(Wording wording, ItemNames names) {
        this.wording = wording;
        this.names = names;
    }

    /** A table for each part into which something is punched or cut. */
    List<Block> of(Item item) {
        List<Block> tables = new ArrayList<>();
        for (Part part : item.parts()) {
            if (!part.holes().isEmpty() || !part.cutOuts().isEmpty()) {
                tables.add(table(part));
            }
        }
        return tables;
    }

    /** @param middle what is measured to */
    private record Place(String name, Point middle, String size) {}

    private Table table(Part part) {
        Box box = part.outline().bounds();
        Table.Builder table = Table.builder()
                .caption(wording.host(
                        part.allowance() > 0 ? "hole-list.title-finished" : "hole-list.title", part.name()))
                .column(wording.host("hole-list.hole"))
                .numbers(wording.host("hole-list.left"))
                .numbers(wording.host("hole-list.bottom"))
                .numbers(wording.host("hole-list.size"));
        for (Place place : places(part)) {
            table.row(
                    place.name(),
                    drawn(place.middle().x() - box.minX()),
                    drawn(place.middle().y() - box.minY()),
                    place.size());
        }
        return table.build();
    }

    private List<Place> places(Part part) {
        List<Place> places = new ArrayList<>();
        for (Hole hole : part.holes()) {
            places.add(new Place(names.on(hole), hole.centre(), drawn(hole.diameter())));
        }
        for (Path window : part.cutOuts()) {
            places.add(Keyhole.in(window).map(this::keyhole).orElseGet(() -> window(window.bounds())));
        }
        places.sort(Comparator.comparingDouble((Place place) -> place.middle().x())
                .thenComparingDouble(place -> place.middle().y()));
        return places;
    }

    /** The middle of the punch is what is marked, not that of the whole. */
    private Place keyhole(Keyhole found) {
        return new Place(
                wording.host("hole-list.keyhole"),
                found.hole(),
                wording.host("hole-list.keyhole.size", drawn(found.diameter()), drawn(found.reach())));
    }

    private Place window(Box box) {
        return new Place(
                wording.host("hole-list.window"),
                Point.of((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2),
                wording.host("patterns.by", drawn(box.width()), drawn(box.height())));
    }

    private String drawn(double mm) {
        return wording.drawn(Length.ofMm(mm));
    }
}
