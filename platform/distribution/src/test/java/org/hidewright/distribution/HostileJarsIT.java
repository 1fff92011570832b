package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Jars that a maker might come by and had better not have, all at once in the folder of add-ons: the program works on with a
 * small heap, each is told by its own remark and nothing else is told, what is worked is the same byte for byte, and no file
 * comes to lie where none belongs.
 */
class HostileJarsIT {
    private static final Path SAMPLE = Path.of("../../samples/projects/plant-press-straps.json");
    private static final String[] WORK = {"work", "thickness", "thickness=2 mm"};

    /** What is made once, and what an absolute name would have written. */
    @TempDir
    static Path made;

    private static List<HostileJar> notStarted;

    @TempDir
    Path scratch;

    private BuiltProgram program;

    @BeforeEach
    void start() {
        program = BuiltProgram.inPlace(
                scratch,
                "-Xmx96m",
                "-Dhidewright.call-limit=" + StrangeRun.PATIENCE,
                "-Dhidewright.start-limit=" + StrangeRun.PATIENCE);
    }

    private void lay(List<HostileJar> jars) throws IOException {
        for (HostileJar jar : jars) {
            assertFalse(Files.exists(program.addOns().resolve(jar.file())), jar.file() + " is there twice");
            jar.layInto(program.addOns());
        }
    }

    @BeforeAll
    static void make() throws Exception {
        List<HostileJar> jars = new ArrayList<>(HostilePacking.jars(made));
        jars.addAll(HostileManifests.jars());
        jars.addAll(new HostileSignatures(Files.createDirectories(made.resolve("keys"))).jars());
        jars.add(HostileJar.of(
                "throws",
                HostileJar.starting("throws", "throw new IllegalStateException(\"no awl\");")
                        .packed(),
                "{bundle} was not started: it broke down while starting (no awl). Tell its author."
                        + HostileJar.UNTIL));
        jars.add(HostileJar.of(
                "loops",
                HostileJar.starting("loops", "while (true) {}").packed(),
                "{bundle} was not started: it had not come back after " + StrangeRun.PATIENCE
                        + " s and was left to itself. Tell its author." + HostileJar.UNTIL));
        // They run on until the program ends, and do not keep it from ending
        jars.add(HostileJar.of("threads", HostileJar.starting("threads", """
                for (int i = 0; i < 50; i++) {
                    Thread thread = new Thread(() -> {
                        while (true) {
                            try { Thread.sleep(1000); } catch (InterruptedException e) {}
                        }
                    });
                    thread.setDaemon(false);
                    thread.start();
                }""").packed()));
        jars.add(
                HostileJar.of(
                        "thread-that-breaks",
                        HostileJar.starting("thread-that-breaks", "Breaks", """
                for (int i = 0; i < 3; i++) {
                    Thread thread = new Thread(() -> { throw new IllegalStateException("no wax"); });
                    thread.start();
                    thread.join();
                }""").packed(),
                        "A thread of the bundle {bundle} broke down beside its work (no wax). What was asked for goes on; tell its author."));
        notStarted = List.copyOf(jars);
    }

    @Test
    void whatIsNotStartedIsToldAndEverythingElseIsAsWithoutIt() throws Exception {
        Path project =
                Files.copy(SAMPLE, Files.createDirectories(program.elsewhere()).resolve("kit.json"));
        Path papers = program.elsewhere().resolve("out");
        Ended before = program.run("make", project.toString(), "--into", papers.toString());
        Ended workedBefore = program.run(WORK);
        Map<String, String> papersBefore = files(papers);
        assertTrue(papersBefore.containsKey("job-card.pdf"), papersBefore.keySet()::toString);

        assertTrue(notStarted.size() > 50, "only " + notStarted.size());
        lay(notStarted);
        program.agree();
        Map<String, String> laid = files(scratch);
        Ended with = program.run("make", project.toString(), "--into", papers.toString());
        assertEquals(before.code(), with.code());
        assertEquals(before.answer(), with.answer());
        assertSameRemarks(before, notStarted, with);
        Ended again = program.run(WORK);
        assertEquals(workedBefore.code(), again.code());
        assertEquals(workedBefore.answer(), again.answer());
        assertSameRemarks(workedBefore, notStarted, again);

        assertEquals(papersBefore, files(papers));
        Map<String, String> after = files(scratch);
        assertEquals(laid.keySet(), after.keySet());
        for (String known : List.of("out.txt", "told.txt")) { // of the two runs themselves
            after.remove(known);
            laid.remove(known);
        }
        assertEquals(laid, after);
        for (Path place : List.of(scratch, made)) {
            try (Stream<Path> all = Files.walk(place)) {
                assertEquals(List.of(), all.filter(HostileJarsIT::hasClimbed).toList());
            }
        }
        assertFalse(Files.exists(scratch.resolveSibling(HostilePacking.CLIMBED)));
    }

