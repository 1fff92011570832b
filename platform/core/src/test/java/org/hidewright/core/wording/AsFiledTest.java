package org.hidewright.core.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.workshop.standard.StandardTables;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days as they are written in a language become those of ISO 8601; what is no day stays to be told so. */
class AsFiledTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "de | 2026-11-29 | 2026-11-29",
                "de | 29.11.2026 | 2026-11-29",
                "de | 1. 3. 2026 | 2026-03-01",
                "de | 29. November 2026 | 2026-11-29",
                "de | 29. Nov. 2026 | 2026-11-29",
                "de | 1. Mär. 2026 | 2026-03-01",
                "de | 1. May 2026 | 2026-05-01",
                "en | 29 November 2026 | 2026-11-29",
                "en | 29 Nov 2026 | 2026-11-29",
                "en | November 29, 2026 | 2026-11-29",
                "en | Sept. 1, 2026 | 2026-09-01",
                "en | 29.11.2026 | 2026-11-29",
                "en | 11/29/2026 | 11/29/2026",
                "en | 31 Nov 2026 | 31 Nov 2026",
                "en | 1 Jux 2026 | 1 Jux 2026",
                "de | 29.11.26 | 29.11.26",
            })
    void aDayIsWrittenAsFilesHaveIt(String language, String typed, String filed) {
        Question day = StandardTables.brought().stream()
                .filter(brought -> brought.table().id().equals("measured"))
                .flatMap(brought -> brought.table().columns().stream())
                .filter(column -> column.key().equals("day"))
                .findFirst()
                .orElseThrow();
        Wording wording = new Wording(Locale.forLanguageTag(language), UnitSystem.METRIC);
        assertEquals(filed, AsFiled.of(typed, day, wording));
    }
}
