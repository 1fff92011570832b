package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every sample with a pom, copied out of the source tree and built as somebody else would build it: against the contract that the
 * program brings, with no other project of ours within reach, and without the net.
 */
class OwnBuildIT {
    private static final Path SAMPLES =
            Path.of("../../samples").toAbsolutePath().normalize();
    private static final Path CONTRACT = BuiltProgram.ORIGINAL.resolve("contract");

    @TempDir
    Path scratch;

    @Test
    void aSampleAloneIsBuiltAgainstTheInstalledContract() throws Exception {
        List<Path> samples = samples();
        assertTrue(samples.size() >= 4, "samples with a build: " + samples);
        Path desk = Files.createDirectories(scratch.resolve("somebody’s desk"));
        for (Path sample : samples) {
            copy(sample, desk.resolve(sample.getFileName()));
            String pom = Files.readString(sample.resolve("pom.xml"));
            assertFalse(pom.contains("<parent>"), sample + " has a parent");
            assertFalse(pom.contains("org.hidewright.core"), sample.toString());
        }
        // One run of Maven for all, for the time it takes; each is still a build of its own.
        Files.writeString(desk.resolve("pom.xml"), together(samples));
        Path log = scratch.resolve("build.log");
        StrangersMaven maven = new StrangersMaven(scratch);
        int code = maven.run(desk, log, "verify", "-Dhidewright.contract=" + CONTRACT);
        assertEquals(0, code, Files.readString(log));
        for (Path sample : samples) {
            Path target = desk.resolve(sample.getFileName()).resolve("target");
            assertTrue(contractTests(target) > 0, sample + ": no contract test was run");
            assertEquals(
                    classes(BuiltProgram.sample(sample.getFileName().toString())),
                    classes(only(target)),
                    "the jar of the source tree and this");
        }
    }

    /** As this program starts one, though the start of another was used before and lies in Maven's own repository. */
    @Test
    void oneCommandStartsABundle() throws Exception {
        Path desk = Files.createDirectories(scratch.resolve("somebody’s desk"));
        keepOlderStart(scratch.resolve("repository"));
        Path log = scratch.resolve("start.log");
        StrangersMaven maven = new StrangersMaven(scratch);
        List<String> command = new ArrayList<>(
                List.of(CONTRACT.resolve("start").toString(), "template", "com.example.herbar", "plant-tag"));
        command.addAll(maven.options());
        assertEquals(0, maven.run(command, desk, log), Files.readString(log));
        Path made = desk.resolve("com.example.herbar.plant-tag");
        assertTrue(Files.readString(made.resolve("pom.xml"))
                .contains("<hidewright.contract>" + CONTRACT + "</hidewright.contract>"));
        assertTrue(Files.readString(made.resolve("src/main/java/com/example/herbar/PlantTag.java"))
                .contains("@Calculates(\"plant-tag\")"));
        assertTrue(Files.readString(made.resolve("src/main/resources/com/example/herbar/messages.properties"))
                .startsWith("plant-tag.title = Plant tag\n"));
        assertTrue(Files.exists(made.resolve("src/test/java/com/example/herbar/PlantTagContractTest.java")));
        assertTrue(Files.readString(made.resolve("README.md")).startsWith("# plant-tag\n"), "of an older start");
    }

    /** The start of a bundle with another README, as if it had come from another program or by {@code mvn install}. */
    private static void keepOlderStart(Path repository) throws IOException {
        Path folder =
                Files.createDirectories(repository.resolve("org/hidewright/org.hidewright.archetype/0.1.0-SNAPSHOT"));
        Path older = folder.resolve("org.hidewright.archetype-0.1.0-SNAPSHOT.jar");
        Files.copy(SAMPLES.resolve("archetype/target/org.hidewright.archetype-0.1.0-SNAPSHOT.jar"), older);
        try (FileSystem jar = FileSystems.newFileSystem(older)) {
            Files.writeString(jar.getPath("archetype-resources/README.md"), "Older\n");
        }
    }

    @Test
    void whatCannotBeStartedIsSaid() throws Exception {
        assertEquals("start: “gizmo” is not known. Start a calculator or a template.", refused("gizmo", "lens-cord"));
        assertEquals(
                "start: “Lens cord” is no id. Write lower-case words joined by hyphens, such as lens-cord.",
                refused("template", "Lens cord"));
    }

    private String refused(String kind, String id) throws Exception {
        Path log = scratch.resolve("refused.log");
        Path desk = Files.createDirectories(scratch.resolve("desk"));
        List<String> command = List.of(CONTRACT.resolve("start").toString(), kind, "net.example.walks", id);
        assertEquals(64, new StrangersMaven(scratch).run(command, desk, log));
        try (Stream<Path> made = Files.list(desk)) {
            assertEquals(0, made.count(), "nothing is made");
        }
        return Files.readString(log).strip();
    }

    private static List<Path> samples() throws IOException {
        try (Stream<Path> folders = Files.list(SAMPLES)) {
            return folders.filter(folder -> Files.exists(folder.resolve("src/main/java")))
                    .sorted()
                    .toList();
        }
    }

    private static String together(List<Path> samples) {
        StringBuilder modules = new StringBuilder();
        samples.forEach(sample ->
                modules.append("<module>").append(sample.getFileName()).append("</module>"));
        return """
                <project>
                  <modelVersion>4.0.0</modelVersion>
                  <groupId>com.example</groupId>
                  <artifactId>together</artifactId>
                  <version>1</version>
                  <packaging>pom</packaging>
                  <modules>%s</modules>
                </project>
                """.formatted(modules);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path :
                    all.filter(path -> !path.startsWith(from.resolve("target"))).toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        }
    }

    /** How many tests of the contract were run and passed. */
    private static int contractTests(Path target) throws IOException {
        try (Stream<Path> reports = Files.list(target.resolve("surefire-reports"))) {
            Path report = reports.filter(path -> path.toString().endsWith("ContractTest.txt"))
                    .findFirst()
                    .orElseThrow();
            String counted =
                    Files.readString(report).replaceAll("(?s).*Tests run: (\\d+), Failures: 0, Errors: 0.*", "$1");
            return Integer.parseInt(counted);
        }
    }

    private static Path only(Path target) throws IOException {
        try (Stream<Path> files = Files.list(target)) {
            List<Path> jars =
                    files.filter(path -> path.toString().endsWith(".jar")).toList();
            assertEquals(1, jars.size(), jars.toString());
            return jars.get(0);
        }
    }

    /** Entries by name, with the checksum of what is in each; the manifest tells the JDK and is left out. */
    private static Map<String, Long> classes(Path jar) throws IOException {
        Map<String, Long> entries = new TreeMap<>();
        try (JarFile file = new JarFile(jar.toFile())) {
            file.stream()
                    .filter(entry -> !entry.isDirectory() && !entry.getName().endsWith("MANIFEST.MF"))
                    .forEach(entry -> entries.put(entry.getName(), entry.getCrc()));
        }
        return entries;
    }
}
