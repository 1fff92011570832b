package org.hidewright.core.range;

/**
 * A function of several inputs that may refuse.
 *
 * @param <R> what tells why it was refused
 */
@FunctionalInterface
public interface Model<R> {
    /** Tries it with one value for each input, in their order. Same inputs, same trial. */
    Trial<R> at(double[] inputs);
}
