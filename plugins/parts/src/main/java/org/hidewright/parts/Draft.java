package org.hidewright.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hidewright.api.benchwork.NoRoom;
import org.hidewright.api.benchwork.Piece;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Fault;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.PathData;
import org.hidewright.api.geometry.Spacing;
import org.hidewright.api.geometry.Spot;
import org.hidewright.api.item.Edge;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.item.WorkOrder;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;

/** Puts an item together from what was typed; each thing it cannot use is told with its row. */
final class Draft {
    static final NoticeKind ID_TWICE = NoticeKind.stop("id-twice");
    private static final NoticeKind NO_SUCH_PART = NoticeKind.stop("no-such-part");
    private static final NoticeKind PATH_UNREADABLE = NoticeKind.stop("path-unreadable");
    private static final NoticeKind PATH_OPEN = NoticeKind.stop("path-open");
    private static final NoticeKind CORNER_TOO_ROUND = NoticeKind.stop("corner-too-round");
    private static final NoticeKind OUTLINE_FAULTY = NoticeKind.stop("outline-faulty");
    private static final NoticeKind NONE_CUT = NoticeKind.stop("none-cut");
    private static final NoticeKind EDGE_TOO_LONG = NoticeKind.stop("edge-too-long");
    private static final NoticeKind NO_ROOM = NoticeKind.stop("no-room-for-line");
    private static final NoticeKind RUNS_DIFFER = NoticeKind.stop("runs-differ");
    private static final NoticeKind WORK_ON_NOTHING = NoticeKind.stop("work-on-nothing");
    private static final NoticeKind WORK_IN_CIRCLE = NoticeKind.stop("work-in-circle");
    private static final NoticeKind WAITS_CROSS = NoticeKind.stop("waits-cross");
    private static final NoticeKind NOT_ON_A_PART = NoticeKind.stop("not-on-a-part");

    static final List<NoticeKind> NOTICES = List.of(
            ID_TWICE,
            NO_SUCH_PART,
            PATH_UNREADABLE,
            PATH_OPEN,
            CORNER_TOO_ROUND,
            OUTLINE_FAULTY,
            NONE_CUT,
            EDGE_TOO_LONG,
            NO_ROOM,
            RUNS_DIFFER,
            NOT_ON_A_PART,
            WORK_ON_NOTHING,
            WORK_IN_CIRCLE,
            WAITS_CROSS);

    private final Parts.Drawn drawn;
    private final Map<String, Piece> pieces = new LinkedHashMap<>();
    private final Map<String, Curve> outlines = new LinkedHashMap<>();
    private final Set<String> known = new HashSet<>();
    private final Set<OnPart> lines = new HashSet<>();
    private final Map<OnPart, Spacing> spacings = new HashMap<>();
    private final Set<OnPart> holes = new HashSet<>();
    private Additions additions;

    Draft(Parts.Drawn drawn) {
        this.drawn = drawn;
    }

    Item item() throws Refusal {
        for (DrawnPart part : drawn.parts()) {
            add(part);
        }
        for (DrawnEdge edge : drawn.edges().orElse(List.of())) {
            add(edge);
        }
        for (DrawnOpening opening : drawn.openings().orElse(List.of())) {
            add(opening);
        }
        for (DrawnStitches stitches : drawn.stitches().orElse(List.of())) {
            add(stitches);
        }
        for (DrawnFold fold : drawn.folds().orElse(List.of())) {
            OnPart on = on("folds", fold.id());
            pieces.get(on.part())
                    .builder()
                    .fold(Fold.of(
                            on.id(),
                            straight(fold).path(Role.FOLD),
                            fold.insideRadius().mm(),
                            Face.valueOf(fold.outside().name())));
        }
        additions = new Additions(pieces);
        for (Addition addition : drawn.additions().orElse(List.of())) {
            own("additions", addition.id());
            additions.add(addition);
            known.addAll(additions.ids());
        }
        Item.Builder item = Item.builder();
        for (Piece piece : Stream.concat(pieces.values().stream(), additions.added().values().stream())
                .toList()) {
            item.part(whole(piece));
        }
        additions.into(item);
        for (DrawnSeam seam : drawn.seams().orElse(List.of())) {
            own("seams", seam.id());
            item.seam(Seam.of(seam.id(), on("seams", seam.id(), seam.lines(), lines)));
        }
        for (DrawnFitting fitting : drawn.fittings().orElse(List.of())) {
            own("fittings", fitting.id());
            item.fitting(Fitting.of(
                    fitting.id(),
                    fitting.name().orElse(fitting.id()),
                    on("fittings", fitting.id(), fitting.holes().orElse(List.of()), holes)));
        }
        List<Operation> operations = new ArrayList<>();
        for (DrawnOperation operation : drawn.operations().orElse(List.of())) {
            operations.add(operation(operation));
        }
        if (WorkOrder.of(operations).isEmpty()) {
            throw new Refusal(WORK_IN_CIRCLE.at("operations"));
        }
        operations.forEach(item::operation);
        return item.build();
    }

