package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Table;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.wording.ItemNames;
import org.hidewright.core.wording.ItemWords;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;

class HoleListTest {
    /** A strap of 300 x 24 mm that does not begin at nought, with a slot for the prong, a rivet and two holes. */
    private static Part.Builder strap() {
        return Part.of("strap", "Strap", Path.rectangle(Role.CUT, Point.of(-10, 5), 300, 24))
                .hole(Hole.of("hole-2", Point.of(235, 17), 4))
                .hole(Hole.of("hole-1", Point.of(210, 17), 4))
                .hole(Hole.of("near-rivet", Point.of(10, 17), 3.25))
                .cutOut(Path.rectangle(Role.INNER_CUT, Point.of(30, 14.5), 20, 5));
    }

    private static List<Table> of(Wording wording, Part... parts) {
        Item.Builder item = Item.builder();
        List.of(parts).forEach(item::part);
        ItemNames names = new ItemNames(new ItemWords((key, language) -> Optional.empty()), wording);
        List<Block> tables = new HoleList(wording, names).of(item.build());
        return tables.stream().map(Table.class::cast).toList();
    }

    private static List<String> lines(Table table) {
        return table.rows().stream()
                .map(row -> String.join(" | ", row).replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void everyHoleIsMeasuredFromTheEdgesFromLeftToRight() {
        Part plain = Part.of("lining", "Lining", Path.rectangle(Role.CUT, Point.of(0, 0), 300, 24))
                .build();
        List<Table> tables = of(Shop.ENGLISH, strap().build(), plain);
        assertEquals(1, tables.size(), "a part without holes has no list");
        assertEquals(
                "Holes of Strap, from its left and its bottom edge to their middles",
                tables.get(0).caption());
        assertEquals(
                List.of(
                        "near rivet | 20.0 mm | 12.0 mm | 3.3 mm",
                        "window | 50.0 mm | 12.0 mm | 20.0 mm × 5.0 mm",
                        "hole 1 | 220.0 mm | 12.0 mm | 4.0 mm",
                        "hole 2 | 245.0 mm | 12.0 mm | 4.0 mm"),
                lines(tables.get(0)));
    }

    /** Where leather is left standing, what is cut first is not what is measured from. */
    @Test
    void whereLeatherIsLeftStandingTheFinishedEdgeIsNamed() {
        Table table = of(Shop.ENGLISH, strap().oversize(3).build()).get(0);
        assertEquals("Holes of Strap, from its finished left and bottom edge to their middles", table.caption());
        assertEquals("near rivet | 20.0 mm | 12.0 mm | 3.3 mm", lines(table).get(0));
    }

    /** The head of a stud goes through a hole and the slit that leads out of it: the hole is what is marked and punched. */
    @Test
    void aKeyholeIsAHoleToPunchAndTheReachOfItsSlit() {
        Point middle = Point.of(60, 20);
        Path keyhole = Path.from(Point.of(60.2, 18))
                .arcAround(middle, -2 * (Math.PI - Math.asin(0.1)))
                .lineTo(59.8, 13)
                .lineTo(60.2, 13)
                .closed(Role.INNER_CUT);
        Path slot = Path.from(Point.of(100, 10))
                .lineTo(110, 10)
                .arcAround(Point.of(110, 12), Math.PI)
                .lineTo(100, 14)
                .arcAround(Point.of(100, 12), Math.PI)
                .closed(Role.INNER_CUT);
        Path round = Path.from(Point.of(153, 20))
                .arcAround(Point.of(150, 20), 2 * Math.PI)
                .closed(Role.INNER_CUT);
        Part flap = Part.of("flap", "Flap", Path.rectangle(Role.CUT, Point.of(0, 0), 200, 40))
                .cutOut(keyhole)
                .cutOut(slot)
                .cutOut(round)
                .build();
        assertEquals(
                List.of(
                        "hole with a slit | 60.0 mm | 20.0 mm | 4.0 mm, slit to 7.0 mm from its middle",
                        "window | 105.0 mm | 12.0 mm | 14.0 mm × 4.0 mm",
                        "window | 150.0 mm | 20.0 mm | 6.0 mm × 6.0 mm"),
                lines(of(Shop.ENGLISH, flap).get(0)));
    }

    @Test
    void holesHaveTheHostsGermanNames() {
        Table table = of(new Wording(Locale.GERMAN, UnitSystem.METRIC), strap().build())
                .get(0);
        assertEquals("Loch 1 | 220,0 mm | 12,0 mm | 4,0 mm", lines(table).get(2));
    }
}
