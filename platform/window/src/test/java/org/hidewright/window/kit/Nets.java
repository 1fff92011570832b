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

/** Projects of cords and bags for nets, and what works them out. */
public final class Nets {
    public static final Wording ENGLISH = new Wording(Locale.ENGLISH, UnitSystem.METRIC);

    private Nets() {}

    public static Catalogue catalogue() {
        return Catalogue.of(
                "org.example.nets",
                new DeclaredCalculator[] {RecordCalculator.of(new Cord()), RecordCalculator.of(new Bag())});
    }

    /** Two cords, the second linked to the first, and a slip of a bundle that is not there. */
    public static ProjectFile file(Path folder) throws Exception {
        return ProjectFile.open(write(folder.resolve("nets.json"), """
                {
                  "hidewright": 1,
                  "name": "Nets",
                  "slips": [
                    {"id": "first", "calculator": "cord", "title": "First cord", "questions": {"round": "100 +- 2 mm"}},
                    {"id": "second", "calculator": "cord", "questions": {"round": {"from": "first", "answer": "length"}}},
                    {"id": "gone", "calculator": "net-weight", "from": "org.example.weights", "questions": {"mesh": "2 mm"}}
                  ]
                }
                """));
    }

    /** A cord, a bag as wide as that is long, and a cord as long as the bag is wide. */
    public static Path bag(Path folder) throws Exception {
        return write(folder.resolve("bag.json"), """
                {
                  "hidewright": 1,
                  "name": "Bag for nets",
                  "slips": [
                    {"id": "roll", "calculator": "cord", "title": "Roll", "questions": {"round": "50 mm"}},
                    {"id": "bag", "calculator": "bag", "questions": {
                      "width": {"from": "roll", "answer": "length"},
                      "eyelets": [
                        {"id": "left", "across": "10 mm", "up": "20 mm"},
                        {"id": "right", "across": "90 mm", "up": "20 mm"}
                      ]
                    }},
                    {"id": "hem", "calculator": "cord", "title": "Hem", "questions": {
                      "round": {"from": "bag", "answer": "cut-width"}, "turns": "1"
                    }}
                  ]
                }
                """);
    }

    /** A project with something of all that a slip can show: a range, links, rows, cautions, what is refused, what is not there. */
    public static Path everything(Path folder) throws Exception {
        return write(folder.resolve("everything.json"), """
                {
                  "hidewright": 1,
                  "name": "Nets, cords and bags for the boat",
                  "slips": [
                    {"id": "roll", "calculator": "cord", "title": "Roll", "questions": {
                      "round": "50 +- 2 mm", "end": {"loop": {"round": "2 in"}}, "waxed": "yes"
                    }},
                    {"id": "bag", "calculator": "bag", "questions": {
                      "width": {"from": "roll", "answer": "length"},
                      "height": "200 mm",
                      "eyelets": [
                        {"id": "left", "across": "10.5 mm", "up": "20 mm"},
                        {"id": "right", "across": "90.25 mm", "up": "20 mm"}
                      ]
                    }},
                    {"id": "hem", "calculator": "cord", "title": "Hem", "questions": {
                      "round": {"from": "bag", "answer": "cut-width"}, "turns": "1"
                    }},
                    {"id": "torn", "calculator": "cord", "title": "Torn cord", "questions": {"round": "two fathoms"}},
                    {"id": "after", "calculator": "cord", "title": "After it", "questions": {
                      "round": {"from": "torn", "answer": "length"}
                    }},
                    {"id": "gone", "calculator": "net-weight", "from": "org.example.weights", "questions": {"mesh": "2 mm"}}
                  ]
                }
                """);
    }

    public static Path write(Path file, String text) throws Exception {
        return Files.writeString(file, text);
    }
}
