package org.hidewright.flatpouch;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.benchwork.Closure;
import org.hidewright.api.benchwork.Fastened;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Panels;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.benchwork.Pocket;
import org.hidewright.api.benchwork.Steps;
import org.hidewright.api.benchwork.StitchRow;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Seam;

/** The parts of a pouch, what holds them together, and the order in which it is made. */
final class PouchParts {
    private final FlatPouch.Asking asked;
    private final Sizes sizes;
    private final Item.Builder item = Item.builder();
    private Optional<Fastened> fastened = Optional.empty();

    PouchParts(FlatPouch.Asking asked, Sizes sizes) {
        this.asked = asked;
        this.sizes = sizes;
    }

    Item item() throws NoRoom {
        double leather = asked.thickness().mm();
        Piece back = Piece.of("back", "Back", sizes.flap().back(sizes.width(), sizes.height(), sizes.radius()), leather)
                .leather("panel leather")
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        Piece front = Piece.of("front", "Front", Panels.upright(sizes.width(), sizes.height(), sizes.radius()), leather)
                .leather("panel leather")
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        double seam = Panels.seam(sizes.width(), sizes.height(), sizes.radius());
        front.edge("mouth", "mouth", seam, seam + sizes.width());
        StitchRow row = front.stitches(
                "rim",
                front.inside(Pocket.MOUTH_MM, seam - Pocket.MOUTH_MM, sizes.margin()),
                asked.pitch().mm());
        StitchRow under = back.stitchedThrough("rim", row, Motion.none());
        item.seam(Seam.of("rim", List.of(row.on(), under.on())));
        if (asked.closing().closure().isPresent()) {
            close(asked.closing().closure().get(), back, front);
        }
        item.part(back.wholePart());
        item.part(front.wholePart());
        fastened.ifPresent(closure -> closure.into(item));
        work();
        return item.build();
    }

    private void close(Closure closure, Piece back, Piece front) throws NoRoom {
        double top = sizes.height() + sizes.flap().fold() / 2;
        back.fold(
                "over",
                Point.of(0, top),
                Point.of(sizes.width(), top),
                asked.held().thickness().mm() / 2 + asked.thickness().mm(),
                Face.GRAIN);
        fastened = Optional.of(sizes.flap().close(closure, back, front, sizes.width(), sizes.height()));
        front.cutAbove(sizes.margin(), "closure");
    }

    private void work() {
        boolean closed = asked.closing().closure().isPresent();
        Steps steps = new Steps()
                .then("mouth", "Finish the mouth of the front and the edge of the flap", 15, "front", "back");
        if (closed) {
            steps.then("set", "Cut the front and set its half of the closure, before anything is sewn", 10, "front");
        }
        steps.thenWait("glue", "Glue front on back along three sides, flesh to flesh", 10, 20, "front", "back")
                .then("stitch", "Prick and stitch the rim, back over the mouth at both ends", 60, "rim")
                .then("edges", "Trim, sand and burnish the edges", 30, "front", "back");
        if (closed) {
            steps.then("fit", "Put the thing in, fold the flap down, mark and cut its half of the closure", 15, "back");
        }
        steps.into(item);
    }
}
