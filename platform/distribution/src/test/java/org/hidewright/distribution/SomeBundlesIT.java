package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A shop that keeps only some of the calculators: the packet of a project that needs them all has what is there, and says of
 * the rest which bundle would bring it.
 */
class SomeBundlesIT {
    private static final Path PROJECT =
            Path.of("../../samples/projects/hand-lens-pouch.json").toAbsolutePath();
    private static final String BUNDLE = "org.hidewright.";

    @TempDir
    Path scratch;

    private BuiltProgram program;
    private Project project;

    @BeforeEach
    void copy() throws IOException {
        program = BuiltProgram.copyInto(scratch);
        project = ProjectReader.read(Files.readString(PROJECT)).project().orElseThrow();
    }

    /** Slips by the bundle that they name. */
    private Set<String> slipsOf(Set<String> bundles) {
        Set<String> slips = new TreeSet<>();
        project.slips().forEach(slip -> {
            if (bundles.contains(slip.from().orElseThrow().substring(BUNDLE.length()))) {
                slips.add(slip.id());
            }
        });
        return slips;
    }

    private Set<String> bundles() throws IOException {
        try (Stream<Path> all = Files.list(program.calculators())) {
            return all.map(jar -> jar.getFileName().toString())
                    .map(name -> name.substring(BUNDLE.length(), name.length() - ".jar".length()))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private Path jar(String bundle) {
        return program.calculators().resolve(BUNDLE + bundle + ".jar");
    }

    private Ended make() throws Exception {
        byte[] before = Files.readAllBytes(PROJECT);
        Ended ended = program.run("make", PROJECT.toString(), "--into", packet().toString(), "--language", "en");
        assertArrayEquals(before, Files.readAllBytes(PROJECT), "the project is as it was");
        return ended;
    }

    private Path packet() {
        return scratch.resolve("packet");
    }

    /** How each slip stands, by its id. */
    private TreeMap<String, String> states() throws IOException {
        TreeMap<String, String> states = new TreeMap<>();
        JsonObject card = StrangeRun.read(Files.readString(packet().resolve("job-card.json")));
        ((JsonArray) card.get("slips").orElseThrow())
                .items()
                .forEach(slip -> states.put(text(slip, "id"), text(slip, "state")));
        return states;
    }

    private static String text(JsonNode slip, String key) {
        return ((JsonObject) slip).text(key).orElseThrow();
    }

    private Set<String> inState(String state) throws IOException {
        Set<String> slips = new TreeSet<>();
        states().forEach((id, stands) -> {
            if (stands.equals(state)) {
                slips.add(id);
            }
        });
        return slips;
    }

    private Set<String> papers() throws IOException {
        try (Stream<Path> all = Files.list(packet())) {
            return all.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** Each slip is worked, dormant with its bundle named, or waits; none is lost. */
    private void assertThatOnlyIsWorked(Set<String> there, Ended ended) throws Exception {
        Set<String> missing = bundles();
        missing.addAll(Set.of("thickness", "straps", "fasteners", "edges", "costing", "parts", "stitching"));
        missing.removeAll(there);
        assertEquals(1, ended.code(), ended.told());
        assertEquals(project.slips().size(), states().size());
        assertEquals(slipsOf(missing), inState("dormant"));
        Set<String> worked = inState("worked");
        Set<String> waiting = inState("waiting");
        assertTrue(slipsOf(there).containsAll(worked), worked.toString());
        Set<String> all = new TreeSet<>(worked);
        all.addAll(waiting);
        assertEquals(slipsOf(there), all);
        String card = PrintedText.of(packet().resolve("job-card.pdf"));
        for (String bundle : missing) {
            String brings = "bundle " + BUNDLE + bundle + " brings it.";
            assertTrue(ended.told().contains(brings), ended.told());
            assertTrue(
                    ended.told().contains("Install " + BUNDLE + bundle + ": hidewright addons install FILE."),
                    ended.told());
            assertTrue(card.contains(brings), card);
        }
        if (!waiting.isEmpty()) {
            String waits = ended.told()
                    .lines()
                    .filter(line -> line.startsWith("Waiting for what is told above: "))
                    .findFirst()
                    .orElse("");
            waiting.forEach(id -> assertTrue(waits.contains(id), id + " in “" + waits + "”"));
        }
    }

    @ParameterizedTest(name = "{0} alone")
    @ValueSource(strings = {"thickness", "straps", "fasteners", "edges", "costing", "parts", "stitching"})
    void withOneBundleAloneItsSlipsAreWorked(String there) throws Exception {
        for (String bundle : bundles()) {
            if (!bundle.equals(there)) {
                Files.delete(jar(bundle));
            }
        }
        Ended ended = make();
        assertThatOnlyIsWorked(Set.of(there), ended);
        // What is linked to nothing is worked: gauging, the belt’s loop, an hour at the bench, a thread. Edges and
        // fittings take
        // a thickness.
        assertEquals(
                Set.of("thickness", "straps", "costing", "stitching").contains(there),
                !inState("worked").isEmpty(),
                there);
    }

    @ParameterizedTest(name = "without {0}")
    @ValueSource(strings = {"thickness", "straps", "fasteners", "edges", "costing", "parts", "stitching"})
    void withoutOneBundleTheOthersGoOn(String gone) throws Exception {
        Files.delete(jar(gone));
        Ended ended = make();
        assertThatOnlyIsWorked(bundles(), ended);
        assertTrue(!inState("worked").isEmpty());
        assertEquals(
                Set.of("costing", "stitching").contains(gone),
                papers().contains("finishing-schedule.pdf"),
                "edges of the pouch take from all but costing and stitching");
    }

    @Test
    void withAllOfThemEverythingIsWritten() throws Exception {
        Ended ended = make();
        assertEquals(0, ended.code(), ended.told());
        assertEquals(slipsOf(bundles()), inState("worked"));
        assertEquals(
                new TreeSet<>(Arrays.asList(
                        "job-card.pdf",
                        "job-card.json",
                        "job-card.csv",
                        "finishing-schedule.pdf",
                        "shopping-list.pdf",
                        "cost-sheet.pdf",
                        "quote.pdf",
                        "patterns.pdf",
                        "patterns-pouch-parts.svg",
                        "patterns-pouch-parts.dxf")),
                papers());
    }

    @Test
    void oneThatIsTurnedOffIsToldWithTheWayToTurnItOn() throws Exception {
        assertEquals(0, program.run("addons", "off", BUNDLE + "edges").code());
        Ended ended = make();
        assertEquals(1, ended.code());
        assertTrue(
                ended.told().contains("“finishing” is a calculator of org.hidewright.edges, which is turned off."),
                ended.told());
        assertTrue(ended.told().contains("    Turn it on: hidewright addons on org.hidewright.edges"), ended.told());
        assertEquals(Set.of("pouch-edges"), inState("dormant"));
        assertTrue(PrintedText.of(packet().resolve("job-card.pdf")).contains("Dormant: its bundle is turned off"));
        assertEquals(0, program.run("addons", "on", BUNDLE + "edges").code());
        assertEquals(0, make().code());
        assertEquals(Set.of(), inState("dormant"));
    }

    @Test
    void withNoneAtAllTheProjectStillOpens() throws Exception {
        for (String bundle : new ArrayList<>(bundles())) {
            Files.delete(jar(bundle));
        }
        Ended ended = make();
        assertThatOnlyIsWorked(Set.of(), ended);
        assertEquals(List.of("dormant"), states().values().stream().distinct().toList());
    }
}
