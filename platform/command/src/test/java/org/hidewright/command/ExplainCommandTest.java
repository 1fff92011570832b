package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hidewright.command.kit.Strap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExplainCommandTest {
    private final Terminal terminal = new Terminal(new Strap());

    private JsonNode explained() throws Exception {
        assertEquals(0, terminal.run("explain", "kit-strap", "--json", "--language=en"), terminal.err);
        return new ObjectMapper().readTree(terminal.out);
    }

    private static JsonSchemaFactory schemas() {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    }

    @Test
    void theSchemaIsOneOfTheDraftItNames() throws Exception {
        JsonNode schema = explained().get("schema");
        assertEquals(
                "https://json-schema.org/draft/2020-12/schema",
                schema.get("$schema").asText());
        JsonSchema draft =
                schemas().getSchema(SchemaLocation.of(schema.get("$schema").asText()));
        assertEquals(Set.of(), draft.validate(schema));
    }

    @Test
    void theExampleIsAcceptedByTheSchemaAndRuns() throws Exception {
        JsonNode tree = explained();
        assertEquals(
                Set.of(),
                schemas().getSchema(tree.get("schema")).validate(tree.get("example")),
                tree.get("example").toString());
        List<String> arguments = new ArrayList<>(List.of("work", "kit-strap", "--json", "--language=en"));
        tree.get("example")
                .properties()
                .forEach(entry -> arguments.add(entry.getKey() + "="
                        + (entry.getValue().isTextual()
                                ? entry.getValue().asText()
                                : entry.getValue().toString())));
        assertEquals(0, terminal.run(arguments.toArray(String[]::new)), terminal.out + terminal.err);
        assertEquals(0, new ObjectMapper().readTree(terminal.out).get("notices").size(), terminal.out);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{'thickness': '8 oz', 'core': 'round-bar', 'sections': []}#",
                "{'thickness': {'from': 'a', 'answer': 'b'}, 'core': {'is': 'flat-ring', 'flat-ring': {'inside': 5}}, 'sections': []}#",
                "{'thickness': 2, 'core': {'round-bar': {'diameter': 5}}, 'sections': [{'id': 'a', 'bend': {}}], 'marks': ['3 mm', 4],"
                        + " 'theirs': 1}#",
                "{'thickness': 2, 'core': {'round-bar': {'diameter': 5}}, 'edge': {'bevel': 1}, 'sections': [{'is': 'bend'}]}",
            })
    void theSchemaTakesWhatTheReaderTakes(String questions) throws Exception {
        JsonNode given =
                new ObjectMapper().readTree(questions.replace('\'', '"').replace("}#", ", \"edge\": {\"bevel\": 1}}"));
        assertEquals(Set.of(), schemas().getSchema(explained().get("schema")).validate(given));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{'core': 'round-bar', 'sections': []}",
                "{'thickness': [], 'core': 'round-bar', 'sections': []}",
                "{'thickness': 2, 'core': 'square-bar', 'sections': []}",
                "{'thickness': 2, 'core': 'round-bar', 'sections': {}}",
                "{'thickness': 2, 'core': 'round-bar', 'sections': [], 'tannage': 'paper'}",
                "{'thickness': 2, 'core': {'round-bar': {}}, 'sections': []}",
            })
    void theSchemaRefusesWhatTheReaderRefuses(String questions) throws Exception {
        JsonNode given = new ObjectMapper().readTree(questions.replace('\'', '"'));
        assertFalse(
                schemas().getSchema(explained().get("schema")).validate(given).isEmpty());
    }

    @Test
    void allKeysUnitsLimitsPresetsFormulasAndSourcesAreThere() throws Exception {
        JsonNode tree = explained();
        assertEquals("kit-strap", tree.get("id").asText());
        assertEquals("org.example.kit", tree.get("bundle").asText());
        JsonNode thickness = tree.at("/questions/0");
        assertEquals(
                "{\"key\":\"thickness\",\"label\":\"Thickness\",\"help\":\"Of the strap.\",\"kind\":\"length\",\"unit\":\"mm\","
                        + "\"min\":\"0.5 mm\",\"max\":\"12 mm\",\"usual\":\"1-4 mm\",\"optional\":false,\"example\":\"2 mm\"}",
                thickness.toString());
        assertEquals(
                "[\"vegetable\",\"chrome\"]", tree.at("/questions/1/choices").toString());
        assertEquals(
                "diameter", tree.at("/questions/2/variants/0/questions/0/key").asText());
        assertEquals("bevel", tree.at("/questions/3/questions/0/key").asText());
        assertEquals("\"blunt\"", tree.at("/questions/5/preset").toString());
        assertEquals("length", tree.at("/questions/9/of").asText());
        assertTrue(tree.at("/questions/10/optional").asBoolean());
        assertEquals("at", tree.at("/answers/2/columns/0/key").asText());
        assertEquals("L = 2 · t", tree.at("/formulas/0/formula").asText());
        assertEquals("common-practice", tree.at("/sources/0/kind").asText());
        assertEquals(
                "{\"severity\":\"check\",\"key\":\"thick\"}",
                tree.at("/notices/0").toString());
    }

    @Test
    void inWordsEveryKeyHasItsLabelUnitAndLimits() {
        assertEquals(0, terminal.run("explain", "kit-strap", "--language=en"));
        for (String line : List.of(
                "Kit strap (kit-strap)\nCuts a strap for the field kit.\n",
                "  thickness  Thickness  [length, mm, 0.5 mm – 12 mm; usual 1-4 mm; example 2 mm]\n      Of the strap.\n",
                "  tannage  Tannage  [choice: vegetable | chrome; preset vegetable]\n",
                "    round-bar:  Round bar\n      diameter  Diameter  [length, mm; example 6 mm]\n",
                "  end  End  [variants; preset blunt]\n      At the tip.\n    blunt:  Blunt  [preset]\n",
                "  start  Start  [variants; preset folded]\n      At the buckle.\n"
                        + "      preset {\"folded\": {\"over\": \"12 mm\"}}\n    blunt:  Blunt\n",
                "    folded:  Folded over  [preset]\n",
                "  keeper  Keeper  [rows]\n      Round the end.\n      preset [{\"id\": \"a\", \"bend\": {}}]\n",
                "  lining  Lining  [rows; may stay open]\n      Inside.\n"
                        + "      example [{\"run\": {\"length\": \"5 mm\"}}]\n",
                "  note  Remark  [text; may stay open]\n",
                "  Twice the leather:  L = 2 · t\n",
                "  Common practice: Habit of the bench\n",
                "Brought by bundle org.example.kit.\n")) {
            assertTrue(terminal.out.contains(line), line + " not in " + terminal.out);
        }
        assertFalse(terminal.out.contains("«"), terminal.out);
    }

    /** 0.5 mm and 12 mm are 0.0197 in and 0.472 in, 1 mm and 4 mm 0.0394 in and 0.157 in, by the inch of 25.4 mm. */
    @Test
    void inInchesItsLimitsAreInInchesToo() {
        assertEquals(0, terminal.run("explain", "kit-strap", "--units", "in", "--language=en"));
        for (String line : List.of(
                "  thickness  Thickness  [length, in, 0.0197 in – 0.472 in; usual 0.0394-0.157 in;"
                        + " a number alone is in mm; example 2 mm]\n",
                "      diameter  Diameter  [length, in; a number alone is in mm; example 6 mm]\n",
                "  tannage  Tannage  [choice: vegetable | chrome; preset vegetable]\n")) {
            assertTrue(terminal.out.contains(line), line + " not in " + terminal.out);
        }
        assertFalse(terminal.out.substring(terminal.out.indexOf("Answers")).contains("[length, mm]"), terminal.out);
    }

    @Test
    void aloneItListsTheCalculators() {
        assertEquals(0, terminal.run("explain", "--language=en"));
        assertTrue(terminal.out.contains("  kit-strap  Cuts a strap for the field kit."), terminal.out);
        Terminal empty = new Terminal();
        assertEquals(0, empty.run("explain", "--language=en"));
        assertTrue(empty.out.startsWith("No calculator is installed."), empty.out);
    }

    @Test
    void aloneItListsThemAsJsonToo() throws Exception {
        assertEquals(0, terminal.run("explain", "--json", "--language=en"));
        assertEquals(
                "{\"calculators\":[{\"id\":\"kit-strap\",\"version\":1,\"title\":\"Kit strap\","
                        + "\"purpose\":\"Cuts a strap for the field kit.\",\"bundle\":\"org.example.kit\"}]}",
                new ObjectMapper().readTree(terminal.out).toString());
        Terminal empty = new Terminal();
        assertEquals(0, empty.run("explain", "--json"));
        assertEquals(
                "{\"calculators\":[]}", new ObjectMapper().readTree(empty.out).toString());
    }

    @Test
    void anUnknownOneIsTwoWithTheNearest() {
        assertEquals(2, terminal.run("explain", "kitstrap", "--language=en"));
        assertTrue(terminal.err.contains("perhaps “kit-strap” is meant"), terminal.err);
    }
}
