package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.cert.Certificate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Add-ons from an index on the program as built: browsed, installed, renewed, taken back, signed, and killed in the middle. */
class AddOnIndexIT {
    private static final String SLEEVE = "net.example.fieldkit.jar-sleeve";
    private static final int KILLS = 12;

    @TempDir
    Path scratch;

    private BuiltProgram program;
    private Path shelf;

    @BeforeEach
    void aShelf() throws IOException {
        program = BuiltProgram.inPlace(scratch).withoutAgreeing();
        shelf = Files.createDirectories(scratch.resolve("shelf of the club"));
        Files.copy(BuiltProgram.sample("jar-sleeve"), shelf.resolve("sleeve.jar"));
        Files.copy(BuiltProgram.sample("kit-list"), shelf.resolve("kit list+1.jar"));
    }

    private Ended done(String... arguments) throws Exception {
        Ended ended = program.run(arguments);
        assertEquals("", ended.told());
        assertEquals(0, ended.code());
        return ended;
    }

    private String refused(String... arguments) throws Exception {
        Ended ended = program.run(arguments);
        assertEquals(2, ended.code(), ended.told());
        return ended.told();
    }

    private void works() throws Exception {
        assertTrue(done("work", "jar-sleeve", "diameter=65 mm", "thickness=2 mm")
                .answer()
                .contains("226.0\u00a0mm"));
    }

    /** The sample as another version of itself. */
    private void version(String file, String version) throws IOException {
        Path jar = Files.copy(BuiltProgram.sample("jar-sleeve"), shelf.resolve(file));
        try (FileSystem inside = FileSystems.newFileSystem(jar)) {
            Path manifest = inside.getPath("META-INF/MANIFEST.MF");
            Files.writeString(
                    manifest,
                    Files.readString(manifest).replaceAll("Bundle-Version: \\S+", "Bundle-Version: " + version));
        }
    }

    @Test
    void aBundleIsFoundInstalledRenewedAndTakenBack() throws Exception {
        assertTrue(done("addons", "index", shelf.toString()).answer().contains("(bundles: 2)"));
        byte[] index = Files.readAllBytes(shelf.resolve("index.xml"));
        String offered = done("addons", "--from", shelf.toString()).answer();
        assertTrue(offered.contains(SLEEVE + " 0.1.0: not installed\n"), offered);
        assertTrue(offered.contains("    calculators: jar-sleeve\n"), offered);
        String said =
                done("addons", "install", SLEEVE, "--from", shelf.toString()).answer();
        assertTrue(said.startsWith("A bundle is code with full rights"), said);
        works();
        version("newer.jar", "0.2.0");
        version("oldest.jar", "0.0.9");
        done("addons", "index", shelf.toString());
        assertFalse(Arrays.equals(index, Files.readAllBytes(shelf.resolve("index.xml"))));
        assertTrue(done("addons", "--from", shelf.toString())
                .answer()
                .contains(SLEEVE + " 0.2.0: newer than 0.1.0, which is installed\n"));
        assertTrue(refused("addons", "install", SLEEVE + "@0.0.9", "--from", shelf.toString())
                .contains(SLEEVE + " 0.1.0 is installed, and 0.0.9 is older."));
        said = done("addons", "update", "--from", shelf.toString()).answer();
        assertTrue(said.contains(SLEEVE + " 0.1.0 gives way to 0.2.0\n"), said);
        assertTrue(done("addons").answer().contains(SLEEVE + " 0.2.0, installed by you: on\n"));
        works();
        assertTrue(done("addons", "back").answer().contains(SLEEVE + " 0.2.0 gives way to 0.1.0\n"));
        assertTrue(done("addons").answer().contains(SLEEVE + " 0.1.0, installed by you: on\n"));
        done("addons", "install", SLEEVE + "@0.0.9", "--from", shelf.toString(), "--older");
        assertTrue(done("addons").answer().contains(SLEEVE + " 0.0.9, installed by you: on\n"));
    }

    @Test
    void aChangedJarIsRefused() throws Exception {
        done("addons", "index", shelf.toString());
        version("sleeve-2.jar", "0.1.0");
        Files.move(shelf.resolve("sleeve-2.jar"), shelf.resolve("sleeve.jar"), StandardCopyOption.REPLACE_EXISTING);
        String told = refused("addons", "install", SLEEVE, "--from", shelf.toString());
        assertTrue(told.contains("sleeve.jar is not what the index says: "), told);
        assertFalse(done("addons").answer().contains(SLEEVE));
    }

