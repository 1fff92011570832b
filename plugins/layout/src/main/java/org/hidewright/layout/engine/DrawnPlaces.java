package org.hidewright.layout.engine;

import java.util.SplittableRandom;

/** Places for a part of a crowd that are likelier than any other, by where the other parts lie; drawn at random. */
interface DrawnPlaces {
    /** Whether there are such places for a part. */
    boolean has(int part);

    /**
     * Draws a place for a part that has some.
     *
     * @return false when none was taken
     */
    boolean draw(int part, SplittableRandom random);

    /** The part as it lies at the place that was drawn last. */
    Turned as();

    double x();

    double y();
}
