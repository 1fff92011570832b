package org.hidewright.bookcover;

import java.util.Optional;
import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.benchwork.Lines;
import org.hidewright.api.benchwork.Lining;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.benchwork.Pocket;
import org.hidewright.api.benchwork.Steps;
import org.hidewright.api.benchwork.TurnedEdge;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;

/** The parts of a cover, what holds them together, and the order in which it is made. */
final class CoverParts {
    /** A lining ends this far inside of a turned edge, under the sleeves. */
    private static final double LINING_INSIDE = 2;

    private final BookCover.Asking asked;
    private final Sizes sizes;
    private final Item.Builder item = Item.builder();

    CoverParts(BookCover.Asking asked, Sizes sizes) {
        this.asked = asked;
        this.sizes = sizes;
    }

    Item item() throws NoRoom {
        double pitch = asked.pitch().mm();
        Curve finished = Outlines.rectangle(Point.of(0, 0), sizes.width(), sizes.height());
        Piece outer = outer(finished);
        spine(outer, 0, sizes.height());
        Piece left = sleeve("left", "Left sleeve", true);
        Piece right = sleeve("right", "Right sleeve", false);
        double round = 2 * sizes.sleeve() + sizes.height();
        item.seam(Pocket.on(outer, left, Motion.none()).sewn("seam", 0, round, sizes.margin(), pitch));
        item.seam(Pocket.on(outer, right, Motion.shift(sizes.width() - sizes.sleeve(), 0))
                .sewn("seam", 0, round, sizes.margin(), pitch));
        item.part(outer.part()).part(left.part()).part(right.part());
        Optional<Piece> lining = lining(outer, finished);
        lining.ifPresent(piece -> item.part(piece.part()));
        work(lining.isPresent());
        return item.build();
    }

    private Piece outer(Curve finished) throws NoRoom {
        if (asked.edge() instanceof BookCover.Edge.Turned turned) {
            TurnedEdge edge = TurnedEdge.round(
                    "outer", finished, turned.turn().mm(), turned.skivedTo().mm());
            Piece outer =
                    Piece.of("outer", "Cover", edge.outline(), asked.thickness().mm());
            edge.pleats().forEach(outer::mark);
            double w = sizes.width();
            double h = sizes.height();
            turn(outer, Point.of(0, 0), Point.of(w, 0));
            turn(outer, Point.of(w, 0), Point.of(w, h));
            turn(outer, Point.of(w, h), Point.of(0, h));
            turn(outer, Point.of(0, h), Point.of(0, 0));
            return dressed(outer);
        }
        return dressed(Piece.of("outer", "Cover", finished, asked.thickness().mm()));
    }

    /** Where it turns: marked, and not a fold of its full thickness, since it is skived there. */
    private static void turn(Piece outer, Point from, Point to) {
        outer.mark(Lines.through(from, to));
    }

    private static Piece dressed(Piece outer) {
        return outer.leather("cover leather").shows(Face.GRAIN).backbone(Math.PI / 2);
    }

    /** Two quarter turns, one at either side of the back of the book. */
    private void spine(Piece piece, double from, double to) {
        double leather = asked.thickness().mm();
        double radius = Sizes.bendRadius(leather);
        double bend = Allowances.bend(radius, leather, Math.PI / 2);
        double first = (sizes.width() - sizes.spine() + bend) / 2;
        double second = (sizes.width() + sizes.spine() - bend) / 2;
        piece.fold("spine-left", Point.of(first, from), Point.of(first, to), radius, Face.GRAIN);
        piece.fold("spine-right", Point.of(second, from), Point.of(second, to), radius, Face.GRAIN);
    }

    /** Its outline begins at a corner of its mouth and goes round the three sides that are sewn. */
    private Piece sleeve(String id, String name, boolean left) throws NoRoom {
        double s = sizes.sleeve();
        double h = sizes.height();
        Curve outline = left
                ? Outlines.polygon(Point.of(s, h), Point.of(0, h), Point.of(0, 0), Point.of(s, 0))
                : Outlines.polygon(Point.of(0, 0), Point.of(s, 0), Point.of(s, h), Point.of(0, h));
        Piece sleeve = Piece.of(id, name, outline, asked.sleeveThickness().mm())
                .leather("sleeve leather")
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        return sleeve.edge("mouth", "mouth", 2 * s + h, 2 * s + 2 * h);
    }

    private Optional<Piece> lining(Piece outer, Curve finished) throws NoRoom {
        if (asked.liningThickness().isEmpty()) {
            return Optional.empty();
        }
        boolean turned = asked.edge() instanceof BookCover.Edge.Turned;
        Piece whole = Piece.of(
                "lining", "Lining", finished, asked.liningThickness().get().mm());
        Curve inside = turned ? Lining.inside(whole, LINING_INSIDE) : finished;
        Curve shorter = Lining.shorter(
                outer,
                inside,
                Point.of(sizes.width() / 2, sizes.height()),
                Point.of(sizes.width() / 2, 0),
                sizes.liningShorter());
        return Optional.of(Piece.of("lining", "Lining", shorter, whole.thickness())
                .leather("lining")
                .oversize(turned ? 0 : 1.5));
    }

    private void work(boolean lined) {
        Steps steps = new Steps().then("mouths", "Finish the mouths of both sleeves", 10, "left", "right");
        boolean turned = asked.edge() instanceof BookCover.Edge.Turned;
        if (turned) {
            steps.then("skive", "Skive the turn of the cover all round", 25, "outer");
        }
        if (lined) {
            steps.thenWait(
                    "line",
                    "Glue the lining in with the cover bent round the book, from the spine outwards",
                    20,
                    30,
                    "lining",
                    "outer");
        }
        if (turned) {
            steps.thenWait("turn", "Turn the long edges over, then the short ones, corners last", 30, 20, "outer");
        }
        steps.thenWait("glue", "Glue the sleeves on, each along three sides", 10, 20, "left", "right", "outer")
                .then("stitch", "Prick and stitch both sleeves, back over each mouth", 60, "left-seam", "right-seam");
        if (!turned) {
            steps.then("edges", "Trim, sand and burnish the edges", 35, "outer", "left", "right");
        }
        steps.into(item);
    }
}
