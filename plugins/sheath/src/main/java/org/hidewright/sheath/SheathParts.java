package org.hidewright.sheath;

import java.util.List;
import org.hidewright.api.benchwork.Lines;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Panels;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.benchwork.Pocket;
import org.hidewright.api.benchwork.Steps;
import org.hidewright.api.benchwork.StitchRow;
import org.hidewright.api.benchwork.Welt;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Seam;

/** The parts of a sheath, what holds them together, and the order in which it is made. */
final class SheathParts {
    private final Sheath.Asking asked;
    private final Sizes sizes;
    private final Item.Builder item = Item.builder();

    SheathParts(Sheath.Asking asked, Sizes sizes) {
        this.asked = asked;
        this.sizes = sizes;
    }

    Item item() throws NoRoom {
        double leather = asked.thickness().mm();
        double pitch = asked.pitch().mm();
        double seam = Panels.seam(sizes.width(), sizes.height(), sizes.radius());
        Piece front = panel("front", "Front", 0);
        Piece back = panel("back", "Back", sizes.loop());
        Piece welt = Welt.along("welt", "Welt", front.outline(), 0, seam, sizes.welt(), leather)
                .leather("sheath leather")
                .pieces(sizes.layers(), 0);
        front.edge("throat", "throat", seam, seam + sizes.width());
        StitchRow row =
                front.stitches("rim", front.inside(Pocket.MOUTH_MM, seam - Pocket.MOUTH_MM, sizes.margin()), pitch);
        StitchRow through = welt.stitchedThrough("rim", row, Motion.none());
        StitchRow under = back.stitchedThrough("rim", row, Motion.none());
        Seam rim = Seam.of("rim", List.of(row.on(), through.on(), under.on()));
        boolean loop = asked.belt().isPresent();
        if (loop) {
            loop(back, pitch);
        }
        item.part(back.part()).part(front.part()).part(welt.part()).seam(rim);
        work(loop);
        return item.build();
    }

    private Piece panel(String id, String name, double loop) throws NoRoom {
        double corner = Math.min(sizes.width() / 4, 8);
        return Piece.of(
                        id,
                        name,
                        Panels.flapped(sizes.width(), sizes.height(), sizes.radius(), loop, loop > 0 ? corner : 0),
                        asked.thickness().mm())
                .leather("sheath leather")
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
    }

    /** Folded over backwards, so that its flesh lies on the grain of the back, and held by two rows below the belt. */
    private void loop(Piece back, double pitch) throws NoRoom {
        double bendAt = sizes.height() + sizes.rise();
        double middle = bendAt + sizes.bend() / 2;
        back.fold("loop", Point.of(0, middle), Point.of(sizes.width(), middle), sizes.loopRadius(), Face.FLESH);
        double in = sizes.welt() + 2;
        if (sizes.width() - 2 * in < pitch) { // not one stitch across a narrow blade
            throw new NoRoom(back.id(), "loop-1");
        }
        for (int nth = 0; nth < 2; nth++) {
            double down = sizes.down() + nth * sizes.box();
            double over = bendAt + sizes.bend() + down;
            StitchRow onLoop =
                    back.stitches("loop-" + (nth + 1), Lines.straight(in, over, sizes.width() - in, over), pitch);
            StitchRow onBack = back.stitches(
                    "loop-" + (nth + 1) + "-under",
                    Lines.straight(in, bendAt - down, sizes.width() - in, bendAt - down),
                    pitch);
            item.seam(Seam.of("loop-" + (nth + 1), List.of(onLoop.on(), onBack.on())));
        }
    }

    private void work(boolean loop) {
        Steps steps = new Steps().then("throat", "Finish the throat of both panels", 10, "front", "back");
        if (loop) {
            steps.then(
                    "loop-on",
                    "Fold the loop down, and stitch it to the back with the thread sunk in a groove inside",
                    30,
                    "loop-1",
                    "loop-2");
        }
        steps.thenWait(
                        "welt-on",
                        "Glue the welt on the back, every layer of it, flush with the edge",
                        15,
                        20,
                        "welt",
                        "back")
                .thenWait("close", "Glue the front on the welt", 10, 20, "front")
                .then("stitch", "Drill or pierce through the whole stack, and stitch the rim", 70, "rim")
                .then("edges", "Sand all layers flush and burnish the edge", 35, "front", "back")
                .thenWait(
                        "form",
                        "Wet it, push the blade in wrapped in film, press it to shape, and draw the blade out",
                        20,
                        24 * 60,
                        "front");
        steps.into(item);
    }
}
