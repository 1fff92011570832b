package org.hidewright.api.declaration;

/** One of the keys a choice can take. */
public final class Option {
    private final String key;
    private final String labelKey;

    Option(String key, String labelKey) {
        this.key = key;
        this.labelKey = labelKey;
    }

    /** What is written in project files. */
    public String key() {
        return key;
    }

    /** Message key of its label. */
    public String labelKey() {
        return labelKey;
    }
}
