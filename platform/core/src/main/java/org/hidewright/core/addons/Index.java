package org.hidewright.core.addons;

import java.nio.file.Path;
import java.util.List;

/**
 * An index of add-ons.
 *
 * @param file where it lies
 * @param offers what stands in it, by id, and of one id the newest first
 */
public record Index(Path file, List<Offer> offers) {
    public Index {
        offers = List.copyOf(offers);
    }
}
