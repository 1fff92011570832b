package org.hidewright.api.declaration;

import java.util.List;

/** One of several variants and the questions asked only when it is chosen. */
public final class Variant {
    private final String key;
    private final String labelKey;
    private final List<Question> questions;

    Variant(String key, String labelKey, List<Question> questions) {
        this.key = key;
        this.labelKey = labelKey;
        this.questions = List.copyOf(questions);
    }

    /** What is written in project files. */
    public String key() {
        return key;
    }

    /** Message key of its label. */
    public String labelKey() {
        return labelKey;
    }

    /** What is asked where it is chosen. */
    public List<Question> questions() {
        return questions;
    }
}
