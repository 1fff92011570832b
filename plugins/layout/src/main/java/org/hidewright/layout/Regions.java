package org.hidewright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hidewright.layout.CuttingLayout.Hide;
import org.hidewright.layout.CuttingLayout.SheetOfLeather;
import org.hidewright.layout.task.Zone;

/** The regions that are drawn on hides, each name a kind of zone beside weak and marked places. */
final class Regions {
    private static final int WEAK = 0;
    private static final int MARKED = 1;
    private static final int FIRST = 2;
    /** As many names as there are kinds of zones left. */
    static final int MOST = Zone.MOST + 1 - FIRST;

    private final List<String> names;

    Regions(List<SheetOfLeather> sheets) {
        names = new ArrayList<>(new TreeSet<>(sheets.stream()
                .filter(Hide.class::isInstance)
                .flatMap(sheet -> ((Hide) sheet).flaws().stream().flatMap(List::stream))
                .flatMap(flaw -> Flaw.read(flaw).stream())
                .map(Flaw::name)
                .filter(name -> !name.isEmpty())
                .toList()));
    }

    List<String> names() {
        return names;
    }

    /** The kind of a place that is no hole. */
    int kind(Flaw flaw) {
        return switch (flaw.damage()) {
            case WEAK -> WEAK;
            case MARKED -> MARKED;
            default -> FIRST + names.indexOf(flaw.name());
        };
    }

    /** What a part avoids by the leather it takes. */
    static long avoids(Leather leather) {
        return switch (leather) {
            case ANY -> 0;
            case SOUND -> 1L << WEAK;
            case FAULTLESS -> 1L << WEAK | 1L << MARKED;
        };
    }

    /** What a part avoids that may never lie on some regions; those that nobody has drawn are passed over. */
    long avoids(Stream<String> regions) {
        return regions.filter(names::contains)
                .mapToLong(name -> 1L << FIRST + names.indexOf(name))
                .reduce(0, (one, other) -> one | other);
    }
}