    private Operation operation(DrawnOperation drawn) throws Refusal {
        String row = "operations[" + drawn.id() + "]";
        if (drawn.waitMost().isPresent()
                && drawn.waitMost().get().seconds()
                        < drawn.waitLeast().orElse(Duration.ofSeconds(0)).seconds()) {
            throw new Refusal(WAITS_CROSS.at(
                    row + ".wait-most",
                    drawn.id(),
                    drawn.waitLeast().orElseThrow(),
                    drawn.waitMost().get()));
        }
        Operation operation = drawn.operation();
        Set<String> things = new TreeSet<>(pieces.keySet());
        things.addAll(additions.ids());
        this.drawn.seams().orElse(List.of()).forEach(seam -> things.add(seam.id()));
        this.drawn.fittings().orElse(List.of()).forEach(fitting -> things.add(fitting.id()));
        Set<String> others = new TreeSet<>();
        this.drawn.operations().orElse(List.of()).forEach(other -> others.add(other.id()));
        mustBeOf(things, operation.on(), row + ".on", drawn.id());
        mustBeOf(others, operation.after(), row + ".after", drawn.id());
        own("operations", drawn.id());
        return operation;
    }

    private static void mustBeOf(Set<String> known, List<String> named, String place, String id) throws Refusal {
        for (String name : named) {
            if (!known.contains(name)) {
                throw new Refusal(WORK_ON_NOTHING.at(place, name, id, String.join(", ", known)));
            }
        }
    }

    private static Curve straight(DrawnFold fold) throws Refusal {
        List<Curve> line = fold.line().lines(null);
        if (line.isEmpty()) {
            throw new Refusal(NO_ROOM.at("folds[" + fold.id() + "].line", fold.id()));
        }
        return line.get(0);
    }

    /** Ids that links use are there once in the whole item. */
    private void own(String table, String id) throws Refusal {
        if (!known.add(id)) {
            throw new Refusal(ID_TWICE.at(table, id));
        }
    }

    /** What is on a part has the part before its own name: front.rim. */
    private OnPart on(String table, String id) throws Refusal {
        String part = pieces.keySet().stream()
                .filter(known -> id.startsWith(known + ".") && id.length() > known.length() + 1)
                .max(Comparator.comparingInt(String::length))
                .orElse(null);
        if (part == null) {
            throw new Refusal(NO_SUCH_PART.at(table + "[" + id + "]", id, String.join(", ", pieces.keySet())));
        }
        own(table, id);
        return new OnPart(part, id.substring(part.length() + 1));
    }

    private void add(DrawnPart part) throws Refusal {
        own("parts", part.id());
        Curve outline = outline(part);
        outlines.put(part.id(), outline);
        Piece piece = piece(part, outline);
        Part.Builder builder = piece.builder()
                .leather(part.leather().orElse(""))
                .oversize(part.leftStanding().mm())
                .sanded(part.sanded().mm());
        part.shows().faces().forEach(builder::shows);
        if (part.count() + part.turnedOver() == 0) {
            throw new Refusal(NONE_CUT.at("parts[" + part.id() + "].count", part.id()));
        }
        builder.pieces(part.count(), part.turnedOver());
        part.backbone().ifPresent(direction -> builder.direction(direction.radians()));
        pieces.put(part.id(), piece);
    }

    /** What is put on a part has an id of its own there too. */
    private static Part whole(Piece piece) throws Refusal {
        try {
            return piece.part();
        } catch (IllegalArgumentException twice) {
            throw new Refusal(ID_TWICE.at("additions", piece.id()));
        }
    }

    private static Piece piece(DrawnPart part, Curve outline) {
        try {
            return Piece.of(
                    part.id(),
                    part.name().orElse(part.id()),
                    outline,
                    part.thickness().map(Length::mm).orElse(0.0));
        } catch (NoRoom e) {
            throw new IllegalStateException("its faults were looked for", e);
        }
    }

