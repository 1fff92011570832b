package org.hidewright.foldingwallet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.benchwork.Fastened;
import org.hidewright.api.benchwork.Lining;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Panels;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.benchwork.Pocket;
import org.hidewright.api.benchwork.Steps;
import org.hidewright.api.benchwork.StitchRow;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Length;

/** The parts of a wallet, what holds them together, and the order in which it is made. */
final class WalletParts {
    private static final double CORNER = 6;

    private final FoldingWallet.Asking asked;
    private final Sizes sizes;
    private final Item.Builder item = Item.builder();

    WalletParts(FoldingWallet.Asking asked, Sizes sizes) {
        this.asked = asked;
        this.sizes = sizes;
    }

    Item item() throws NoRoom {
        Piece outer = Piece.of(
                        "outer",
                        "Outer",
                        Panels.upright(sizes.outerWidth(), sizes.height(), CORNER),
                        asked.thickness().mm())
                .leather("outer leather")
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        Piece inner = Piece.of(
                        "inner",
                        "Inner",
                        Panels.upright(sizes.innerWidth(), sizes.innerHeight(), CORNER),
                        asked.innerThickness().mm())
                .leather("inner leather")
                .shows(Face.GRAIN)
                .backbone(Math.PI / 2);
        double inside = asked.innerThickness().mm()
                + asked.liningThickness().map(Length::mm).orElse(0.0);
        fold(outer, sizes.outerWidth(), sizes.height(), inside, Face.GRAIN);
        // its grain is inside when the wallet is closed
        fold(inner, sizes.innerWidth(), sizes.innerHeight(), 0, Face.FLESH);
        Optional<Piece> lining = lining(outer);
        List<Piece> layers = new ArrayList<>(List.of(outer));
        lining.ifPresent(layers::add);
        layers.add(inner);
        List<Seam> rim = rim(layers);
        double side = Sizes.MARGIN + Sizes.CLEAR;
        Fastened left = pockets(inner, "left", "Left pocket", side);
        Fastened right = pockets(
                inner,
                "right",
                "Right pocket",
                sizes.innerWidth() - side - sizes.pockets().width());
        layers.forEach(piece -> item.part(piece.part()));
        left.into(item);
        right.into(item);
        rim.forEach(item::seam);
        work(lining.isPresent());
        return item.build();
    }

    private static void fold(Piece piece, double width, double height, double radius, Face outside) {
        piece.fold("middle", Point.of(width / 2, 0), Point.of(width / 2, height), radius, outside);
    }

    /** The lining of the notes’ room, glued into the outer bent, and shorter than it. */
    private Optional<Piece> lining(Piece outer) throws NoRoom {
        if (asked.liningThickness().isEmpty()) {
            return Optional.empty();
        }
        double thickness = asked.liningThickness().get().mm();
        double shorter = Allowances.innerShorter(asked.thickness().mm(), thickness, Math.PI);
        Curve outline = Lining.shorter(
                outer,
                outer.outline(),
                Point.of(sizes.outerWidth() / 2, sizes.height()),
                Point.of(sizes.outerWidth() / 2, 0),
                shorter);
        return Optional.of(
                Piece.of("lining", "Lining", begun(outline), thickness).leather("lining"));
    }

    /** The same outline from its upper left corner on, as the other layers have it. */
    private static Curve begun(Curve outline) {
        Box box = outline.bounds();
        double from = outline.nearest(Point.of(box.minX(), box.maxY())).along();
        List<Segment> segments = new ArrayList<>();
        segments.addAll(outline.between(from, outline.length()).segments());
        if (from > 0) {
            segments.addAll(outline.between(0, from).segments());
        }
        return Curve.closed(segments);
    }

    /**
     * The rim in three runs, so that both sides and their corners are pierced alike on every layer and only the bottom, which
     * is longer outside than inside, has wider gaps there: the same number of holes on each.
     */
    private List<Seam> rim(List<Piece> layers) throws NoRoom {
        double pitch = asked.pitch().mm();
        List<StitchRow> left = new ArrayList<>();
        List<StitchRow> bottom = new ArrayList<>();
        List<StitchRow> right = new ArrayList<>();
        for (Piece piece : layers) {
            double width = piece.outline().bounds().width();
            double height = piece.outline().bounds().height();
            double above = height - sizes.innerHeight() + Pocket.MOUTH_MM;
            double seam = Panels.seam(width, height, CORNER);
            Curve line = piece.inside(above, seam - above, Sizes.MARGIN);
            double side = sizes.innerHeight() - Pocket.MOUTH_MM - CORNER + Math.PI / 2 * (CORNER - Sizes.MARGIN);
            Curve down = line.between(0, side);
            Curve along = line.between(side, line.length() - side);
            Curve up = line.between(line.length() - side, line.length());
            if (bottom.isEmpty()) {
                left.add(piece.stitches("left-rim", down, pitch));
                bottom.add(piece.stitches("bottom-rim", along, pitch));
                right.add(piece.stitches("right-rim", up, pitch));
            } else {
                left.add(piece.stitchesLike("left-rim", down, left.get(0), pitch));
                bottom.add(piece.stitchesLike("bottom-rim", along, bottom.get(0), pitch));
                right.add(piece.stitchesLike("right-rim", up, right.get(0), pitch));
            }
        }
        return List.of(seam("left-rim", left), seam("bottom-rim", bottom), seam("right-rim", right));
    }

    private static Seam seam(String id, List<StitchRow> rows) {
        return Seam.of(id, rows.stream().map(StitchRow::on).toList());
    }

    private Fastened pockets(Piece inner, String id, String name, double x) throws NoRoom {
        Fastened sewn = sizes.pockets()
                .on(
                        inner,
                        id,
                        name,
                        Point.of(x, Sizes.MARGIN + Sizes.CLEAR),
                        asked.pocketThickness().mm(),
                        asked.pitch().mm());
        sewn.pieces().forEach(piece -> piece.leather("pocket leather"));
        return sewn;
    }

    private void work(boolean lined) {
        Steps steps = new Steps()
                .then(
                        "mouths",
                        "Finish the mouth of every pocket, of the inner and the top of the outer",
                        30,
                        "inner",
                        "outer");
        steps.thenWait(
                "pockets-on",
                "Glue the pockets on, the rear ones first, and stitch each as it is on",
                120,
                20,
                "inner");
        if (lined) {
            steps.thenWait("line", "Glue the lining into the outer, folded over a rod", 20, 30, "lining", "outer");
        }
        steps.thenWait(
                        "close",
                        "Glue the inner on along three sides, folded, so that its shorter bottom lies smooth",
                        20,
                        30,
                        "inner",
                        "outer")
                .then(
                        "stitch",
                        "Stitch the rim, holes on holes; the bottom last",
                        90,
                        "left-rim",
                        "right-rim",
                        "bottom-rim")
                .then("edges", "Trim, sand and burnish the edges", 45, "outer", "inner");
        steps.into(item);
    }
}
