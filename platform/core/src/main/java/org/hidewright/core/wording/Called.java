package org.hidewright.core.wording;

import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Texts;

/**
 * A question or answer named in a sentence: by its label, as the maker reads it beside the field, or by its key where it
 * has no label. Where the key is to be found in a file, the place of the remark has it.
 *
 * @param texts those of the bundle the field is of
 */
public record Called(Texts texts, Field field) {}
