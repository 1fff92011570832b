package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose signature is asked for, on jars that jarsigner of the JDK has signed. */
class TrustTest {
    @TempDir
    Path folder;

    private Signing signing;
    private SettingsFolder settings;

    @BeforeEach
    void folders() {
        signing = new Signing(folder);
        settings = SettingsFolder.of(
                new String[] {"--settings", folder.resolve("settings").toString()});
    }

    private Path jar(String name) throws IOException {
        Path jar = folder.resolve(name);
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar))) {
            for (String entry : List.of("META-INF/MANIFEST.MF", "a.txt", "b.txt")) {
                zip.putNextEntry(new ZipEntry(entry));
                zip.write(
                        entry.startsWith("META")
                                ? "Manifest-Version: 1.0\nBundle-SymbolicName: a\n\n"
                                        .getBytes(java.nio.charset.StandardCharsets.UTF_8)
                                : new byte[] {1, 2, 3});
            }
        }
        return jar;
    }

    private static void into(Path jar, String entry, String text) throws IOException {
        try (FileSystem inside = FileSystems.newFileSystem(jar)) {
            Files.writeString(inside.getPath(entry), text);
        }
    }

    private void trust(String lines) throws IOException {
        signing.write(settings.trust().toPath(), lines);
    }

    private Trust trust() {
        return Trust.read(settings.trust());
    }

    private String look(Path jar) {
        return new JarLook(settings).apply(jar.toFile());
    }

    @Test
    void whereNobodyIsNamedNoneIsAskedFor() throws Exception {
        assertEquals("", trust().fault(jar("a.jar").toFile()));
        assertEquals("", look(jar("a.jar")));
        assertFalse(trust().vouchesFor(jar("a.jar").toFile()));
        signing.key("anna");
        assertFalse(trust().vouchesFor(signing.sign(jar("a.jar"), "anna").toFile()), "nobody knows her");
    }

    @Test
    void onlyWhatSomebodyNamedHasSignedPasses() throws Exception {
        String anna = signing.key("anna");
        signing.key("bert");
        trust("# ours\n\nby " + anna.toUpperCase(java.util.Locale.ROOT) + " CN=anna\n");
        assertEquals("not-signed", look(jar("plain.jar")));
        assertEquals("", look(signing.sign(jar("annas.jar"), "anna")));
        assertEquals("signed-by-other", look(signing.sign(jar("berts.jar"), "bert")));
        Path both = signing.sign(signing.sign(jar("both.jar"), "bert"), "anna");
        assertEquals("", look(both));
        assertEquals(2, Seal.signers(both.toFile()).size());
        assertTrue(trust().vouchesFor(both.toFile()));
        assertEquals(Set.of(anna), Seal.signers(folder.resolve("annas.jar").toFile()));
    }

    @Test
    void whatWasAddedToOrChangedSincePassesForNobody() throws Exception {
        trust("by " + signing.key("anna") + "\n");
        Path added = signing.sign(jar("added.jar"), "anna");
        into(added, "c.txt", "mine");
        assertEquals("seal", look(added));
        assertEquals("not-signed", trust().fault(added.toFile()));
        Path changed = signing.sign(jar("changed.jar"), "anna");
        into(changed, "a.txt", "mine");
        assertEquals("seal", look(changed));
        assertEquals("not-signed", trust().fault(changed.toFile()));
        Path taken = signing.sign(jar("taken.jar"), "anna");
        try (FileSystem inside = FileSystems.newFileSystem(taken)) {
            Files.delete(inside.getPath("b.txt"));
        }
        assertEquals("seal", look(taken));
        assertEquals(Set.of(), Seal.signers(taken.toFile()));
    }

    /** Bert signs what Anna signed and adds a file that is his alone: she has not signed that. */
    @Test
    void everyFileHasToBeSignedByThem() throws Exception {
        trust("by " + signing.key("anna") + "\n");
        signing.key("bert");
        Path jar = signing.sign(jar("a.jar"), "anna");
        into(jar, "c.txt", "mine");
        signing.sign(jar, "bert");
        assertEquals("signed-by-other", look(jar));
    }

    @Test
    void aDemandThatCannotBeReadLetsNothingPass() throws Exception {
        signing.key("anna");
        Path annas = signing.sign(jar("annas.jar"), "anna");
        trust("by soon\nsomething\n  \n# remark\nby " + "g".repeat(64) + "\n");
        assertEquals("signed-by-other", look(annas));
        assertEquals(List.of(1, 2, 5), trust().nonsense());
        trust("");
        assertEquals("signed-by-other", look(annas));
        Files.delete(settings.trust().toPath());
        Files.createDirectories(settings.trust().toPath());
        assertEquals("signed-by-other", look(annas));
        assertEquals("not-signed", look(jar("plain.jar")));
        assertEquals("not-signed", look(Files.writeString(folder.resolve("torn.jar"), "torn")));
    }

    @Test
    void whatNobodyWasToldOfWaits() throws Exception {
        Consent consent = new Consent(settings);
        File jar = jar("a.jar").toFile();
        assertEquals("waiting", consent.apply(jar));
        String sum = Seal.sha256(Files.readAllBytes(jar.toPath()));
        signing.write(settings.agreed().toPath(), "# said\n" + "0".repeat(64) + " b\n");
        assertEquals("waiting", consent.apply(jar));
        signing.write(settings.agreed().toPath(), "# said\n" + sum.toUpperCase(java.util.Locale.ROOT) + " a\n");
        assertEquals("", consent.apply(jar));
        into(jar.toPath(), "a.txt", "another");
        assertEquals("waiting", consent.apply(jar), "it is another now");
        assertEquals("", consent.apply(new File("nowhere.jar")), "told when it is to be started");
        Files.delete(settings.agreed().toPath());
        Files.createDirectories(settings.agreed().toPath());
        assertEquals("waiting", consent.apply(jar));
        trust("by " + signing.key("anna") + "\n");
        assertEquals("", consent.apply(signing.sign(jar.toPath(), "anna").toFile()), "somebody named has signed it");
    }
}
