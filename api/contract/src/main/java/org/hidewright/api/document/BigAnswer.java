package org.hidewright.api.document;

import java.util.Objects;

/** An answer to be read at arm's length. */
public final class BigAnswer implements Block {
    private final String label;
    private final String value;
    private final String unit;
    private final String fromTo;
    private final String reason;

    private BigAnswer(String label, String value, String unit, String fromTo, String reason) {
        this.label = Objects.requireNonNull(label, "label");
        this.value = Objects.requireNonNull(value, "value");
        this.unit = Objects.requireNonNull(unit, "unit");
        this.fromTo = Objects.requireNonNull(fromTo, "fromTo");
        this.reason = Objects.requireNonNull(reason, "reason");
    }

    /** @param unit empty where the value has none */
    public static BigAnswer of(String label, String value, String unit) {
        return new BigAnswer(label, value, unit, "", "");
    }

    /** The same answer with the limits it lies between, in words. */
    public BigAnswer fromTo(String text) {
        return new BigAnswer(label, value, unit, text, reason);
    }

    /** The same answer with a short reason. */
    public BigAnswer because(String text) {
        return new BigAnswer(label, value, unit, fromTo, text);
    }

    /** What it is, in words. */
    public String label() {
        return label;
    }

    /** The number as it is printed. */
    public String value() {
        return value;
    }

    /** Its unit as it is printed; empty where it has none. */
    public String unit() {
        return unit;
    }

    /** Empty where it is not known. */
    public String fromTo() {
        return fromTo;
    }

    /** Empty where none is given. */
    public String reason() {
        return reason;
    }
}
