package net.example.fieldkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.RecordCalculator;
import org.junit.jupiter.api.Test;

/** What the host expects of every calculator: a sound declaration, and a text for each of its keys. */
class JarSleeveContractTest {
    /** Says what is wrong with the records, the presets and examples, or a {@code by} that names nothing. */
    private final RecordCalculator declared = RecordCalculator.of(new JarSleeve());

    @Test
    void everyKeyHasItsText() {
        List<String> missing = keys(declared.declaration());
        missing.removeIf(key -> declared.texts().find(key, Locale.ENGLISH).isPresent());
        assertEquals(List.of(), missing);
    }

    private static List<String> keys(Declaration declaration) {
        List<String> keys = new ArrayList<>(List.of(declaration.titleKey(), declaration.purposeKey()));
        declaration.questions().forEach(question -> keys.add(question.labelKey()));
        declaration.answers().forEach(answer -> keys.add(answer.labelKey()));
        declaration.formulas().forEach(formula -> {
            keys.add("formula." + formula.key());
            keys.add("source." + formula.source().key());
        });
        declaration.sources().forEach(source -> keys.add("source." + source.key()));
        declaration
                .notices()
                .forEach(kind ->
                        List.of("what", "why", "next").forEach(part -> keys.add("notice." + kind.key() + "." + part)));
        return keys;
    }
}