    private static Curve outline(DrawnPart part) throws Refusal {
        String place = "parts[" + part.id() + "].shape";
        Curve outline;
        try {
            outline = part.shape().outline();
        } catch (PathData.Unreadable e) {
            throw new Refusal(PATH_UNREADABLE.at(
                    place, part.id(), e.getMessage(), e.near().isEmpty() ? "…" : e.near()));
        } catch (IllegalArgumentException e) {
            throw new Refusal(CORNER_TOO_ROUND.at(place, part.id()));
        }
        if (!outline.isClosed()) {
            throw new Refusal(PATH_OPEN.at(place, part.id()));
        }
        List<Fault> faults = Faults.of(outline);
        if (!faults.isEmpty()) {
            Fault first = faults.get(0);
            throw new Refusal(OUTLINE_FAULTY.at(
                    place,
                    part.id(),
                    Length.ofMm(first.place().x()),
                    Length.ofMm(first.place().y())));
        }
        return outline.area() > 0 ? outline : outline.reversed();
    }

    private void add(DrawnEdge edge) throws Refusal {
        OnPart on = on("edges", edge.id());
        double round = outlines.get(on.part()).length();
        double to = edge.to().map(Length::mm).orElse(edge.from().mm());
        mustBeOn(outlines.get(on.part()), Math.max(edge.from().mm(), to), "edges", edge.id());
        pieces.get(on.part())
                .builder()
                .edge(Edge.of(on.id(), edge.kind(), edge.from().mm(), Math.min(to, round)));
    }

    private static void mustBeOn(Curve outline, double along, String table, String id) throws Refusal {
        if (along > outline.length() + 1e-6) {
            throw new Refusal(
                    EDGE_TOO_LONG.at(table + "[" + id + "]", id, Length.ofMm(along), Length.ofMm(outline.length())));
        }
    }

    private void add(DrawnOpening opening) throws Refusal {
        OnPart on = on("openings", opening.id());
        if (opening.isHole()) {
            pieces.get(on.part())
                    .builder()
                    .hole(Hole.of(
                            on.id(),
                            opening.middle(outlines.get(on.part())),
                            opening.width().mm()));
            holes.add(on);
        } else {
            pieces.get(on.part())
                    .builder()
                    .cutOut(opening.outline(outlines.get(on.part())).path(Role.INNER_CUT));
        }
    }

    private void add(DrawnStitches stitches) throws Refusal {
        OnPart on = on("stitches", stitches.id());
        Curve outline = outlines.get(on.part());
        mustBeOn(outline, stitches.along().end().orElse(0.0), "stitches", stitches.id());
        List<Curve> found = stitches.along().lines(outline);
        if (found.size() != 1) {
            throw new Refusal(NO_ROOM.at("stitches[" + stitches.id() + "].along", stitches.id()));
        }
        Curve line = found.get(0);
        Spacing spacing = spacing(line, stitches);
        spacings.put(on, spacing);
        pieces.get(on.part())
                .builder()
                .stitchLine(StitchLine.of(
                        on.id(),
                        line.path(Role.STITCH),
                        spacing.marks().stream().map(Spot::point).toList()));
        lines.add(on);
    }

    /** Of its own pitch, or with as many holes, run by run, as a line before it has. */
    private Spacing spacing(Curve line, DrawnStitches stitches) throws Refusal {
        if (stitches.like().isEmpty()) {
            return Spacing.of(line, stitches.pitch().mm(), stitches.corners());
        }
        String place = "stitches[" + stitches.id() + "].like";
        OnPart mate = on("stitches", stitches.id(), List.of(stitches.like().get()), lines)
                .get(0);
        try {
            return spacings.get(mate).on(line, stitches.corners());
        } catch (IllegalArgumentException e) {
            throw new Refusal(RUNS_DIFFER.at(place, stitches.id(), mate.toString()));
        }
    }

    private static List<OnPart> on(String table, String id, List<String> names, Set<OnPart> there) throws Refusal {
        List<OnPart> found = new ArrayList<>();
        for (String name : names) {
            OnPart on = there.stream()
                    .filter(candidate -> candidate.toString().equals(name.strip()))
                    .findFirst()
                    .orElse(null);
            if (on == null) {
                throw new Refusal(NOT_ON_A_PART.at(
                        table + "[" + id + "]",
                        name,
                        id,
                        String.join(
                                ", ",
                                there.stream().map(OnPart::toString).sorted().toList())));
            }
            found.add(on);
        }
        return found;
    }
}
