package org.hidewright.core.brought;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.Tables.BroughtRow;
import org.hidewright.core.workshop.standard.StandardTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The text of tables that a bundle carries: what it brings, and what becomes of one that is wrong or hostile. */
class TablesReaderTest {
    private static final String TEXT = """
            {'workshop': 1, 'name': 'Slides', 'source': 'Made up for a test', 'currency': 'EUR',
             'columns': {
              'hardware': {'columns': [
               {'key': 'slide-height', 'kind': 'length', 'unit': 'mm', 'min': '5 mm', 'max': '80 mm', 'example': '18 mm',
                'label': 'Slide height', 'help': 'From bar to bar.'}]},
              'cords': {'title': 'Cords', 'purpose': 'Cords by their thickness', 'columns': [
               {'key': 'thickness', 'kind': 'length', 'unit': 'mm', 'label': 'Thickness', 'help': 'Gauged.'}]}},
             'tables': {
              'hardware': [
               {'id': 'slide-20', 'name': 'Slide 20 mm', 'kind': 'other', 'inside-width': '20 mm', 'slide-height': '18 mm'}],
              'cords': [{'id': 'cord-3', 'thickness': '3 mm'}]}}
            """;

    private record Looked(Tables tables, List<BroughtRow> rows, List<Remark> remarks) {}

    /** As the catalogue does it. */
    private static Looked look(String text) {
        TablesReader.Result read = TablesReader.read(json(text), "org.example.slides");
        List<Remark> remarks = new ArrayList<>(read.remarks());
        List<Brought> brought = new ArrayList<>(StandardTables.brought());
        read.tables().ifPresent(tables -> brought.addAll(tables.columns()));
        Tables tables = Tables.of(brought);
        List<BroughtRow> rows = new ArrayList<>();
        read.tables().ifPresent(sound -> {
            BroughtCheck.Result result = BroughtCheck.of(sound, tables);
            rows.addAll(result.rows());
            remarks.addAll(result.remarks());
        });
        return new Looked(tables, rows, remarks);
    }

    private static List<String> rows(Looked looked) {
        return looked.rows().stream().map(row -> row.row().toString()).toList();
    }

    @Test
    void aTextBringsColumnsATableAndRows() {
        Looked looked = look(TEXT);
        assertEquals(List.of(), looked.remarks());
        assertEquals(List.of("hardware[slide-20]", "cords[cord-3]"), rows(looked));
        assertEquals("Made up for a test", looked.rows().get(0).from().source());
        assertEquals("org.example.slides", looked.rows().get(0).from().bundle());
        assertEquals("EUR", looked.rows().get(0).currency().orElseThrow().symbol());
        Table hardware = looked.tables().find("hardware").orElseThrow();
        Column height = hardware.column("slide-height").orElseThrow();
        Question question = height.question();
        assertTrue(question.optional(), "rows of others do not have it");
        assertEquals(80, question.max().orElseThrow(), 1e-12);
        assertEquals("org.example.slides", height.bundle());
        assertEquals(
                "From bar to bar.",
                height.texts().find(question.helpKey(), Locale.GERMAN).orElseThrow());
        Table cords = looked.tables().find("cords").orElseThrow();
        assertEquals(
                "Cords",
                cords.declared()
                        .texts()
                        .find(cords.declared().titleKey(), Locale.ENGLISH)
                        .orElseThrow());
        assertEquals(List.of("hardware", "cords"), TableFiles.tables(json(TEXT)));
    }

