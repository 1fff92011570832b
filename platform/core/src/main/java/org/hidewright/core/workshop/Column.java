package org.hidewright.core.workshop;

import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;

/**
 * A column of a table.
 *
 * @param question what its cells hold
 * @param texts where its label is found
 * @param bundle symbolic name of the bundle that declared it
 */
public record Column(Question question, Texts texts, String bundle) {
    public String key() {
        return question.key();
    }
}
