package org.hidewright.documents;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.wording.Remark;

/** What of a drawing may be an outline and is not read, counted by its kind. */
public final class LeftOut {
    private final Map<String, Integer> counts = new TreeMap<>();

    public void add(String kind) {
        counts.merge(kind, 1, Integer::sum);
    }

    /** Empty where nothing is left out. */
    public Optional<Remark> told() {
        String kinds = counts.entrySet().stream()
                .map(entry -> entry.getKey() + " (" + entry.getValue() + ")")
                .collect(Collectors.joining(", "));
        return counts.isEmpty()
                ? Optional.empty()
                : Optional.of(Remark.of(OutlineNotices.ENTITIES_LEFT_OUT.with(kinds), CoreTexts.TEXTS));
    }
}
