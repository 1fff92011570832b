package org.hidewright.parts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.benchwork.Binding;
import org.hidewright.api.benchwork.Closure;
import org.hidewright.api.benchwork.Fastened;
import org.hidewright.api.benchwork.Lining;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.benchwork.Reinforcement;
import org.hidewright.api.benchwork.RingTab;
import org.hidewright.api.benchwork.SteppedPockets;
import org.hidewright.api.benchwork.Welt;
import org.hidewright.api.benchwork.ZipWindow;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Length;

/** Puts parts of bench work on the pieces of a draft; what has no room, or is on nothing, is told with its row. */
final class Additions {
    /** A tab is narrower than its ring or buckle by this: common practice. */
    private static final double BESIDE_RING_MM = 0.5;

    private static final NoticeKind ADDITION_NO_ROOM = NoticeKind.stop("addition-no-room");
    private static final NoticeKind ADDITION_ON_NOTHING = NoticeKind.stop("addition-on-nothing");
    private static final NoticeKind TAPE_TOO_NARROW = NoticeKind.stop("tape-too-narrow");
    private static final NoticeKind STEP_TOO_LARGE = NoticeKind.stop("step-too-large");

    private static final NoticeKind THICKNESS_NOT_SAID = NoticeKind.stop("thickness-not-said");

    static final List<NoticeKind> NOTICES =
            List.of(ADDITION_NO_ROOM, ADDITION_ON_NOTHING, TAPE_TOO_NARROW, STEP_TOO_LARGE, THICKNESS_NOT_SAID);

    private final Map<String, Piece> pieces;
    private final Map<String, Piece> added = new LinkedHashMap<>();
    private final List<Seam> seams = new ArrayList<>();
    private final List<Fitting> fittings = new ArrayList<>();

    /** @param pieces those that are drawn, by their ids */
    Additions(Map<String, Piece> pieces) {
        this.pieces = pieces;
    }

    /** Pieces that were added, by their ids. */
    Map<String, Piece> added() {
        return added;
    }

    void into(Item.Builder item) {
        seams.forEach(item::seam);
        fittings.forEach(item::fitting);
    }

    /** Of all that was added: parts, seams and fittings. */
    Set<String> ids() {
        Set<String> ids = new TreeSet<>(added.keySet());
        seams.forEach(seam -> ids.add(seam.id()));
        fittings.forEach(fitting -> ids.add(fitting.id()));
        return ids;
    }

    void add(Addition addition) throws Refusal {
        try {
            put(addition);
        } catch (NoRoom e) {
            throw new Refusal(ADDITION_NO_ROOM.at(row(addition), addition.id(), e.part()));
        }
    }

    private void put(Piece piece) throws Refusal {
        if (pieces.containsKey(piece.id()) || added.putIfAbsent(piece.id(), piece) != null) {
            throw new Refusal(Draft.ID_TWICE.at("additions", piece.id()));
        }
    }

    private static String row(Addition addition) {
        return "additions[" + addition.id() + "]";
    }

    private void put(Addition addition) throws NoRoom, Refusal {
        if (addition instanceof Addition.Closed closed) {
            close(closed);
        } else if (addition instanceof Addition.Buckled buckled) {
            buckle(buckled);
        } else if (addition instanceof Addition.Welted welt) {
            Piece of = on(addition, welt.of());
            put(Welt.along(
                            welt.id(),
                            welt.id(),
                            of.outline(),
                            welt.from().mm(),
                            Math.min(welt.to().mm(), of.outline().length()),
                            welt.width().mm(),
                            welt.thickness().mm())
                    .pieces(welt.layers(), 0));
        } else if (addition instanceof Addition.Bound bound) {
            bind(bound);
        } else if (addition instanceof Addition.Zipped zipped) {
            zip(zipped);
        } else if (addition instanceof Addition.Tabbed tabbed) {
            tab(tabbed);
        } else if (addition instanceof Addition.Stepped stepped) {
            pockets(stepped);
        } else if (addition instanceof Addition.Lined lined) {
            line(lined);
        } else {
            patch((Addition.Patched) addition);
        }
    }

    private Piece on(Addition addition, String part) throws Refusal {
        Piece piece = pieces.get(part.strip());
        if (piece == null) {
            throw new Refusal(
                    ADDITION_ON_NOTHING.at(row(addition), addition.id(), part, String.join(", ", pieces.keySet())));
        }
        return piece;
    }

    private void take(Fastened fastened) throws Refusal {
        for (Piece piece : fastened.pieces()) {
            put(piece);
        }
        seams.addAll(fastened.seams());
        fittings.addAll(fastened.fittings());
    }

    private void close(Addition.Closed closed) throws NoRoom, Refusal {
        Piece top = on(closed, closed.top());
        Piece under = on(closed, closed.under());
        if (closed.by().closure().isPresent()) {
            take(closed.by()
                    .closure()
                    .get()
                    .fasten(
                            closed.id(),
                            closed.id(),
                            top,
                            Point.of(closed.topX().mm(), closed.topY().mm()),
                            closed.towardsEnd().radians(),
                            under,
                            Point.of(closed.underX().mm(), closed.underY().mm())));
        }
    }

