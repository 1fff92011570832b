package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Money;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What of metal is on a piece is named by its template, so that it is counted, priced and bought. */
class TemplateHardwareIT {
    private static final Path TEMPLATES = Path.of("../../samples/templates");

    private Catalogue catalogue;

    @BeforeEach
    void find() throws Exception {
        catalogue = BundledCalculators.catalogue();
    }

    private static Project project(String text) {
        return ProjectReader.read(text).project().orElseThrow();
    }

    private WorkedProject worked(String text) {
        return new Bench(catalogue).work(project(text));
    }

    private static Item item(WorkedSlip slip) {
        return (Item) slip.answers().orElseThrow().get("item").orElseThrow();
    }

    /** As the samples of the templates stand, counted by eye in their pictures and steps. */
    @Test
    void everySampleNamesAllThatIsOfMetal() throws Exception {
        Map<String, List<String>> wanted = new LinkedHashMap<>();
        wanted.put("dog-collar", List.of("buckle", "ring", "near-rivet", "ring-rivet", "far-rivet"));
        wanted.put("waist-belt", List.of("buckle", "near-rivet", "far-rivet"));
        wanted.put("key-fob", List.of("ring", "rivet"));
        wanted.put("watch-strap", List.of("buckle", "spring-bar-1", "spring-bar-2"));
        wanted.put("lidded-pouch", List.of("closure", "tab-ring"));
        for (String none : List.of("book-cover", "card-sleeve", "flat-pouch", "folding-wallet", "pen-roll", "sheath")) {
            wanted.put(none, List.of());
        }
        for (Map.Entry<String, List<String>> one : wanted.entrySet()) {
            WorkedProject worked = worked(Files.readString(TEMPLATES.resolve(one.getKey() + ".json")));
            WorkedSlip slip = worked.slips().values().stream()
                    .filter(each -> each.slip().calculator().equals(one.getKey()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(
                    one.getValue(),
                    item(slip).fittings().stream().map(Fitting::id).toList(),
                    one.getKey());
        }
    }

    /** By hand: a buckle for 3.20, a ring for 1.10, three rivets at 0.30 are 5.20 EUR in one collar, and 10.40 in two. */
    @Test
    void buckleAndRingOfACollarAreInItsCostAndAreBought() {
        String cost = """
                {"hidewright": 1, "name": "Collars", "slips": [
                  {"id": "collar", "calculator": "dog-collar", "questions": {"neck": "400 mm", "buckle-inside": "25.5 mm"}},
                  {"id": "cost", "calculator": "item-cost", "questions": {
                    "item": {"from": "collar", "answer": "item"}, "pieces": "2", "per-hour": "30 EUR",
                    "leather-area": "22 ft²", "leather-price": "165 EUR"%s}}
                ]}""";
        WorkedSlip bare = worked(cost.formatted("")).slips().get("cost");
        assertTrue(
                bare.remarks().stream()
                        .map(Remark::toString)
                        .anyMatch(told -> told.contains("item-fittings-unpriced") && told.contains("buckle, ring")),
                bare.remarks().toString());
        WorkedSlip priced = worked(cost.formatted(
                        ", \"hardware\": [{\"id\": \"buckle\", \"fittings\": \"buckle\", \"price\": \"3.20 EUR\"},"
                                + "{\"id\": \"ring\", \"fittings\": \"ring\", \"price\": \"1.10 EUR\"},"
                                + "{\"id\": \"rivet\", \"price\": \"0.30 EUR\"}]"))
                .slips()
                .get("cost");
        double each = amount(priced, "materials-each") - amount(bare, "materials-each");
        assertEquals(5.20, each, 0.011, "rounded to a cent on either side");
        Object bought = priced.answers().orElseThrow().get("to-buy").orElseThrow();
        for (String row : List.of("buckle", "ring", "rivet")) {
            assertTrue(
                    ((List<?>) bought)
                            .stream()
                                    .anyMatch(line -> ((Values) line).toString().contains(row)),
                    row + " in " + bought);
        }
    }

    private static double amount(WorkedSlip slip, String answer) {
        return ((Money) slip.answers().orElseThrow().get(answer).orElseThrow())
                .amount()
                .doubleValue();
    }
}
