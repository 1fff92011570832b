package org.hidewright.core.wording;

import java.util.List;
import java.util.stream.Collectors;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Texts;

/**
 * Several questions or answers named in a sentence.
 *
 * @param texts those of the bundle the fields are of
 */
public record AllCalled(Texts texts, List<? extends Field> fields) implements InWords {
    @Override
    public String in(Wording wording) {
        return fields.stream()
                .map(field -> wording.called(new Called(texts, field)))
                .collect(Collectors.joining(", "));
    }
}
