package org.hidewright.api.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Fault;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;

/**
 * Why a part cannot be cut, pricked or sewn to another, whatever a maker thinks of it. That outlines are closed, and parts named and
 * cut at least once, {@link Part} sees to.
 *
 * @param what which of it
 * @param part where
 * @param place on the drawing of the part
 * @param id of the hole, the stitch line, the fold or the seam; empty where it is the outline or a window
 * @param lines of a seam: the line with other holes, how many it has, the first line, and how many that has; else empty
 */
public record PartFault(What what, Part part, Point place, String id, List<Object> lines) {
    /** Nearer to an edge than this is on it. */
    private static final double ON_MM = 1e-3;
    /** Between two looks along a line whose holes are still to be spaced. */
    private static final double LOOK_MM = 2;

    /** One of the faults. */
    public enum What {
        /** The outline crosses itself, so that the part comes apart when it is cut. */
        CROSSES_ITSELF,
        /** The outline goes back on its own line. */
        TURNS_BACK,
        /** The outline has a stretch too short to cut. */
        TOO_SHORT,
        /** A window lies outside the part. */
        WINDOW_OUTSIDE,
        /** A window runs over the edge. */
        WINDOW_OVER_EDGE,
        /** Two windows run into each other. */
        WINDOWS_MEET,
        /** A hole is not in the leather with all of its rim. */
        HOLE_OFF,
        /** Stitches leave the leather. */
        STITCHES_OFF,
        /** A fold leaves the leather. */
        FOLD_OFF,
        /** Lines of one seam have unequal holes. */
        COUNTS_DIFFER
    }

    /** Everything of the kind that is wrong with an item: the parts in their order, then the seams. */
    public static List<PartFault> of(Item item) {
        List<PartFault> faults = new ArrayList<>();
        item.parts().forEach(part -> part(part, faults));
        item.seams().forEach(seam -> seam(item, seam, faults));
        return List.copyOf(faults);
    }

    private static void part(Part part, List<PartFault> faults) {
        Region leather = Region.of(
                Curve.of(part.outline()), part.cutOuts().stream().map(Curve::of).toList());
        Faults.of(leather).forEach(fault -> faults.add(at(what(fault), part, fault.place(), "")));
        for (Hole hole : part.holes()) {
            if (!leather.contains(hole.centre()) || leather.edgeDistance(hole.centre()) < hole.diameter() / 2 - ON_MM) {
                faults.add(at(What.HOLE_OFF, part, hole.centre(), hole.id()));
            }
        }
        for (StitchLine line : part.stitchLines()) {
            List<Point> looked = line.holes().isEmpty() ? along(line.line()) : line.holes();
            off(looked, leather).ifPresent(place -> faults.add(at(What.STITCHES_OFF, part, place, line.id())));
        }
        Region whole = Region.of(Curve.of(part.outline()), List.of()); // a fold may run through the slot of a buckle
        for (Fold fold : part.folds()) {
            off(along(fold.line()), whole).ifPresent(place -> faults.add(at(What.FOLD_OFF, part, place, fold.id())));
        }
    }

    private static Optional<Point> off(List<Point> looked, Region leather) {
        return looked.stream()
                .filter(place -> !leather.contains(place) && leather.edgeDistance(place) > ON_MM)
                .findFirst();
    }

    private static PartFault at(What what, Part part, Point place, String id) {
        return new PartFault(what, part, place, id, List.of());
    }

    private static What what(Fault fault) {
        return switch (fault.kind()) {
            case CROSSES_ITSELF -> What.CROSSES_ITSELF;
            case TURNS_BACK -> What.TURNS_BACK;
            case TOO_SHORT -> What.TOO_SHORT;
            case HOLE_OUTSIDE -> What.WINDOW_OUTSIDE;
            case HOLE_CROSSES_EDGE -> What.WINDOW_OVER_EDGE;
            default -> What.WINDOWS_MEET;
        };
    }

    private static List<Point> along(Path line) {
        Curve curve = Curve.of(line);
        int looks = 1 + (int) Math.ceil(curve.length() / LOOK_MM);
        return IntStream.rangeClosed(0, looks)
                .mapToObj(i -> curve.at(curve.length() * i / looks).point())
                .toList();
    }

    private static void seam(Item item, Seam seam, List<PartFault> faults) {
        OnPart first = seam.lines().get(0);
        int wanted = item.stitchLine(first).orElseThrow().holes().size();
        for (OnPart on : seam.lines()) {
            StitchLine line = item.stitchLine(on).orElseThrow();
            int holes = line.holes().size();
            if (holes != wanted) {
                faults.add(new PartFault(
                        What.COUNTS_DIFFER,
                        item.part(on.part()).orElseThrow(),
                        line.line().segments().get(0).start(),
                        seam.id(),
                        List.of(on.toString(), holes, first.toString(), wanted)));
            }
        }
    }
}
