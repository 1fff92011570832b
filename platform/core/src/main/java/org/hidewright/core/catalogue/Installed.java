package org.hidewright.core.catalogue;

import org.hidewright.api.declaration.DeclaredCalculator;

/**
 * A calculator that can be used.
 *
 * @param calculator the calculator
 * @param bundle symbolic name of the bundle that brought it
 */
public record Installed(DeclaredCalculator calculator, String bundle) {
    public String id() {
        return calculator.declaration().id();
    }
}