    @ParameterizedTest(name = "{0} → {1}: {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                // the head: nothing is brought
                "'source': 'Made up for a test', |§§|template-missing|",
                "'source': 'Made up for a test'|'source': 5|wrong-shape|",
                "'columns': {\\n  'hardware'|'columns': {\\n  'Hard ware'|template-declaration|",
                "'columns': [\\n   {'key': 'slide-height'|'columns': [5, {'key': 'slide-height'|wrong-shape|",
                "'key': 'slide-height'|'key': 'Slide Height'|brought-bad-name|",
                "'key': 'slide-height'|'key': 'from'|template-declaration|",
                "'kind': 'length', 'unit': 'mm', 'min'|'kind': 'length', 'min'|template-declaration|",
                "'kind': 'length', 'unit': 'mm', 'min'|'kind': 'lenght', 'unit': 'mm', 'min'|template-declaration|",
                "'label': 'Slide height', |§§|template-missing|",
                "'max': '80 mm'|'max': '4 mm'|template-declaration|",
                "{'workshop': 1|{'workshops': 1|not-a-workshop|",
                "'source': 'Made up for a test',|'source': 'Made, up|not-json|",
                // a row: it is left out
                "'inside-width': '20 mm'|'inside-width': '20'|brought-no-unit|cords[cord-3]",
                "'inside-width': '20 mm'|'inside-width': 20|brought-no-unit|cords[cord-3]",
                "'inside-width': '20 mm'|'inside-width': '20 kg'|reading.wrong-dimension.length|cords[cord-3]",
                "'inside-width': '20 mm'|'inside-width': '20 m'|above-limit|cords[cord-3]",
                "'inside-width': '20 mm'|'inside-width': ['20 mm']|wrong-shape|cords[cord-3]",
                "'inside-width': '20 mm'|'inside-width': {'mm': 20}|wrong-shape|cords[cord-3]",
                "'kind': 'other', 'ins|'kind': 'slide', 'ins|no-such-option|cords[cord-3]",
                "'id': 'slide-20'|'id': 'Slide 20'|brought-bad-name|cords[cord-3]",
                "'id': 'slide-20'|'id': ''|workshop-row-without-id|cords[cord-3]",
                "'id': 'cord-3'|'id': '../cord'|brought-bad-name|hardware[slide-20]",
                "[{'id': 'cord-3', |[{'id': 'cord-3'}, {'id': 'cord-3', |row-id-twice|hardware[slide-20] cords[cord-3]",
                // told, and brought all the same
                "'name': 'Slides'|'nmae': 'Slides'|unknown-key-nearest|hardware[slide-20] cords[cord-3]",
                "'inside-width': '20|'insidewidth': '20|unknown-key-nearest|hardware[slide-20] cords[cord-3]",
                "'title': 'Cords', |§§|brought-no-title|hardware[slide-20] cords[cord-3]",
                "'tables': {\\n  'hardware'|'tables': {\\n  'hardwares'|table-dormant-nearest|cords[cord-3]",
            })
    void whatIsWrongIsToldWithItsPlaceAndTheRestIsBrought(String was, String now, String key, String rows) {
        assertTrue(TEXT.contains(was.replace("\\n", "\n")), was);
        Looked looked = look(TEXT.replace(was.replace("\\n", "\n"), now.replace("\\n", "\n")));
        assertTrue(keys(looked.remarks()).contains(key), keys(looked.remarks()) + "");
        assertEquals(rows == null ? "" : rows, String.join(" ", rows(looked)));
        for (Remark remark : looked.remarks()) {
            String said = said(remark);
            assertTrue(!said.contains("«") && !said.contains("{0}") && !said.contains("{1}"), said);
            boolean placed = remark.place() != null || remark.key().endsWith("brought-no-title");
            assertTrue(placed, "where? " + said);
        }
    }

    @Test
    void moreRowsThanAreWorthLookingAtAreRefused() {
        String rows = IntStream.rangeClosed(0, TablesReader.MOST_ROWS)
                .mapToObj(i -> "{'id': 'r" + i + "', 'thickness': '3 mm'}")
                .collect(Collectors.joining(", "));
        Looked looked = look(TEXT.replace("{'id': 'cord-3', 'thickness': '3 mm'}", rows));
        assertEquals(List.of("brought-too-many"), keys(looked.remarks()));
        assertEquals(List.of(), rows(looked));
        Looked fewer = look(TEXT.replace(
                "{'id': 'cord-3', 'thickness': '3 mm'}", rows.substring(rows.indexOf('}', rows.indexOf('}') + 1) + 2)));
        assertEquals(
                TablesReader.MOST_ROWS,
                fewer.rows().size(),
                "one of another table, and the others: " + keys(fewer.remarks()));
    }

    /** Whatever stands in the text, nothing is thrown, and what is brought can be read. */
    @Test
    void aSpoiltTextBreaksNothing() {
        Random random = new Random(7);
        String signs = "{}[]\",:'0x\\\n\u0000é𝄞";
        for (int i = 0; i < 800; i++) {
            StringBuilder spoilt = new StringBuilder(json(TEXT));
            for (int change = 0; change <= random.nextInt(4); change++) {
                int at = random.nextInt(spoilt.length());
                int until = Math.min(spoilt.length(), at + random.nextInt(12));
                int sign = random.nextInt(signs.length());
                spoilt.replace(at, until, random.nextBoolean() ? "" : signs.substring(sign, sign + 1));
            }
            Looked looked = look(spoilt.toString());
            looked.rows().forEach(row -> assertTrue(row.row().text().startsWith("{"), spoilt::toString));
        }
    }
}
