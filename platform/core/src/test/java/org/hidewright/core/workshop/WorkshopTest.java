package org.hidewright.core.workshop;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Length;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.work.StockCheck;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.standard.StandardTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkshopTest {
    private static final Tables TABLES = Tables.of(StandardTables.brought());

    private static List<String> read(String text) {
        return keys(WorkshopReader.read(json(text)).remarks());
    }

    private static List<String> checked(String tables) {
        return keys(StockCheck.of(Shop.workshop("{'workshop': 1, 'tables': {" + tables + "}}"), TABLES));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{'workshop': 1}|",
                "{'workshop': 1, 'name': 'x', 'about': 'y', 'currency': 'EUR', 'tables': {}}|",
                "§§|not-a-workshop",
                "{'workshop': 1} 5|not-a-workshop",
                "[]|not-a-workshop",
                "{'hidewright': 1}|not-a-workshop",
                "{'workshop': 1|not-json",
                "{'workshop': 2}|newer-workshop",
                "{'workshop': 'one'}|wrong-shape",
                "{'workshop': 1, 'nam': 'x'}|unknown-key-nearest",
                "{'workshop': 1, 'name': 5}|wrong-shape",
                "{'workshop': 1, 'currency': 'gold'}|no-such-currency",
                "{'workshop': 1, 'tables': []}|wrong-shape",
                "{'workshop': 1, 'tables': {'leather': {}}}|wrong-shape",
                "{'workshop': 1, 'tables': {'leather': [5]}}|wrong-shape",
                "{'workshop': 1, 'tables': {'leather': [{}]}}|workshop-row-without-id",
                "{'workshop': 1, 'tables': {'leather': [{'id': ''}]}}|workshop-row-without-id",
                "{'workshop': 1, 'tables': {'leather': [{'id': 'a'}, {'id': 'a'}]}}|row-id-twice"
            })
    void whatIsWrongWithAFileIsTold(String text, String key) {
        assertEquals(key == null ? List.of() : List.of(key), read(text));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': '4 mm'}]|",
                "'boats': [{'id': 'a'}]|table-dormant",
                "'punchs': [{'id': 'a'}]|table-dormant-nearest",
                "'punches': [{'id': 'a', 'name': 'A'}]|cell-missing",
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': null}]|cell-missing",
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': {}}]|cell-missing",
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': '4 kg'}]|reading.wrong-dimension.length",
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': '4 m'}]|above-limit",
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': '40 mm'}]|unusual",
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': '3.9-4.1 mm'}]|",
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': '4 mm', 'colour': 'red'}]|unknown-key",
                "'punches': [{'id': 'a', 'name': 'A', 'diameter': '4 mm', 'nubmer': '5'}]|unknown-key-nearest",
                "'rates': [{'id': 'a', 'name': 'A', 'per-hour': '28'}]|reading.no-unit",
                "'rates': [{'id': 'a', 'name': 'A', 'per-hour': '28', 'currency': 'EUR'}]|",
                "'pricking-irons': [{'id': 'a', 'name': 'A', 'pitch': 4, 'prongs': [2, 'six']}]|reading.not-a-number"
            })
    void whatIsWrongWithACellIsTold(String tables, String key) {
        assertEquals(key == null ? List.of() : List.of(key), checked(tables));
    }

    @Test
    void aCellIsToldByItsPlaceInTheWorkshop() {
        Workshop workshop = Shop.workshop(
                "{'workshop': 1, 'tables': {\n'punches': [\n {'id': 'a', 'name': 'A', 'diameter': '4 kg'}]}}");
        String said = said(StockCheck.of(workshop, TABLES).get(0));
        assertTrue(said.contains("| line 3, column 27, workshop “punches[a].diameter” |"), said);
    }

    @Test
    void theSampleWorkshopHasNothingWrongAndUsesEveryTable() throws Exception {
        String text = Files.readString(Path.of("../../samples/workshops/field-bench.json"));
        WorkshopReader.Result read = WorkshopReader.read(text);
        assertEquals(List.of(), read.remarks());
        Workshop workshop = read.workshop().orElseThrow();
        assertEquals(
                List.of(),
                StockCheck.of(workshop, TABLES).stream().map(Shop::said).toList());
        assertEquals(
                TABLES.ids().stream().sorted().toList(),
                workshop.tables().stream().sorted().toList());
        assertEquals("Field bench", workshop.name());
        assertEquals("EUR", workshop.currency().orElseThrow().symbol());
        assertEquals(text.strip(), workshop.text());
    }

    @Test
    void everyColumnHasItsTextsAndAnExampleWhereItMustBeFilled() {
        List<String> missing = new ArrayList<>();
        for (Table table : TABLES.all()) {
            for (String key :
                    List.of(table.declared().titleKey(), table.declared().purposeKey())) {
                if (table.declared().texts().find(key, Locale.ENGLISH).isEmpty()) {
                    missing.add(key);
                }
            }
            for (Column column : table.columns()) {
                Question question = column.question();
                List<String> keys = new ArrayList<>(List.of(question.labelKey(), question.helpKey()));
                question.options().forEach(option -> keys.add(option.labelKey()));
                keys.removeIf(key -> column.texts().find(key, Locale.ENGLISH).isPresent());
                missing.addAll(keys);
                if (!question.optional() && question.example().isEmpty()) {
                    missing.add("example of " + question.labelKey());
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    record Kerf(
            @Asked(unit = "mm", example = "0.2 mm") Length kerf,
            @Asked Optional<String> lens) {}

    @Tabulates("machines")
    static final class MoreOfMachines implements WorkshopTable<Kerf> {}

    @Tabulates("lenses")
    static final class Lenses implements WorkshopTable<Kerf> {}

    @Test
    void aBundleAddsATableAndColumnsToOneThatIsThereAndAColumnThatIsTakenIsTold() {
        List<Brought> brought = new ArrayList<>(StandardTables.brought());
        brought.add(new Brought(DeclaredTable.of(new MoreOfMachines()), "org.example.lasers"));
        brought.add(new Brought(DeclaredTable.of(new Lenses()), "org.example.lasers"));
        Tables tables = Tables.of(brought);
        Table machines = tables.find("machines").orElseThrow();
        assertEquals("org.example.lasers", machines.column("lens").orElseThrow().bundle());
        assertEquals(
                "org.hidewright.core", machines.column("kerf").orElseThrow().bundle());
        assertEquals("machines.title", machines.declared().titleKey());
        assertTrue(tables.find("lenses").isPresent());
        assertEquals(List.of("column-taken"), keys(tables.problems()));
        assertTrue(said(tables.problems().get(0))
                .startsWith(
                        "The bundle org.example.lasers adds the column “kerf” to the table “machines”, which has one"
                                + " from org.hidewright.core."));
        Tables left = tables.without("org.example.lasers");
        assertTrue(left.find("lenses").isEmpty(), "as if it were not installed");
        assertTrue(left.find("machines").orElseThrow().column("lens").isEmpty());
        assertTrue(left.find("machines").orElseThrow().column("kerf").isPresent());
    }
}
