package org.hidewright.window.addons;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.TakenId;
import org.hidewright.window.words.WindowTexts;

/**
 * A bundle as it is shown.
 *
 * @param id by which it is turned on and off; the name of its file where it has none
 * @param name what its author calls it
 * @param maker who made it
 * @param calculators ids of the calculators it brings
 * @param brings what it brings, by what it is called
 * @param state how it stands, in a sentence
 * @param off whether it is turned off
 * @param removable whether it can be taken away
 */
public record BundleLine(
        String id,
        String name,
        String maker,
        List<String> calculators,
        String brings,
        String state,
        boolean off,
        boolean removable) {
    /**
     * The line of a bundle.
     *
     * @param all that are installed, by whose names is told what they share
     * @param titles of what it brings
     * @param taken ids that several bundles bring
     */
    public static BundleLine of(AddOn addOn, List<AddOn> all, Titles titles, List<TakenId> taken, WindowTexts texts) {
        List<String> brings = new ArrayList<>(
                addOn.calculators().stream().map(titles.calculators()).toList());
        addOn.tables()
                .forEach(table ->
                        brings.add(texts.text("bundles.table", titles.tables().apply(table))));
        boolean ours = addOn.origin() == Origin.PROGRAM;
        return new BundleLine(
                addOn.id().isEmpty() ? addOn.name() : addOn.id(),
                (addOn.name(texts.language()) + " " + addOn.version()).strip(),
                addOn.maker().isEmpty() && ours ? texts.text("bundles.program") : addOn.maker(),
                addOn.calculators(),
                brings.isEmpty() ? texts.text("bundles.nothing") : String.join(", ", brings),
                state(addOn, texts) + rights(addOn, texts) + leftOut(addOn, all, taken, texts),
                addOn.state() == State.OFF || addOn.state() == State.WAITING,
                !ours);
    }

    /** In the table of bundles. */
    BundleTable.Line line() {
        return new BundleTable.Line(id, name, maker, brings, state, off);
    }

    private static String leftOut(AddOn addOn, List<AddOn> all, List<TakenId> taken, WindowTexts texts) {
        return taken.stream()
                .filter(one -> one.left().equals(addOn.id()))
                .map(one -> " " + texts.text("bundles.id-taken.help", one.id(), name(one.keeps(), all, texts)))
                .collect(Collectors.joining());
    }

    /** What a bundle is called; its id where it is not among them. */
    static String name(String id, List<AddOn> all, WindowTexts texts) {
        return all.stream()
                .filter(one -> one.id().equals(id))
                .map(one -> one.name(texts.language()))
                .findFirst()
                .orElse(id);
    }

    private static String state(AddOn addOn, WindowTexts texts) {
        if (addOn.state() == State.FAILED) {
            return addOn.why();
        }
        String state = addOn.state().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return texts.text(
                "bundles.state-" + state + (isData(addOn) && addOn.state() == State.WAITING ? "-texts.help" : ".help"));
    }

    /** Above all lines it is said that a bundle is code with full rights; of one that is none, that it is none. */
    private static String rights(AddOn addOn, WindowTexts texts) {
        return isData(addOn) ? " " + texts.text("bundles.texts-alone.help") : "";
    }

    private static boolean isData(AddOn addOn) {
        return addOn.origin() == Origin.MAKER && !addOn.code() && addOn.state() != State.FAILED;
    }
}
