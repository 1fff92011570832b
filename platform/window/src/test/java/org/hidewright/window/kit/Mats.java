package org.hidewright.window.kit;

import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.WorkshopReader;

/** Mats for nets, what gives them their width, what they weigh, and a workshop with leather for them. */
public final class Mats {
    private static final String WORKSHOP = """
            {"workshop": 1, "currency": "EUR", "tables": {"leather": [
              {"id": "thin", "name": "Thin side", "thickness": "1.2 mm", "density": "0.60"},
              {"id": "bridle", "name": "Bridle", "thickness": "2.4 mm", "density": "0.95"},
              {"id": "sole", "name": "Sole bend", "thickness": "6 mm", "density": "1.10"}
            ]}}""";

    private Mats() {}

    public static Catalogue catalogue() {
        return Catalogue.of("org.example.nets", new DeclaredCalculator[] {
            RecordCalculator.of(new Mat()), RecordCalculator.of(new MatRoll()), RecordCalculator.of(new MatWeight())
        });
    }

    public static Stock stock(Catalogue catalogue) {
        return Stock.of(catalogue::tables)
                .with(WorkshopReader.read(WORKSHOP).workshop().orElseThrow());
    }
}
