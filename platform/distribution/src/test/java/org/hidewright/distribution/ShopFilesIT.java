package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built program set up by the files of shops that come as samples: without any calculator, and with three. */
class ShopFilesIT {
    private static final Path SHOPS =
            Path.of("../../samples/shops").toAbsolutePath().normalize();
    private static final Path PROJECTS =
            Path.of("../../samples/projects").toAbsolutePath().normalize();
    private static final Set<String> THREE =
            Set.of("org.hidewright.thickness", "org.hidewright.straps", "org.hidewright.parts");

    @TempDir
    Path scratch;

    private BuiltProgram program;

    @BeforeEach
    void program() {
        program = BuiltProgram.inPlace(scratch);
    }

    private Ended done(String... arguments) throws Exception {
        Ended ended = program.run(arguments);
        assertEquals("", ended.told());
        assertEquals(0, ended.code());
        return ended;
    }

    private Set<String> on() throws Exception {
        Set<String> on = new TreeSet<>();
        JsonObject listed = StrangeRun.read(done("addons", "--json").answer());
        for (JsonNode addOn : ((JsonArray) listed.get("addons").orElseThrow()).items()) {
            if (((JsonObject) addOn).text("state").orElseThrow().equals("on")) {
                on.add(((JsonObject) addOn).text("id").orElseThrow());
            }
        }
        return on;
    }

    private JsonObject card(Path project) throws IOException {
        String name = project.getFileName().toString().replace(".json", "");
        return StrangeRun.read(Files.readString(program.elsewhere().resolve("out/" + name + "/job-card.json")));
    }

    private Set<String> states(Path project) throws IOException {
        Set<String> states = new TreeSet<>();
        ((JsonArray) card(project).get("slips").orElseThrow())
                .items()
                .forEach(slip -> states.add(((JsonObject) slip).text("state").orElseThrow()));
        return states;
    }

    @Test
    void withoutAnyCalculatorItStartsAndOpensAnyProjectAndLosesNothing() throws Exception {
        assertTrue(on().size() > 10);
        done("addons", "apply", SHOPS.resolve("bare-bench.json").toString());
        assertEquals(Set.of(), on());
        assertTrue(done("help").answer().contains("hidewright make PROJECT"));
        for (Path project : Set.of(
                PROJECTS.resolve("hand-lens-pouch.json"),
                PROJECTS.resolve("plant-press-straps.json"),
                PROJECTS.resolve("field-notebook-cover.json"))) {
            byte[] before = Files.readAllBytes(project);
            Path copy = Files.write(program.elsewhere().resolve(project.getFileName()), before);
            Ended ended = program.run("make", copy.toString());
            assertEquals(1, ended.code(), ended.told());
            assertTrue(ended.told().contains("Turn it on: hidewright addons on org.hidewright."), ended.told());
            assertEquals(Set.of("dormant"), states(project));
            assertArrayEquals(before, Files.readAllBytes(copy));
        }
        assertEquals(
                "There is nothing to do: all is so already.\n",
                done("addons", "apply", SHOPS.resolve("bare-bench.json").toString())
                        .answer());
    }

    @Test
    void withThreeCalculatorsAProjectThatNeedsJustTheseIsMadeAsWithAll() throws Exception {
        Path project = PROJECTS.resolve("plant-press-straps.json");
        Files.createDirectories(program.elsewhere());
        done("make", project.toString());
        String withAll = Files.readString(program.elsewhere().resolve("out/plant-press-straps/job-card.json"));
        Set<String> before = on();
        String shop = SHOPS.resolve("press-straps-bench.json").toString();
        String tried = done("addons", "apply", shop, "--try").answer();
        assertTrue(tried.contains("org.hidewright.edges is turned off\n"), tried);
        assertFalse(tried.contains("org.hidewright.straps"), tried);
        assertEquals(before, on(), "it was only tried");
        done("addons", "apply", shop);
        assertEquals(THREE, on());
        done("make", project.toString());
        assertEquals(withAll, Files.readString(program.elsewhere().resolve("out/plant-press-straps/job-card.json")));
        assertEquals(Set.of("worked"), states(project));
        done("addons", "back");
        assertEquals(before, on());
    }

    @Test
    void aShopWithAnAddOnIsMadeFromItsIndexAndWrittenAgain() throws Exception {
        Path shelf = Files.createDirectories(scratch.resolve("shelf"));
        Files.copy(BuiltProgram.sample("jar-sleeve"), shelf.resolve("sleeve.jar"));
        done("addons", "index", shelf.toString());
        Path shop = Files.writeString(scratch.resolve("shop.json"), """
                {"hidewright-shop": 1, "from": ["shelf"],
                 "bundles": ["org.hidewright.thickness",
                             {"bundle": "net.example.fieldkit.jar-sleeve", "versions": "[0.1,1)"}]}
                """);
        String said = done("addons", "apply", shop.toString()).answer();
        assertTrue(said.startsWith("A bundle is code with full rights"), said);
        assertTrue(said.contains("net.example.fieldkit.jar-sleeve 0.1.0 comes\n"), said);
        assertEquals(Set.of("org.hidewright.thickness", "net.example.fieldkit.jar-sleeve"), on());
        done("work", "jar-sleeve", "diameter=65 mm", "thickness=2 mm");
        Path written = scratch.resolve("written.json");
        done("addons", "profile", written.toString(), "--from", shelf.toString());
        done("addons", "back");
        done("addons", "apply", written.toString());
        assertEquals(Set.of("org.hidewright.thickness", "net.example.fieldkit.jar-sleeve"), on());
        Ended wrong = program.run(
                "addons",
                "apply",
                Files.writeString(
                                scratch.resolve("wrong.json"), "{\"hidewright-shop\": 1,\n \"bundles\": [\"nobody\"]}")
                        .toString());
        assertEquals(2, wrong.code());
        assertTrue(wrong.told().startsWith("Stop (line 2"), wrong.told());
    }
}