    private static boolean hasClimbed(Path path) {
        return path.getFileName().toString().contains(HostilePacking.CLIMBED);
    }

    private static String print(Path file) throws IOException {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What is in the files of a folder by their paths, the notes of Felix apart. */
    private Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                if (!file.startsWith(scratch.resolve("cache"))) {
                    files.put(folder.relativize(file).toString(), print(file));
                }
            }
        }
        return files;
    }

    /** Each remark once, whatever their order, and nothing that is none. */
    private void assertSameRemarks(Ended before, List<HostileJar> jars, Ended with) {
        List<String> expected = new ArrayList<>(remarks(StrangeRun.told(before)));
        int line = 1;
        for (HostileJar jar : jars) {
            line += jar.asked().isEmpty() ? 0 : 1;
            expected.addAll(jar.told(program.addOns(), line));
        }
        expected.sort(Comparator.naturalOrder());
        assertEquals(String.join("\n", expected), String.join("\n", remarks(StrangeRun.told(with))));
    }

    /** A remark begins at the margin, and what stands below it is set in. */
    private static List<String> remarks(String told) {
        return Stream.of(told.split("\n(?! {4})"))
                .map(String::stripTrailing)
                .filter(remark -> !remark.isEmpty())
                .sorted()
                .toList();
    }

    @Test
    void whatIsAskedAndNoGoodIsToldOnItsSlip() throws Exception {
        List<HostileJar> jars = new ArrayList<>(HostileCode.jars());
        jars.addAll(HostileTemplates.jars());
        lay(jars);
        List<String> slips = new ArrayList<>();
        for (HostileJar jar : jars) {
            if (!jar.asked().isEmpty()) {
                slips.add(StrangeRun.slip(jar.name(), jar.asked()));
            }
        }
        slips.add("{\"id\": \"plain\", \"calculator\": \"thickness\", \"questions\": {\"thickness\": \"2 mm\"}}");
        String text = "{\"hidewright\": 1, \"name\": \"Kit\", \"slips\": [\n" + String.join(",\n", slips) + "]}\n";
        Path project =
                Files.writeString(Files.createDirectories(program.elsewhere()).resolve("kit.json"), text);
        Ended made = program.run("make", project.toString());
        assertSameRemarks(new Ended(0, "", ""), jars, made);
        assertEquals(1, made.code());
        assertEquals(text, Files.readString(project));
        StrangeRun.Packet packet =
                new StrangeRun.Packet(made, program.elsewhere().resolve("out/kit"));
        packet.isWholeAndThePlainSlipIsAnswered();
        for (String worked : List.of("no-texts", "bad-escape", "bad-pattern", "latin-tag")) {
            assertEquals("worked", packet.slip(worked).text("state").orElse(""), worked);
        }
    }

    @Test
    void oneThatEndsTheProgramAsItStartsIsNamed() throws Exception {
        HostileJar.of("exits", HostileJar.starting("exits", "System.exit(0);").packed())
                .layInto(program.addOns());
        Ended ended = program.run(WORK);
        assertEquals(70, ended.code());
        assertEquals("", ended.answer());
        assertEquals(
                "The bundle net.example.exits ended Hidewright in the middle of its work; what was asked for is not done. "
                        + "Tell its author, and turn it off: hidewright addons off net.example.exits --without-addons\n",
                ended.told());
    }

    @Test
    void oneThatPrintsWithoutEndIsCutOff() throws Exception {
        Ended before = program.run(WORK);
        HostileJar.of("floods", HostileJar.starting("floods", """
                        for (int i = 0; i < 100_000; i++) {
                            System.out.println("flood");
                        }""").packed()).layInto(program.addOns());
        Ended ended = program.run(WORK);
        assertEquals(0, ended.code());
        assertEquals(before.answer(), ended.answer());
        assertEquals(
                "A bundle prints what follows; it is no answer of Hidewright:\n" + "flood\n".repeat(666)
                        + "floo\nIt printed more than 4000 bytes; the rest is left out.\n",
                ended.told());
    }

    /** A fast computer starts them in time, a slow one says that it does not. */
    @Test
    void tenThousandComponentsCostTheirTimeAndNoMore() throws Exception {
        Ended before = program.run(WORK);
        components(10_000).layInto(program.addOns());
        Ended ended = program.run(WORK);
        assertEquals(0, ended.code());
        assertEquals(before.answer(), ended.answer());
        if (!ended.told().isEmpty()) {
            assertEquals(
                    "net.example.components was not started: it had not come back after " + StrangeRun.PATIENCE
                            + " s and was left to itself. Tell its author. Until then turn it off: hidewright addons off net.example.components\n",
                    ended.told());
        }
    }

    private static HostileJar components(int count) throws IOException {
        StrangeBundle sound = HostileJar.sound("components");
        String description =
                new String(ZipBytes.of(sound.packed()).content(HostilePacking.DESCRIPTION), StandardCharsets.UTF_8);
        for (int i = 0; i < count; i++) {
            sound.entry(
                    "OSGI-INF/c" + i + ".xml",
                    description
                            .replace("name=\"net.example.odd.Odd\"", "name=\"c" + i + "\"")
                            .replace("value=\"components\"", "value=\"c" + i + "\""));
        }
        return HostileJar.of(
                "components",
                sound.header("Service-Component", "OSGI-INF/*.xml").packed());
    }

    /** What the launcher would not start is not let in either; words and files are checked with platform/addons. */
    @Test
    void whatIsUnsoundIsNotInstalled() throws Exception {
        Map<String, String> why = Map.of(
                "climbing-0", "the name of a file in it leads out of the folder it lies in, as no honest jar does",
                "bomb-of-texts", "it unpacks to more than a bundle needs (100 MB, 1 MB for one text, or 65535 files)",
                "sum-of-class", "what is in it is not what was packed into it",
                "doubled", "a file is in it twice, and nobody can tell which is meant",
                "part-of-org.hidewright.core",
                        "it wants to become a part of org.hidewright.core, which belongs to the program",
                "signed-changed", "it is signed, and was changed since");
        int refused = 0;
        for (HostileJar jar : notStarted) {
            if (why.containsKey(jar.name())) {
                Path given = Files.write(
                        Files.createDirectories(scratch.resolve("given")).resolve(jar.file()), jar.bytes());
                Ended ended = program.run("addons", "install", given.toString());
                assertEquals("", ended.answer());
                assertEquals(
                        "Stop: " + given + " cannot be installed: " + why.get(jar.name()) + ".\n"
                                + "    What is packed so is not started either. Nothing was changed.\n"
                                + "    Copy it again, or ask its author for another.\n",
                        ended.told());
                assertEquals(2, ended.code());
                refused++;
            }
        }
        assertEquals(why.size(), refused);
        assertFalse(Files.exists(program.addOns()));
    }

    @Test
    void oneThatIsSignedAndWholeIsInstalledAsAnUnsignedOneWouldBe() throws Exception {
        HostileJar whole = notStarted.stream()
                .filter(jar -> jar.name().equals("signed-whole"))
                .findFirst()
                .orElseThrow();
        Path given =
                Files.write(Files.createDirectories(scratch.resolve("given")).resolve(whole.file()), whole.bytes());
        Ended installed = program.run("addons", "install", given.toString());
        assertEquals("", installed.told());
        assertEquals(0, installed.code());
        assertTrue(installed.answer().contains("nobody here has looked it over"), installed.answer());
        assertEquals(0, program.run("work", "signed-whole").code());
    }
}
