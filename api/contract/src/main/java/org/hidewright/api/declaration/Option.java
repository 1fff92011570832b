package org.hidewright.api.declaration;

/** One of the keys a choice can take. */
public final class Option {
    private final String key;
    private final String labelKey;

    Option(String key, String labelKey) {
        this.key = key;
        this.labelKey = labelKey;
    }

    public String key() {
        return key;
    }

    public String labelKey() {
        return labelKey;
    }
}