    @Test
    void whatWasCopiedInIsToldBeforeItsFirstStartAndNotAgain() throws Exception {
        Files.createDirectories(program.addOns());
        Files.copy(shelf.resolve("sleeve.jar"), program.addOns().resolve("sleeve.jar"));
        for (int start = 0; start < 2; start++) {
            Ended first = program.run("addons");
            assertTrue(
                    first.told()
                            .startsWith("sleeve.jar is new here and was not started yet. A bundle is code with full"),
                    first.told());
            assertTrue(first.answer().contains(SLEEVE + " 0.1.0, installed by you: waits until you turn it on"));
        }
        assertEquals(
                2,
                program.run("work", "jar-sleeve", "diameter=65 mm", "thickness=2 mm")
                        .code());
        program.run("addons", "on", SLEEVE);
        works();
        works();
        version("another.jar", "0.3.0");
        Files.copy(
                shelf.resolve("another.jar"),
                program.addOns().resolve("sleeve.jar"),
                StandardCopyOption.REPLACE_EXISTING);
        assertTrue(program.run("addons").told().contains("is new here"), "another jar is another bundle");
    }

    @Test
    void aWorkshopCanAskForSignatures() throws Exception {
        JarSigning signing = new JarSigning(Files.createDirectories(scratch.resolve("keys")));
        Path certificate = scratch.resolve("maker.cer");
        Certificate theirs = signing.certificate();
        Files.write(certificate, theirs.getEncoded());
        done("addons", "install", shelf.resolve("sleeve.jar").toString());
        works();
        String named = done("addons", "trust", certificate.toString()).answer();
        assertTrue(
                named.replace(":", "").toLowerCase(Locale.ROOT).contains(BuiltProgram.sha256(theirs.getEncoded())),
                named);
        Ended unsigned = program.run("addons");
        assertTrue(
                unsigned.told().contains(SLEEVE + ".jar was not started: this workshop starts only what is signed by"),
                unsigned.told());
        done("addons", "remove", SLEEVE, "--without-addons");
        Path plain = shelf.resolve("sleeve.jar");
        assertTrue(refused("addons", "install", plain.toString()).contains("and it is not signed"));
        assertTrue(refused("addons", "index", shelf.toString()).contains("and it is not signed"));
        byte[] signed = signing.signed(Files.readAllBytes(plain));
        Files.delete(shelf.resolve("kit list+1.jar"));
        Files.write(plain, signed);
        done("addons", "index", shelf.toString());
        String said =
                done("addons", "install", SLEEVE, "--from", shelf.toString()).answer();
        assertFalse(said.contains("full rights"), said);
        works();
        Path index = shelf.resolve("index.jar");
        try (FileSystem inside = FileSystems.newFileSystem(index, Map.of("create", "true"))) {
            Files.copy(shelf.resolve("index.xml"), inside.getPath("index.xml"));
        }
        assertTrue(refused("addons", "--from", index.toString()).contains("and it is not signed"));
        Files.write(index, signing.signed(Files.readAllBytes(index)));
        assertTrue(done("addons", "--from", index.toString()).answer().contains(SLEEVE + " 0.1.0: installed\n"));
        done("addons", "index", shelf.toString());
        JarSigning other = new JarSigning(Files.createDirectories(scratch.resolve("other keys")));
        Files.write(certificate, other.certificate().getEncoded());
        done("addons", "distrust", BuiltProgram.sha256(theirs.getEncoded()).substring(0, 10));
        done("addons", "trust", certificate.toString(), "--without-addons");
        assertTrue(program.run("addons").told().contains("and it is signed by somebody else"));
    }

    private Map<String, Long> installed() throws IOException {
        Map<String, Long> sizes = new TreeMap<>();
        if (Files.isDirectory(program.addOns())) {
            try (Stream<Path> jars = Files.list(program.addOns())) {
                for (Path jar : jars.toList()) {
                    sizes.put(jar.getFileName().toString(), Files.size(jar));
                }
            }
        }
        return sizes;
    }

    /** Killed at moments that a seed chooses, of changes there and back; each step for itself is killed in a test of the change. */
    @Test
    void aProgramThatIsKilledWhileItInstallsLeavesAllOrNothing() throws Exception {
        done("addons", "index", shelf.toString());
        Map<String, Long> none = installed();
        String kit = "net.example.fieldkit.kit-list";
        long began = System.nanoTime();
        done("addons", "install", SLEEVE, kit, "--from", shelf.toString());
        int takesMs = (int) TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began);
        Map<String, Long> both = installed();
        assertEquals(2, both.size());
        Random random = new Random(8);
        for (int i = 0; i < KILLS; i++) {
            boolean back = installed().equals(both);
            String[] change = back
                    ? new String[] {"addons", "back"}
                    : new String[] {"addons", "install", SLEEVE, kit, "--from", shelf.toString()};
            program.killed(takesMs / 2 + random.nextInt(takesMs), change);
            Ended after = done("addons");
            Map<String, Long> found = installed();
            assertTrue(found.equals(none) || found.equals(both), found + " " + after);
            assertEquals(found.equals(both), after.answer().contains(kit + " "), after.answer());
        }
    }
}
