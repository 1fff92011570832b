package org.hidewright.core.jobcard;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Severity;
import org.hidewright.api.document.Table;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.bench.Spotting;
import org.junit.jupiter.api.Test;

class SlipSectionTest {
    private static Section section(String id, String... slips) {
        Document card = new JobCard(new Shop(new Sampler(), new Relay(), new Spotting()).work(slips), Shop.ENGLISH)
                .document(LocalDate.of(2026, 3, 1), List.of());
        return card.sections().stream()
                .filter(section -> section.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<List<String>> asked(Section section) {
        return section.blocks().stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .filter(table -> table.columns().get(0).title().equals("What was asked"))
                .findFirst()
                .orElseThrow()
                .rows();
    }

    private static final String STRAP = slip(
            "strap",
            "sampler",
            json("'thickness': '2 mm', 'layers': [{'id': 'a', 'thickness': '1 mm', 'note': 'mine'}],"
                    + " 'core': {'is': 'round-bar', 'round-bar': {'diameter': '6 mm'}}"));

    @Test
    void aRowSaysWhatWasTypedAndWhichOfItsValuesNobodyTyped() {
        List<List<String>> asked = asked(section("strap", STRAP));
        assertTrue(
                asked.contains(List.of("a", "Layer thickness 1\u00A0mm; Remark mine", "typed; preset: Skived no")),
                () -> asked.toString());
        assertTrue(asked.contains(List.of("", "Diameter 6\u00A0mm", "typed; preset: Turns 1")), () -> asked.toString());
    }

    @Test
    void whatStandsInAGroupIsToldOnceBesideItsLabel() {
        List<List<String>> asked = asked(
                section("edge", slip("edge", "sampler", json("'thickness': '2 mm', 'edge': {'bevel': '0.8 mm'}"))));
        List<List<String>> ofBevel = asked.stream()
                .filter(row -> row.stream().anyMatch(cell -> cell.contains("Bevel 0.8")))
                .toList();
        assertEquals(1, ofBevel.size(), ofBevel.toString());
        assertFalse(ofBevel.get(0).get(0).isEmpty(), "it stands beside the label of the group");
    }

    @Test
    void aRowShowsWhatWasTypedAndHowItWasUnderstood() {
        List<List<String>> asked = asked(section(
                "strap",
                slip(
                        "strap",
                        "sampler",
                        json("'thickness': '2 mm', 'layers': [{'id': 'a', 'thickness': '4-6 oz', 'skived': 'on'},"
                                + " {'id': 'b', 'thickness': 1.5}, {'id': 'c', 'thickness': '1.5 mm'}]"))));
        assertTrue(
                asked.contains(List.of(
                        "a",
                        "Layer thickness “4-6 oz” = 1.984\u00A0mm, the middle of 1.588 to 2.381\u00A0mm;"
                                + " Skived “on” = yes",
                        "typed")),
                asked::toString);
        assertEquals("Layer thickness “1.5” = 1.5\u00A0mm", row(asked, "b").get(1));
        assertEquals("Layer thickness 1.5\u00A0mm", row(asked, "c").get(1));
    }

    /** An example that was taken unseen is no word of the maker's, until another answer stands in its place. */
    @Test
    void whatNobodyMeasuredIsTold() {
        String begun = json("'thickness': '2 mm', 'layers': [{'id': 'a', 'thickness': '1 mm'}], 'turn': '90 deg'");
        String examples = json("'examples': {'thickness': '2 mm', 'layers': [{'id': 'a', 'thickness': '1 mm'}],"
                + " 'turn': '45 deg', 'panel': '1 x 1 in'}, 'questions'");
        Section section = section("strap", slip("strap", "sampler", begun).replaceFirst("\"questions\"", examples));
        List<List<String>> asked = asked(section);
        assertEquals("example, not measured", row(asked, "Thickness").get(2));
        assertEquals("example, not measured", row(asked, "a").get(2));
        assertEquals("typed “90 deg”", row(asked, "Turn").get(2));
        assertEquals("preset", row(asked, "Panel").get(2));
        List<String> told = section.blocks().stream()
                .filter(Checks.class::isInstance)
                .flatMap(checks -> ((Checks) checks).checks().stream())
                .map(Checks.Check::what)
                .filter(what -> what.contains("measured"))
                .toList();
        assertEquals(
                List.of(
                        "Sampler “strap”: Nobody has measured this yet; it is the example of the template: Thickness, Layers."),
                told);
    }

    private static List<String> row(List<List<String>> rows, String first) {
        return rows.stream().filter(row -> row.get(0).equals(first)).findFirst().orElseThrow();
    }

    @Test
    void aSlipThatCannotBeReadShowsHowTheRestWasUnderstood() {
        List<List<String>> asked = asked(section(
                "strap", slip("strap", "sampler", json("'thickness': '4-6 oz', 'turn': 'round', 'layers': []"))));
        assertEquals(
                "1.984\u00A0mm, the middle of 1.588 to 2.381\u00A0mm",
                row(asked, "Thickness").get(1));
        assertEquals(List.of("Turn", "–", "typed “round”"), row(asked, "Turn"));
    }

    @Test
    void whatIsPresetAsAWholeIsToldAsAWhole() {
        List<List<String>> asked = asked(section("strap", STRAP));
        List<List<String>> edge =
                asked.stream().dropWhile(row -> !row.get(0).equals("Edge")).toList();
        assertEquals(List.of("Edge", "Bevel 1\u00A0mm; Tannage of the edge Chrome", "preset"), edge.get(0));
        assertEquals("Layers", edge.get(1).get(0));
        assertEquals("typed", edge.get(1).get(2));
        assertEquals(List.of("b1", "Bend; Turn of the bend 180\u00A0deg", "preset"), edge.get(4));
    }

    @Test
    void aPresetVariantTellsWhatStandsInIt() {
        List<List<String>> core =
                asked(section("strap", slip("strap", "sampler", json("'thickness': '2 mm'")))).stream()
                        .dropWhile(row -> !row.get(0).equals("Core"))
                        .toList();
        assertEquals(List.of("Core", "Round bar", "preset"), core.get(0));
        assertEquals(List.of("", "Diameter 6\u00A0mm; Turns 1", "preset"), core.get(1));
    }

    @Test
    void aLinkIsToldByTheTitleAndLabelItComesFrom() {
        String take = slip("next", "relay", json("'take': {'from': 'strap', 'answer': 'cut'}"));
        assertEquals(
                List.of("Taken", "4\u00A0mm", "linked to Sampler “strap”, Cut length"),
                asked(section("next", STRAP, take)).get(0));
        String row =
                slip("next", "relay", json("'take': {'from': 'strap', 'answer': 'rows', 'row': 'a', 'column': 'at'}"));
        assertEquals(
                "linked to Sampler “strap”, Rows (a, Where)",
                asked(section("next", STRAP, row)).get(0).get(2));
        String column = slip("next", "relay", json("'all': {'from': 'strap', 'answer': 'rows', 'column': 'at'}"));
        assertTrue(
                asked(section("next", STRAP, column)).stream()
                        .anyMatch(line -> line.get(2).equals("linked to Sampler “strap”, Rows (Where)")),
                () -> asked(section("next", STRAP, column)).toString());
    }

    @Test
    void whatStopsTheWorkStandsFirstOnTheFirstPageThenChecksThenCautions() {
        Section overview = section(
                "overview",
                slip("thick", "sampler", json("'thickness': '6 mm'")),
                slip("bad", "sampler", json("'thickness': '2 mm', 'stamp': 'refuse'")));
        List<Severity> told = overview.blocks().stream()
                .filter(Checks.class::isInstance)
                .flatMap(block -> ((Checks) block).checks().stream())
                .map(Checks.Check::severity)
                .toList();
        assertEquals(List.of(Severity.STOP, Severity.CHECK, Severity.CAUTION), told);
    }

    /** The corners of a hide that was cut from go on for pages; the file has them. */
    @Test
    void aTextThatNobodyReadsToItsEndIsToldByItsBeginning() {
        String corners = "12.5,30 ".repeat(400).strip();
        List<List<String>> asked =
                asked(section("s", slip("s", "sampler", json("'thickness': '2 mm', 'stamp': '" + corners + "'"))));
        List<String> stamp = asked.stream()
                .filter(row -> row.get(0).equals("Stamp"))
                .findFirst()
                .orElseThrow();
        assertEquals("12.5,30 ".repeat(20) + "…", stamp.get(1));
        assertEquals("typed “" + "12.5,30 ".repeat(20) + "…”", stamp.get(2));
    }

    /** Hundreds of places with four decimals help nobody at the bench; the drawing shows them. */
    @Test
    void whatWasSearchedForIsToldByHowMuchThereIs() {
        String spots = "'spots': [{'id': 'a', 'at': '3.1234 mm', 'turned': '0.0006 deg'},"
                + " {'id': 'b', 'at': '9 mm', 'turned': '1 deg'}], 'share': '50 %'";
        List<List<String>> asked =
                asked(section("s", slip("s", "spotting", json("'line': '100 mm', 'spots': {" + spots + "}"))));
        assertEquals(
                List.of(List.of("Line", "100 mm", "typed “100 mm”"), List.of("Spots", "2 rows", "searched for")),
                asked.stream()
                        .map(row -> row.stream()
                                .map(cell -> cell.replace('\u00a0', ' '))
                                .toList())
                        .toList());
    }
}
