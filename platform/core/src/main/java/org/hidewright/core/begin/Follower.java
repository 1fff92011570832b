package org.hidewright.core.begin;

import org.hidewright.core.catalogue.Installed;

/**
 * A calculator that can follow from the piece without anything more being typed.
 *
 * @param calculator the calculator
 * @param in whether the project has a slip of it
 */
public record Follower(Installed calculator, boolean in) {}
