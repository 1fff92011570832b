package org.hidewright.window.start;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.Slip;

/**
 * What the samples are called in another language: {@code samples_de.properties} beside their folders, by the name of the
 * file: {@code pen-roll.name}, {@code pen-roll.about}, {@code pen-roll.slip.roll}.
 */
final class SampleWords {
    private final Properties words = new Properties();

    private SampleWords() {}

    /** Those of a language; none where nobody has written them. */
    static SampleWords in(Path folder, Locale language) {
        SampleWords words = new SampleWords();
        Path file = folder.resolve("samples_" + language.getLanguage() + ".properties");
        if (Files.isRegularFile(file)) {
            try (Reader reader = Files.newBufferedReader(file)) {
                words.words.load(reader);
            } catch (IOException | IllegalArgumentException unreadable) {
                words.words.clear(); // they are shown as they were written
            }
        }
        return words;
    }

    /**
     * A sample as it is called here; as it was written where nothing is said of it.
     *
     * @param sample the name of its file, without its ending
     */
    Project said(String sample, Project project) {
        try {
            Project said = project;
            if (has(sample + ".name")) {
                said = said.named(of(sample + ".name"));
            }
            if (has(sample + ".about")) {
                said = said.describedAs(of(sample + ".about"));
            }
            for (Slip slip : project.slips()) {
                String key = sample + ".slip." + slip.id();
                if (has(key)) {
                    said = said.with(slip.titled(of(key)));
                }
            }
            return said;
        } catch (JsonTrouble e) {
            throw new IllegalStateException("a project that was read can be titled", e);
        }
    }

    private boolean has(String key) {
        return words.containsKey(key);
    }

    private String of(String key) {
        return words.getProperty(key);
    }
}
