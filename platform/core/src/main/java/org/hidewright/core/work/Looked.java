package org.hidewright.core.work;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.catalogue.Away;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.workshop.Shelf;

/**
 * What there was to work with when it was looked up: the catalogue, or the workshop, may have something else by the time of
 * the next edit.
 *
 * @param ids of all calculators
 * @param found by each id that slips name
 * @param away bundles that are here and bring nothing now, by the ids of theirs that slips name
 * @param shelf the rows of the workshop within reach
 */
record Looked(List<String> ids, Map<String, Optional<Installed>> found, Map<String, Away> away, Shelf shelf) {
    /** Whether everything looked up now would be the same. */
    boolean sameAs(Looked other) {
        return ids.equals(other.ids)
                && found.equals(other.found)
                && away.equals(other.away)
                && shelf.sameAs(other.shelf);
    }

    static Looked up(Collection<String> wanted, Catalogue catalogue, Shelf shelf) {
        Map<String, Optional<Installed>> found = new HashMap<>();
        wanted.forEach(id -> found.computeIfAbsent(id, catalogue::find));
        List<String> ids = catalogue.ids();
        Map<String, Away> away = new HashMap<>();
        wanted.stream()
                .filter(id -> !ids.contains(id))
                .forEach(id -> catalogue.away(id).ifPresent(bundle -> away.put(id, bundle)));
        return new Looked(ids, found, away, shelf);
    }
}
