package org.hidewright.api.declaration;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Unit;

/** What a question and an answer have in common: a stable key, a label, a kind and a unit. */
public abstract sealed class Field permits Question, Answer {
    private final String key;
    private final String labelKey;
    private final Kind kind;
    private final Kind itemKind;
    private final Unit unit;
    private final List<Option> options;

    Field(String key, String labelKey, Kind kind, Kind itemKind, Unit unit, List<Option> options) {
        this.key = key;
        this.labelKey = labelKey;
        this.kind = kind;
        this.itemKind = itemKind;
        this.unit = unit;
        this.options = List.copyOf(options);
    }

    /** Key in files and commands: lower-case words joined by hyphens. */
    public final String key() {
        return key;
    }

    /** Message key of the label; with {@code .help} behind it, of the one-line help. */
    public final String labelKey() {
        return labelKey;
    }

    /** Message key of its one line of help. */
    public final String helpKey() {
        return labelKey + ".help";
    }

    /** What it holds; of a list or a table that it is one. */
    public final Kind kind() {
        return kind;
    }

    /** For {@link Kind#LIST} the kind of each item, otherwise {@link #kind()}. */
    public final Kind itemKind() {
        return itemKind;
    }

    /** The unit bare numbers take and values are shown in; empty for kinds without unit. */
    public final Optional<Unit> unit() {
        return Optional.ofNullable(unit);
    }

    /** The options of a {@link Kind#CHOICE}, otherwise empty. */
    public final List<Option> options() {
        return options;
    }

    @Override
    public final String toString() {
        return key + " (" + kind + ")";
    }
}
