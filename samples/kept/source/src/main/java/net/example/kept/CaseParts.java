package net.example.kept;

import java.util.List;
import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.benchwork.Fastened;
import org.hidewright.api.benchwork.Flap;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Panels;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.benchwork.Pocket;
import org.hidewright.api.benchwork.RingTab;
import org.hidewright.api.benchwork.Steps;
import org.hidewright.api.benchwork.StitchRow;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Seam;

/** The parts of a lens case. */
final class CaseParts {
    private final LensCase.Asking asked;
    private final double width;
    private final double height;
    private final double radius;
    private final double leather;
    private final double pitch;
    private final Item.Builder item = Item.builder();

    CaseParts(LensCase.Asking asked, double width, double height, double radius) {
        this.asked = asked;
        this.width = width;
        this.height = height;
        this.radius = radius;
        this.leather = asked.leather().mm();
        this.pitch = asked.pitch().mm();
    }

    Item item() throws NoRoom {
        Flap flap = asked.closing()
                .closure()
                .map(closure -> Flap.closedBy(
                        closure, height, leather, Allowances.bend(asked.held().thickness().mm() / 2, leather, Math.PI)))
                .orElse(Flap.NONE);
        Piece back = Piece.of("back", "Back", flap.back(width, height, radius), leather)
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        Piece front = Piece.of("front", "Front", Panels.upright(width, height, radius), leather)
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        double seam = Panels.seam(width, height, radius);
        StitchRow rim = front.stitches(
                "rim", front.inside(Pocket.MOUTH_MM, seam - Pocket.MOUTH_MM, LensCase.MARGIN_MM), pitch);
        StitchRow under = back.stitchedThrough("rim", rim, Motion.none());
        item.seam(Seam.of("rim", List.of(rim.on(), under.on())));
        Piece pocket = pocketOn(back);
        Fastened fastened = asked.closing().closure().isPresent()
                ? flap.close(asked.closing().closure().get(), back, front, width, height)
                : null;
        if (asked.ring().isPresent()) {
            tabOn(back);
        }
        item.part(back.wholePart());
        item.part(front.wholePart());
        item.part(pocket.wholePart());
        if (fastened != null) {
            fastened.into(item);
        }
        new Steps()
                .then("pocket", "Sew the pocket for the cloth on the inside of the back", 20, "pocket", "back")
                .thenWait("glue", "Glue front on back, flesh to flesh", 10, 20, "front", "back")
                .then("stitch", "Prick and stitch the rim", 60, "rim")
                .into(item);
        return item.build();
    }

    /** For the cloth of the lens, inside the back. */
    private Piece pocketOn(Piece back) throws NoRoom {
        double wide = width / 2;
        double high = height / 2;
        Curve outline = Outlines.roundedRectangle(Point.of(0, 0), wide, high, Math.min(4, Math.min(wide, high) / 4));
        Piece pocket = Piece.of("pocket", "Pocket", outline, leather / 2);
        Pocket laid = Pocket.on(back, pocket, Motion.shift(wide / 2, high / 2));
        item.seam(laid.sewn("sides", 0, pocket.outline().length() - wide, 3, pitch));
        return pocket;
    }

    private void tabOn(Piece back) throws NoRoom {
        double inside = asked.ring().orElseThrow().mm();
        RingTab tab = RingTab.of("tab", "Tab", inside - 1, 30, 3, leather);
        item.seam(tab.sewn(back, Point.of(width / 2, height - 6), -Math.PI / 2, 2.5, pitch));
        item.part(tab.strip().wholePart());
    }
}
