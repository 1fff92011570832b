package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.item.Item;
import org.hidewright.api.trials.PartFault;

/** Whether the parts of an item can be cut, pricked and sewn to each other, in sentences. */
final class SoundParts {
    private SoundParts() {}

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
        return PartFault.of(item).stream().map(SoundParts::said).distinct().toList();
    }

    private static String said(PartFault fault) {
        String at = String.format(
                Locale.ROOT,
                " at %.2f, %.2f mm",
                fault.place().x(),
                fault.place().y());
        String name = "“" + fault.part().name() + "”";
        String where = name + at;
        return switch (fault.what()) {
            case CROSSES_ITSELF ->
                "the outline of " + where + " crosses itself, so that the part comes apart when it is cut."
                        + " Refuse where its measures leave no room.";
            case TURNS_BACK -> "the outline of " + where + " goes back on its own line. Leave the stretch out.";
            case TOO_SHORT -> "the outline of " + where + " has a stretch too short to cut. Leave it out.";
            case WINDOW_OUTSIDE ->
                "a window of " + where + " lies outside the part. Place it by the edges of the part.";
            case WINDOW_OVER_EDGE ->
                "a window of " + where + " runs over the edge. Refuse where there is no room for it.";
            case WINDOWS_MEET ->
                "two windows of " + where + " run into each other. Refuse where there is no room for both.";
            case HOLE_OFF ->
                "the hole " + fault.id() + at + " is not in the leather of " + name
                        + ". Place it by its edges, or refuse where there is no room for it.";
            case STITCHES_OFF ->
                "the stitches " + fault.id() + at + " leave the leather of " + name
                        + ". Run them inside its outline, or refuse where there is no room for them.";
            case FOLD_OFF ->
                "the fold " + fault.id() + at + " leaves the leather of " + name + ". End it at the edges of the part.";
            case COUNTS_DIFFER ->
                String.format(
                        "in the seam %s, %s has %s holes and %s has %s, so that they cannot be sewn hole on hole."
                                + " Space both lines by one count.",
                        fault.id(),
                        fault.lines().get(0),
                        fault.lines().get(1),
                        fault.lines().get(2),
                        fault.lines().get(3));
        };
    }
}
