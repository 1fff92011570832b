package org.hidewright.core.catalogue;

import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;

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

    /** Whether it works on an item, which another slip of the project answers: alone it cannot be worked out. */
    public boolean takesItem() {
        return calculator.declaration().questions().stream().anyMatch(Installed::isItem);
    }

    /** Whether a question must be linked to an item. */
    public static boolean isItem(Question question) {
        return question.kind() == Kind.ITEM && !question.optional();
    }
}
