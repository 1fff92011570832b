package net.example.fieldkit;

import java.util.List;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.benchwork.Steps;
import org.hidewright.api.benchwork.StitchRow;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Seam;

/** The two layers of a pad, its seam, and the order in which it is made. */
final class PadParts {
    private final StrapPad.Pad asked;
    private final PadSizes sizes;

    PadParts(StrapPad.Pad asked, PadSizes sizes) {
        this.asked = asked;
        this.sizes = sizes;
    }

    Item item() throws NoRoom {
        Piece upper = layer("upper", "Upper").shows(Face.GRAIN);
        Piece lining = layer("lining", "Lining");
        StitchRow rim = upper.stitches(
                "rim", upper.inside(asked.margin().mm()), asked.pitch().mm());
        StitchRow under = lining.stitchedThrough("rim", rim, Motion.none());
        Item.Builder item = Item.builder();
        item.part(upper.wholePart());
        item.part(lining.wholePart());
        item.seam(Seam.of("rim", List.of(rim.on(), under.on())));
        new Steps()
                .then("slots", "Cut the slots of both layers and finish their edges", 20, "upper", "lining")
                .thenWait("glue", "Glue the layers flesh to flesh, slot on slot", 10, 20, "upper", "lining")
                .then("stitch", "Prick and stitch the rim", 60, "rim")
                .then("edges", "Trim, sand and burnish the edge", 20, "upper", "lining")
                .into(item);
        return item.build();
    }

    private Piece layer(String id, String name) throws NoRoom {
        double length = asked.length().mm();
        double width = asked.width().mm();
        Curve outline = Outlines.roundedRectangle(
                Point.of(0, 0), length, width, sizes.corner().mm());
        Piece piece = Piece.of(id, name, outline, asked.thickness().mm()).backbone(0);
        double far = asked.beyondSlot().plus(sizes.slotWidth()).mm();
        return piece.window("slot-left", slot(asked.beyondSlot().mm())).window("slot-right", slot(length - far));
    }

    /** Across the pad, at a length along it, with round ends. */
    private Curve slot(double along) {
        double across = sizes.slotLength().mm();
        double wide = sizes.slotWidth().mm();
        double lower = (asked.width().mm() - across) / 2;
        return Outlines.roundedRectangle(Point.of(along, lower), wide, across, Math.min(wide, across) / 2);
    }
}
