package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WantedTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "(&(osgi.wiring.package=a.b)(version>=2.0.0)(!(version>=3.0.0))) | a.b [2.0.0,3.0.0)",
                "(&(osgi.wiring.package=a.b)(version>=2.0.0)) | a.b 2.0.0",
                "(&(version>=1.4)(osgi.wiring.package=a.b)) | a.b 1.4",
                "(osgi.wiring.package=a.b) | a.b"
            })
    void aFilterIsReadAsTheWordsOfAManifest(String filter, String words) {
        assertEquals(words, Wanted.of(Wanted.PACKAGE, filter).nameAndVersions());
    }
}
