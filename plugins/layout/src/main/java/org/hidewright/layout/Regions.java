package org.hidewright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.geometry.Curve;
import org.hidewright.layout.CuttingLayout.Cut;
import org.hidewright.layout.CuttingLayout.Hide;
import org.hidewright.layout.CuttingLayout.PartRule;
import org.hidewright.layout.task.Zone;

/**
 * The regions that are drawn on hides, each name a kind of zone beside weak and marked places. What lies outside regions on which alone
 * some part may lie is a kind too.
 */
final class Regions {
    private static final int WEAK = 0;
    private static final int MARKED = 1;
    private static final int FIRST = 2;
    /** As many names as there are kinds of zones left. */
    static final int MOST = Zone.MOST + 1 - FIRST;

    private final List<String> names;

    /** The regions on which alone some part may lie, those of each rule that has others. */
    private final List<Set<String>> alone;

    Regions(Cut cut) {
        names = new ArrayList<>(new TreeSet<>(cut.sheets().stream()
                .filter(Hide.class::isInstance)
                .flatMap(sheet -> ((Hide) sheet).flaws().stream().flatMap(List::stream))
                .flatMap(flaw -> Flaw.read(flaw).stream())
                .map(Flaw::name)
                .filter(name -> !name.isEmpty())
                .toList()));
        alone = cut.rules().orElse(List.of()).stream()
                .map(Regions::alone)
                .filter(only -> !only.isEmpty())
                .distinct()
                .toList();
    }

    private static Set<String> alone(PartRule rule) {
        return named(rule.onlyOn()).collect(Collectors.toSet());
    }

    /** Names with semicolons between them. */
    static Stream<String> named(Optional<String> text) {
        return text.stream()
                .flatMap(names -> Stream.of(names.split(";")))
                .map(String::strip)
                .filter(name -> !name.isEmpty());
    }

    List<String> names() {
        return names;
    }

    /** How many kinds of zones there are beside weak and marked places. */
    int kinds() {
        return names.size() + alone.size();
    }

    /** The kind of a place that is no hole. */
    int kind(Flaw flaw) {
        return switch (flaw.damage()) {
            case WEAK -> WEAK;
            case MARKED -> MARKED;
            default -> FIRST + names.indexOf(flaw.name());
        };
    }

    /** What of a sheet lies outside the regions on which alone some part may lie, as a search and the check see it. */
    List<Zone> elsewhere(Curve sheet, List<DrawnFlaw> flaws, Frame frame) {
        List<Zone> zones = new ArrayList<>();
        for (int only = 0; only < alone.size(); only++) {
            Set<String> there = alone.get(only);
            List<Curve> regions = flaws.stream()
                    .filter(drawn -> there.contains(drawn.flaw().name()))
                    .map(DrawnFlaw::outline)
                    .toList();
            for (Curve piece : Elsewhere.than(regions, sheet)) {
                zones.add(new Zone(frame.seen(Flattened.of(piece)), elsewhere(only)));
            }
        }
        return zones;
    }

    private int elsewhere(int only) {
        return FIRST + names.size() + only;
    }

    /** What a part avoids by the leather it takes. */
    static long avoids(Leather leather) {
        return switch (leather) {
            case ANY -> 0;
            case SOUND -> 1L << WEAK;
            case FAULTLESS -> 1L << WEAK | 1L << MARKED;
        };
    }

    /** What a part avoids by the regions of its rule; never one that nobody has drawn. */
    long avoids(PartRule rule) {
        long avoids = named(rule.neverOn())
                .filter(names::contains)
                .mapToLong(name -> 1L << FIRST + names.indexOf(name))
                .reduce(0, (one, other) -> one | other);
        int only = alone.indexOf(alone(rule));
        return only < 0 ? avoids : avoids | 1L << elsewhere(only);
    }
}
