package org.hidewright.liddedpouch;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.benchwork.Closure;
import org.hidewright.api.benchwork.Fastened;
import org.hidewright.api.benchwork.Lines;
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
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Seam;

/** The parts of a pouch with a gusset, what holds them together, and the order in which it is made. */
final class LiddedParts {
    /** From the end of the gusset to its first hole. */
    static final double END = 2.5;

    private final LiddedPouch.Asking asked;
    private final Sizes sizes;
    private final Item.Builder item = Item.builder();
    private double seamLength;

    LiddedParts(LiddedPouch.Asking asked, Sizes sizes) {
        this.asked = asked;
        this.sizes = sizes;
    }

    /** Length of the stitch line on the front, once the item is there. */
    double seamLength() {
        return seamLength;
    }

    Item item() throws NoRoom {
        double leather = asked.thickness().mm();
        double pitch = asked.pitch().mm();
        double seam = Panels.seam(sizes.width(), sizes.height(), sizes.radius());
        Piece front = Piece.of("front", "Front", Panels.upright(sizes.width(), sizes.height(), sizes.radius()), leather)
                .leather("panel leather")
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        Piece back = Piece.of(
                        "back",
                        "Back with lid",
                        sizes.lid().back(sizes.width(), sizes.height(), sizes.radius()),
                        leather)
                .leather("panel leather")
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        StitchRow row =
                front.stitches("rim", front.inside(Pocket.MOUTH_MM, seam - Pocket.MOUTH_MM, sizes.margin()), pitch);
        StitchRow onBack = back.stitchedThrough("rim", row, Motion.none());
        seamLength = row.line().length();
        double width = sizes.gussetWidth();
        Piece gusset = Piece.of(
                        "gusset",
                        "Gusset",
                        Outlines.rectangle(Point.of(0, 0), seamLength + 2 * END, width),
                        asked.gussetThickness().mm())
                .leather("gusset leather")
                .shows(Face.GRAIN);
        StitchRow toFront = gusset.stitchesLike("front", along(width - sizes.margin()), row, pitch);
        StitchRow toBack = gusset.stitchesLike("back", along(sizes.margin()), row, pitch);
        front.edge("mouth", "mouth", seam, seam + sizes.width());
        item.seam(Seam.of("front-seam", List.of(row.on(), toFront.on())));
        item.seam(Seam.of("back-seam", List.of(onBack.on(), toBack.on())));
        Optional<RingTab> tab = ring(back, pitch);
        Optional<Closure> closure = asked.closing().closure();
        Optional<Fastened> fastened =
                closure.isPresent() ? Optional.of(close(closure.get(), back, front)) : Optional.empty();
        item.part(front.wholePart()).part(back.wholePart()).part(gusset.part());
        tab.ifPresent(ring -> item.part(ring.strip().leather("gusset leather").part()));
        fastened.ifPresent(set -> set.into(item));
        tab.ifPresent(ring -> item.fitting(Fitting.of("tab-ring", "Ring in the tab", List.of())));
        work(tab.isPresent(), closure.isPresent());
        return item.build();
    }

    private Curve along(double y) {
        return Lines.straight(END, y, END + seamLength, y);
    }

    private Optional<RingTab> ring(Piece back, double pitch) throws NoRoom {
        if (asked.ring().isEmpty()) {
            return Optional.empty();
        }
        LiddedPouch.Ring ring = asked.ring().get();
        double width = ring.inside().mm() - 0.5;
        RingTab tab = RingTab.of(
                "tab",
                "Tab for the ring",
                width,
                RingTab.NECK_MM + Math.max(14, width / 2) + sizes.margin(),
                ring.wire().mm(),
                asked.gussetThickness().mm());
        item.seam(tab.sewn(
                back, Point.of(sizes.width() / 2, sizes.height() - 2 * sizes.margin()), -Math.PI / 2, 3, pitch));
        return Optional.of(tab);
    }

    private Fastened close(Closure closure, Piece back, Piece front) throws NoRoom {
        double first = sizes.height() + sizes.quarter() / 2;
        double second = sizes.height() + sizes.lid().fold() - sizes.quarter() / 2;
        for (double fold : new double[] {first, second}) {
            back.fold(
                    fold == first ? "over" : "down",
                    Point.of(0, fold),
                    Point.of(sizes.width(), fold),
                    Sizes.BEND_RADIUS,
                    Face.GRAIN);
        }
        Fastened fastened = sizes.lid().close(closure, back, front, sizes.width(), sizes.height());
        front.cutAbove(sizes.margin(), "closure");
        return fastened;
    }

    private void work(boolean ring, boolean closed) {
        Steps steps = new Steps()
                .then(
                        "mouths",
                        "Finish the mouth of the front, the edge of the lid and both ends of the gusset",
                        25,
                        "front",
                        "back",
                        "gusset");
        if (ring) {
            steps.then("ring", "Lay the tab round the ring and stitch it to the back", 25, "tab", "tab-ring", "back");
        }
        if (closed) {
            steps.then("set", "Cut the front and set its half of the closure, before anything is sewn", 10, "front");
        }
        steps.thenWait(
                        "form",
                        "Damp the gusset, turn both flanges up along a straight edge, and let it dry",
                        20,
                        4 * 60,
                        "gusset")
                .then(
                        "front-sewn",
                        "Stitch the gusset to the front, from the middle of the bottom to either side",
                        60,
                        "front-seam")
                .then("back-sewn", "Stitch the gusset to the back in the same way", 60, "back-seam")
                .then("edges", "Trim, sand and burnish all edges", 40, "front", "back", "gusset");
        if (closed) {
            steps.then("fit", "Put the thing in, close the lid, mark and cut its half of the closure", 15, "back");
        }
        steps.into(item);
    }
}
