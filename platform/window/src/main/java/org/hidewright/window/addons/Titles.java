package org.hidewright.window.addons;

import java.util.function.UnaryOperator;

/**
 * What things are called to which bundles have an id; the id itself where nobody is there to say so.
 *
 * @param calculators of an id
 * @param tables of the workshop, of an id
 */
public record Titles(UnaryOperator<String> calculators, UnaryOperator<String> tables) {}
