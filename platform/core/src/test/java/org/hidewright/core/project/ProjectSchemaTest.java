package org.hidewright.core.project;

import static org.hidewright.core.bench.Shop.json;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.workshop.StockLink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema and the reader say the same. */
class ProjectSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static JsonNode tree() throws Exception {
        try (InputStream in = ProjectReader.class.getResourceAsStream("project-1.schema.json")) {
            return JSON.readTree(in);
        }
    }

    private static Set<String> problems(String project) throws Exception {
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(tree());
        Set<String> problems = new HashSet<>();
        schema.validate(JSON.readTree(project)).forEach(problem -> problems.add(problem.getMessage()));
        return problems;
    }

    private static Set<String> keys(JsonNode properties) {
        Set<String> keys = new HashSet<>();
        properties.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    /** The keys the reader knows are those it names beside a key that it does not. */
    private static Set<String> known(String text) {
        String said = Shop.said(Shop.project(json(text)).remarks().get(0));
        String list = said.substring(said.indexOf("Known here: ") + 12);
        return Set.of(list.substring(0, list.indexOf('.')).split(", "));
    }

    @Test
    void theSchemaIsOneOfTheDraftItNames() throws Exception {
        JsonSchema draft = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(Set.of(), draft.validate(tree()));
        assertEquals(
                "urn:hidewright:project:" + ProjectReader.FORMAT,
                tree().get("$id").asText());
    }

    @Test
    void itsKeysAreThoseTheReaderKnows() throws Exception {
        assertEquals(known("{'hidewright': 1, 'zzzzzzzzz': 1}"), keys(tree().at("/properties")));
        assertEquals(known("{'hidewright': 1, 'show': {'zzzzzzzzz': 1}}"), keys(tree().at("/$defs/show/properties")));
        assertEquals(
                known("{'hidewright': 1, 'slips': [{'id': 'a', 'calculator': 'b', 'zzzzzzzzzzz': 1}]}"),
                keys(tree().at("/$defs/slip/properties")));
        assertEquals(Set.of("from", "answer", "row", "column"), keys(tree().at("/$defs/link/properties")));
        assertEquals(Set.copyOf(StockLink.KEYS), keys(tree().at("/$defs/stock/properties")));
        assertEquals(
                known("{'hidewright': 1, 'workshop': {'zzzzzzzzz': 1}}"), keys(tree().at("/$defs/kept/properties")));
    }

    @Test
    void everySampleIsAccepted() throws Exception {
        try (Stream<Path> files = Files.list(Path.of("../../samples/projects"))) {
            List<Path> samples =
                    files.filter(file -> file.toString().endsWith(".json")).toList();
            assertFalse(samples.isEmpty());
            for (Path sample : samples) {
                assertEquals(Set.of(), problems(Files.readString(sample)), sample.toString());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{'hidewright': 1}",
                "{'hidewright': 1, 'theirs': {'x': [1, {}]}, 'slips': [{'id': 'a', 'calculator': 'b', 'mine': null}]}",
                "{'hidewright': 1, 'name': 'Kit', 'about': '', 'show': {'units': 'in', 'paper': 'Letter', 'language': 'de'}}",
                "{'hidewright': 1, 'slips': [{'id': 'a', 'calculator': 'b', 'version': 2, 'from': 'org.x', 'title': 'T', 'questions':"
                        + " {'a': '2-3 oz', 'b': 1.50, 'c': true, 'd': null, 'e': ['3 mm', 4], 'f': {'from': 'x', 'answer': 'y'},"
                        + " 'g': {'is': 'bar', 'bar': {'d': 1}}, 'h': [{'id': 'r', 'w': {'from': 'x', 'answer': 'y', 'row': 'z',"
                        + " 'column': 'c'}, 'bend': {}}]}}]}"
            })
    void whatTheReaderTakesTheSchemaTakesToo(String project) throws Exception {
        assertEquals(Set.of(), problems(json(project)));
        assertTrue(Shop.project(json(project)).remarks().stream().noneMatch(remark -> remark.stops()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "{'name': 'Kit'}",
                "{'hidewright': '1'}",
                "{'hidewright': 0}",
                "{'hidewright': 1, 'name': 5}",
                "{'hidewright': 1, 'show': {'units': 'cm'}}",
                "{'hidewright': 1, 'show': 'mm'}",
                "{'hidewright': 1, 'slips': {}}",
                "{'hidewright': 1, 'slips': [5]}",
                "{'hidewright': 1, 'slips': [{'calculator': 'b'}]}",
                "{'hidewright': 1, 'slips': [{'id': 'a'}]}",
                "{'hidewright': 1, 'slips': [{'id': 'a', 'calculator': 'b', 'version': '2'}]}",
                "{'hidewright': 1, 'slips': [{'id': 'a', 'calculator': 'b', 'title': 5}]}",
                "{'hidewright': 1, 'slips': [{'id': 'a', 'calculator': 'b', 'questions': []}]}"
            })
    void whatTheReaderRefusesTheSchemaRefusesToo(String project) throws Exception {
        assertFalse(problems(json(project)).isEmpty());
        ProjectReader.Result read = ProjectReader.read(json(project));
        assertTrue(
                read.remarks().stream().anyMatch(remark -> remark.stops()),
                read.remarks().toString());
    }
}
