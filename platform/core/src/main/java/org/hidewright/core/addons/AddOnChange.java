package org.hidewright.core.addons;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.addons.AddOn.State;

/**
 * What a change of the add-ons did, or would do.
 *
 * @param moved what came, went, or gave way to another version, by id
 * @param on ids of bundles that were turned on
 * @param off ids of bundles that were turned off
 * @param strange whether something came that nobody signed whom this workshop has named, so that it has to be said what a
 *     bundle may do
 */
public record AddOnChange(List<Moved> moved, List<String> on, List<String> off, boolean strange) {
    public AddOnChange {
        moved = List.copyOf(moved);
        on = List.copyOf(on);
        off = List.copyOf(off);
    }

    /** Whether all stays as it is. */
    public boolean isNothing() {
        return moved.isEmpty() && on.isEmpty() && off.isEmpty();
    }

    /** What came, went, gave way, was turned on and off, each by itself and in this order. */
    public List<Phrase> words() {
        List<Phrase> words = new ArrayList<>(moved.stream().map(Moved::words).toList());
        words.addAll(turned());
        return List.copyOf(words);
    }

    /** What was turned on and off, each by itself. */
    public List<Phrase> turned() {
        List<Phrase> words = new ArrayList<>();
        on.forEach(id -> words.add(Phrase.of("add-on-turned-on", id)));
        off.forEach(id -> words.add(Phrase.of("add-on-turned-off", id)));
        return List.copyOf(words);
    }

    /**
     * Ids of what was off before the change and is off after it: turning a bundle on or off is a choice of its own, which taking a
     * change back leaves alone.
     *
     * @param all the bundles before it
     */
    public List<String> staysOff(List<AddOn> all) {
        return all.stream()
                .filter(addOn -> addOn.state() == State.OFF && !addOn.id().isEmpty())
                .map(AddOn::id)
                .filter(id -> !on.contains(id)
                        && !off.contains(id)
                        && moved.stream()
                                .noneMatch(
                                        one -> one.id().equals(id) && one.now().isEmpty()))
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * A bundle that came, went, or gave way to another version of itself.
     *
     * @param id its symbolic name
     * @param before the version that was there; empty where none was
     * @param now the version that is there; empty where none is any more
     * @param calculators ids of the calculators it declares, as it is now, or was before it went
     * @param needed whether it came only because another needs it
     */
    public record Moved(String id, String before, String now, List<String> calculators, boolean needed) {
        /** What became of it. */
        public Phrase words() {
            if (now.isEmpty()) {
                return Phrase.of("add-on-goes", id, before);
            } else if (before.isEmpty()) {
                return Phrase.of(needed ? "add-on-comes-needed" : "add-on-comes", id, now);
            }
            return Phrase.of("add-on-gives-way", id, before, now);
        }
    }
}
