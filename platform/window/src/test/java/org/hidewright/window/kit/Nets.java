package org.hidewright.window.kit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;

/** A project of two cords, the second linked to the first, and what works it out. */
public final class Nets {
    public static final Wording ENGLISH = new Wording(Locale.ENGLISH, UnitSystem.METRIC);

    private Nets() {}

    public static Catalogue catalogue() {
        return Catalogue.of("org.example.nets", new DeclaredCalculator[] {RecordCalculator.of(new Cord())});
    }

    public static ProjectFile file(Path folder) throws Exception {
        Path file = folder.resolve("nets.json");
        Files.writeString(file, """
                {
                  "hidewright": 1,
                  "name": "Nets",
                  "slips": [
                    {"id": "first", "calculator": "cord", "title": "First cord", "questions": {"round": "100 +- 2 mm"}},
                    {"id": "second", "calculator": "cord", "questions": {"round": {"from": "first", "answer": "length"}}},
                    {"id": "gone", "calculator": "net-weight", "from": "org.example.weights", "questions": {"mesh": "2 mm"}}
                  ]
                }
                """);
        return ProjectFile.open(file);
    }
}
