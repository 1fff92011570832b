package org.hidewright.core.addons;

import java.nio.file.Path;
import java.util.List;

/**
 * An index of add-ons.
 *
 * @param file where it lies
 * @param offers what stands in it, by id, and of one id the newest first
 * @param leftOut folders beside it that were not looked into when it was made
 */
public record Index(Path file, List<Offer> offers, List<Path> leftOut) {
    public Index {
        offers = List.copyOf(offers);
        leftOut = List.copyOf(leftOut);
    }

    /** One that was read. */
    public Index(Path file, List<Offer> offers) {
        this(file, offers, List.of());
    }
}
