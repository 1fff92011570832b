package org.hidewright.window.kit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Bringer;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.Tables.BroughtRow;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.core.workshop.WorkshopReader;
import org.hidewright.core.workshop.standard.StandardTables;

/** A workshop for the nets, a project that takes from it, and a catalogue with a row that a bundle brings. */
public final class Bench {
    private static final Catalogue NETS = Nets.catalogue();

    private Bench() {}

    /** Leather that a bag takes its room from, and two punches. */
    public static Path workshop(Path folder) throws Exception {
        return Nets.write(folder.resolve("bench.json"), """
                {
                  "workshop": 1,
                  "name": "Net loft",
                  "currency": "EUR",
                  "tables": {
                    "leather": [
                      {"id": "side",   "name": "Side", "tannage": "vegetable", "thickness": "2.2-2.6 mm", "odd": 1}
                    ],
                    "punches": [
                      {"id": "two", "name": "Two", "diameter": "20 mm"},
                      {"id": "three", "name": "Three", "diameter": "30 mm"}
                    ]
                  }
                }
                """);
    }

    /** A cord round a punch, with a copy of its row. */
    public static Path project(Path folder) throws Exception {
        return Nets.write(folder.resolve("cords.json"), """
                {
                  "hidewright": 1,
                  "name": "Cords",
                  "workshop": {"tables": {"punches": [{"id": "two", "name": "Two", "diameter": "20 mm"}]}},
                  "slips": [
                    {"id": "roll", "calculator": "cord", "title": "Roll", "questions": {
                      "round": {"workshop": "punches", "row": "two", "column": "diameter"}
                    }}
                  ]
                }
                """);
    }

    /** The nets, and a punch that a bundle brings. */
    public static Catalogue catalogue() {
        Workshop rows = WorkshopReader.read("""
                {"workshop": 1, "tables": {"punches": [{"id": "five", "name": "Five", "diameter": "5 mm"}]}}
                """).workshop().orElseThrow();
        List<BroughtRow> brought = new ArrayList<>();
        rows.rows("punches")
                .forEach(row -> brought.add(new BroughtRow(
                        row, Optional.empty(), new Bringer("org.example.punches", "measured by the smith"))));
        Tables tables = Tables.of(StandardTables.brought())
                .and(List.of(new Brought(DeclaredTable.of(new Skins()), "org.example.skins")))
                .with(brought);
        return new Catalogue() {
            @Override
            public Optional<Installed> find(String id) {
                return NETS.find(id);
            }

            @Override
            public List<String> ids() {
                return NETS.ids();
            }

            @Override
            public Tables tables() {
                return tables;
            }

            @Override
            public List<Contributor> contributors() {
                return NETS.contributors();
            }

            @Override
            public List<Remark> problems() {
                return List.of();
            }
        };
    }
}
