package org.hidewright.core.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.function.Executable;

/** What the tests of the store share: projects by name, what lies in a folder, what a maker is told. */
final class Saved {
    private static final Wording WORDING = new Wording(Locale.ENGLISH, UnitSystem.METRIC);

    private Saved() {}

    static String text(String name) {
        return "{\"hidewright\": 1, \"name\": \"" + name + "\"}\n";
    }

    static Project project(String name) {
        return ProjectReader.read(text(name)).project().orElseThrow();
    }

    static Path write(Path file, String text) throws IOException {
        return Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Names in a folder, hidden ones too. */
    static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** What is told first when something fails, with its key before it. */
    static String told(Executable failing) {
        return told(
                Assertions.assertThrows(FileTrouble.class, failing).remarks().get(0));
    }

    static String told(Remark remark) {
        return remark.key().replace("notice.", "") + ": " + WORDING.what(remark) + " " + WORDING.why(remark) + " "
                + WORDING.next(remark);
    }
}
