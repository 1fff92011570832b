package org.hidewright.core.work;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;

/**
 * What a catalogue had when it was looked up. The catalogue may have something else by the time of the next edit; two of
 * these are equal when it has not.
 *
 * @param ids of all calculators
 * @param found by each id that slips name
 */
record Looked(List<String> ids, Map<String, Optional<Installed>> found) {
    static Looked up(Collection<String> wanted, Catalogue catalogue) {
        Map<String, Optional<Installed>> found = new HashMap<>();
        wanted.forEach(id -> found.computeIfAbsent(id, catalogue::find));
        return new Looked(catalogue.ids(), found);
    }
}
