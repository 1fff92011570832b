package org.hidewright.api.declaration;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.measure.Unit;

/** One declared answer. */
public final class Answer extends Field {
    private final boolean keepUnit;
    private final double step;
    private final Rounding rounding;
    private final String by;
    private final boolean lead;
    private final String stock;
    private final boolean asFile;
    private final List<Answer> columns;

    Answer(
            String key,
            String labelKey,
            Kind kind,
            Kind itemKind,
            Unit unit,
            List<Option> options,
            boolean keepUnit,
            double step,
            Rounding rounding,
            String by,
            boolean lead,
            String stock,
            boolean asFile,
            List<Answer> columns) {
        super(key, labelKey, kind, itemKind, unit, options);
        this.keepUnit = keepUnit;
        this.step = step;
        this.rounding = rounding;
        this.by = by;
        this.lead = lead;
        this.stock = stock;
        this.asFile = asFile;
        this.columns = List.copyOf(columns);
    }

    /** Whether it is shown in its declared unit also where the maker works in another system. */
    public boolean keepUnit() {
        return keepUnit;
    }

    /** The step it is shown to in base units; empty where none was declared. */
    public OptionalDouble step() {
        return step > 0 ? OptionalDouble.of(step) : OptionalDouble.empty();
    }

    /** In which direction it is rounded where it is shown. */
    public Rounding rounding() {
        return rounding;
    }

    /** Key of the formula or source it comes from. */
    public Optional<String> by() {
        return by.isEmpty() ? Optional.empty() : Optional.of(by);
    }

    /** Whether it is an answer the maker looks for first. */
    public boolean lead() {
        return lead;
    }

    /** The table of the workshop that its rows can be put away into; empty where there is none. */
    public Optional<String> stock() {
        return stock.isEmpty() ? Optional.empty() : Optional.of(stock);
    }

    /** Whether it is also written as files for machines, in true size. */
    public boolean asFile() {
        return asFile;
    }

    /** The columns of {@link Kind#ROWS}, the parts of a {@link Kind#GROUP}. */
    public List<Answer> columns() {
        return columns;
    }
}