    private void buckle(Addition.Buckled buckled) throws NoRoom, Refusal {
        RingTab tab = RingTab.ofBuckle(
                buckled.id(),
                buckled.id(),
                buckled.inside().mm() - BESIDE_RING_MM,
                buckled.leg().mm(),
                buckled.bar().mm(),
                buckled.thickness().mm(),
                buckled.slot().mm(),
                buckled.prong().mm());
        Closure closure = Closure.buckle(
                tab,
                buckled.towards().radians(),
                buckled.pitch().mm(),
                buckled.holes(),
                buckled.spacing().mm(),
                buckled.hole().mm());
        take(closure.fasten(
                buckled.id() + "-prong",
                buckled.id(),
                on(buckled, buckled.top()),
                Point.of(buckled.topX().mm(), buckled.topY().mm()),
                buckled.towardsEnd().radians(),
                on(buckled, buckled.under()),
                Point.of(buckled.underX().mm(), buckled.underY().mm())));
    }

    private void bind(Addition.Bound bound) throws NoRoom, Refusal {
        Piece strip = Binding.strip(
                bound.id(),
                bound.id(),
                bound.edge().mm(),
                bound.lap().mm(),
                bound.cover().mm(),
                bound.stack().mm(),
                bound.thickness().mm());
        List<OnPart> rows = new ArrayList<>();
        Binding.rows(
                        strip,
                        bound.cover().mm() / 2,
                        bound.cover().mm() / 2,
                        bound.pitch().mm())
                .forEach(row -> rows.add(row.on()));
        put(strip);
        seams.add(Seam.of(bound.id() + "-seam", rows));
    }

    private void zip(Addition.Zipped zipped) throws NoRoom, Refusal {
        ZipWindow window =
                ZipWindow.of(zipped.betweenStops().mm(), 0, zipped.teeth().mm());
        if (zipped.tape().mm() < window.leastTape()) {
            throw new Refusal(
                    TAPE_TOO_NARROW.at(row(zipped) + ".zipped.tape", zipped.tape(), Length.ofMm(window.leastTape())));
        }
        window.in(
                on(zipped, zipped.on()),
                zipped.id(),
                Point.of(zipped.x().mm(), zipped.y().mm()),
                zipped.turned().radians(),
                zipped.pitch().mm());
        fittings.add(Fitting.of(zipped.id() + "-zip", "Zip", List.of()));
    }

    private void tab(Addition.Tabbed tabbed) throws NoRoom, Refusal {
        RingTab tab = RingTab.of(
                tabbed.id(),
                tabbed.id(),
                tabbed.inside().mm() - BESIDE_RING_MM,
                tabbed.leg().mm(),
                tabbed.wire().mm(),
                tabbed.thickness().mm());
        seams.add(tab.sewn(
                on(tabbed, tabbed.on()),
                Point.of(tabbed.x().mm(), tabbed.y().mm()),
                tabbed.towards().radians(),
                3,
                tabbed.pitch().mm()));
        put(tab.strip());
        fittings.add(Fitting.of(tabbed.id() + "-ring", "Ring", List.of()));
    }

    private void pockets(Addition.Stepped stepped) throws NoRoom, Refusal {
        if (2 * stepped.step().mm() > stepped.cardHeight().mm()) {
            throw new Refusal(STEP_TOO_LARGE.at(row(stepped) + ".stepped.step", stepped.step(), stepped.cardHeight()));
        }
        take(new SteppedPockets(
                        stepped.pockets(),
                        stepped.cardWidth().mm(),
                        stepped.cardHeight().mm(),
                        stepped.cards().mm(),
                        stepped.step().mm(),
                        stepped.ease().mm())
                .on(
                        on(stepped, stepped.on()),
                        stepped.id(),
                        stepped.id(),
                        Point.of(stepped.x().mm(), stepped.y().mm()),
                        stepped.thickness().mm(),
                        stepped.pitch().mm()));
    }

    private void line(Addition.Lined lined) throws NoRoom, Refusal {
        Piece outer = on(lined, lined.of());
        Curve outline =
                lined.inside().mm() > 0 ? Lining.inside(outer, lined.inside().mm()) : outer.outline();
        if (lined.shorterAt().isPresent()) {
            Fold fold = fold(lined, outer, lined.shorterAt().get().strip());
            if (outer.thickness() == 0) {
                throw new Refusal(THICKNESS_NOT_SAID.at(row(lined) + ".lined.shorter-at", outer.id()));
            }
            Path line = fold.line();
            double by =
                    Allowances.innerShorter(outer.thickness(), lined.thickness().mm(), Math.PI);
            outline = Lining.shorter(
                    outer,
                    outline,
                    line.segments().get(0).start(),
                    line.segments().get(0).end(),
                    by);
        }
        put(Piece.of(lined.id(), lined.id(), outline, lined.thickness().mm())
                .oversize(lined.leftStanding().mm()));
    }

    private Fold fold(Addition.Lined lined, Piece outer, String id) throws Refusal {
        return outer.part().folds().stream()
                .filter(fold -> fold.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal(ADDITION_ON_NOTHING.at(
                        row(lined),
                        lined.id(),
                        id,
                        String.join(
                                ", ",
                                outer.part().folds().stream().map(Fold::id).toList()))));
    }

    private void patch(Addition.Patched patched) throws NoRoom, Refusal {
        Optional<Hole> behind = pieces.values().stream()
                .flatMap(piece -> piece.part().holes().stream()
                        .filter(hole -> patched.behind().strip().equals(piece.id() + "." + hole.id())))
                .findFirst();
        if (behind.isEmpty()) {
            throw new Refusal(ADDITION_ON_NOTHING.at(
                    row(patched), patched.id(), patched.behind(), String.join(", ", pieces.keySet())));
        }
        double diameter = behind.get().diameter();
        Piece patch = Reinforcement.patch(
                patched.id(),
                patched.id(),
                diameter,
                patched.flange().mm(),
                patched.thickness().mm());
        Reinforcement.hole(patch, diameter);
        put(patch);
    }
}
