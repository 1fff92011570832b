package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Fault;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;

/**
 * Whether the parts of an item can be cut, pricked and sewn to each other. That outlines are closed, and parts named and cut at least
 * once, {@link Part} sees to.
 */
final class SoundParts {
    /** Nearer to an edge than this is on it. */
    private static final double ON_MM = 1e-3;
    /** Between two looks along a line whose holes are still to be spaced. */
    private static final double LOOK_MM = 2;

    private final Item item;
    private final Set<String> wrong = new LinkedHashSet<>();

    private SoundParts(Item item) {
        this.item = item;
    }

    /** What is wrong with the parts of a template in any trial, each once; of what the maker draws, in the example alone. */
    static List<String> wrong(Trials trials) {
        List<Told> looked = drawnByTheMaker(trials.calculator().declaration())
                ? trials.example().stream().toList()
                : trials.all();
        Set<String> seen = new LinkedHashSet<>();
        List<String> wrong = new ArrayList<>();
        for (Told told : looked) {
            for (Object value : told.leaves().values()) {
                if (value instanceof Item item) {
                    for (String what : of(item)) {
                        if (seen.add(what.replaceAll("[0-9.]+", "#"))) {
                            wrong.add(trials.id() + ": " + what + " Asked with "
                                    + told.asked().entries() + ".");
                        }
                    }
                }
            }
        }
        return wrong;
    }

    /** Whose parts are rows of a table, or come with the question, are drawn as the maker says. */
    private static boolean drawnByTheMaker(Declaration declaration) {
        return declaration.questions().stream()
                .anyMatch(question -> question.kind() == Kind.ROWS || question.kind() == Kind.ITEM);
    }

    /** Everything that is wrong with an item, in sentences. */
    static List<String> of(Item item) {
        SoundParts sound = new SoundParts(item);
        item.parts().forEach(sound::part);
        item.seams().forEach(sound::seam);
        return new ArrayList<>(sound.wrong);
    }

    private void part(Part part) {
        Region leather = Region.of(
                Curve.of(part.outline()), part.cutOuts().stream().map(Curve::of).toList());
        Faults.of(leather).forEach(fault -> wrong.add(said(part, fault)));
        for (Hole hole : part.holes()) {
            if (!leather.contains(hole.centre()) || leather.edgeDistance(hole.centre()) < hole.diameter() / 2 - ON_MM) {
                wrong.add("the hole " + hole.id() + at(hole.centre()) + " is not in the leather of " + name(part)
                        + ". Place it by its edges, or refuse where there is no room for it.");
            }
        }
        part.stitchLines().forEach(line -> stitches(part, line, leather));
    }

    private static String said(Part part, Fault fault) {
        String where = name(part) + at(fault.place());
        return switch (fault.kind()) {
            case CROSSES_ITSELF ->
                "the outline of " + where + " crosses itself, so that the part comes apart when it is cut."
                        + " Refuse where its measures leave no room.";
            case TURNS_BACK -> "the outline of " + where + " goes back on its own line. Leave the stretch out.";
            case TOO_SHORT -> "the outline of " + where + " has a stretch too short to cut. Leave it out.";
            case HOLE_OUTSIDE -> "a window of " + where + " lies outside the part. Place it by the edges of the part.";
            case HOLE_CROSSES_EDGE ->
                "a window of " + where + " runs over the edge. Refuse where there is no room for it.";
            default -> "two windows of " + where + " run into each other. Refuse where there is no room for both.";
        };
    }

    private void stitches(Part part, StitchLine line, Region leather) {
        List<Point> looked = line.holes().isEmpty() ? along(line) : line.holes();
        looked.stream()
                .filter(place -> !leather.contains(place) && leather.edgeDistance(place) > ON_MM)
                .findFirst()
                .ifPresent(place -> wrong.add("the stitches " + line.id() + at(place) + " leave the leather of "
                        + name(part) + ". Run them inside its outline, or refuse where there is no room for them."));
    }

    private static List<Point> along(StitchLine line) {
        Curve curve = Curve.of(line.line());
        int looks = 1 + (int) Math.ceil(curve.length() / LOOK_MM);
        return IntStream.rangeClosed(0, looks)
                .mapToObj(i -> curve.at(curve.length() * i / looks).point())
                .toList();
    }

    private void seam(Seam seam) {
        OnPart first = seam.lines().get(0);
        int wanted = item.stitchLine(first).orElseThrow().holes().size();
        for (OnPart on : seam.lines()) {
            int holes = item.stitchLine(on).orElseThrow().holes().size();
            if (holes != wanted) {
                wrong.add("in the seam " + seam.id() + ", " + on + " has " + holes + " holes and " + first + " has "
                        + wanted + ", so that they cannot be sewn hole on hole. Space both lines by one count.");
            }
        }
    }

    private static String name(Part part) {
        return "“" + part.name() + "”";
    }

    private static String at(Point place) {
        return String.format(Locale.ROOT, " at %.2f, %.2f mm", place.x(), place.y());
    }
}
