package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JarLookTest {

    private static final int MEGABYTE = 1 << 20;

    @TempDir
    Path folder;

    private String fault(byte[] jar) throws IOException {
        return new JarLook(SettingsFolder.of(new String[] {"--settings", folder.toString()}))
                .apply(Files.write(folder.resolve("given.jar"), jar).toFile());
    }

    private static byte[] jar(String name, byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("first.txt"));
            zip.write("first".getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry(name));
            zip.write(content);
        }
        return bytes.toByteArray();
    }

    /** Wherever some bytes stand, others of the same length. */
    private static byte[] with(byte[] jar, byte[] was, byte[] is) {
        byte[] changed = jar.clone();
        for (int i = 0; i + was.length <= jar.length; i++) {
            if (Arrays.equals(jar, i, i + was.length, was, 0, was.length)) {
                System.arraycopy(is, 0, changed, i, is.length);
            }
        }
        return changed;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void anHonestJarIsSound() throws IOException {
        for (String name : List.of("a/b/C.class", "..a/b..", "a...b", "a\\b", "aa:b", "META-INF/a/B.SF", "a/")) {
            assertEquals("", fault(jar(name, new byte[0])), name);
        }
    }

    @Test
    void whatIsNoJarIsLeftToTheFramework() throws IOException {
        assertEquals("", fault(bytes("no jar")));
        assertEquals(
                "",
                new JarLook(SettingsFolder.of(new String[] {"--settings", folder.toString()}))
                        .apply(folder.resolve("nowhere.jar").toFile()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../a", "a/../../b", "a/..", "..", "/a", "\\a", "..\\a", "a\\..\\..\\b", "C:\\a", "c:/a", "z:a"})
    void aNameThatLeadsOutIsTold(String name) throws IOException {
        assertEquals("leads-out", fault(jar(name, bytes("x"))));
    }

    @Test
    void twoFilesOfOneNameAreTold() throws IOException {
        assertEquals("", fault(jar("other.txt", bytes("x"))));
        byte[] doubled = with(jar("other.txt", bytes("x")), bytes("other.txt"), bytes("first.txt"));
        assertEquals("doubled", fault(doubled));
    }

    @ParameterizedTest
    @ValueSource(strings = {"META-INF/MANIFEST.MF", "a/messages.properties", "OSGI-INF/a.XML", "t.json"})
    void aTextOfMoreThanAMegabyteIsTold(String name) throws IOException {
        assertEquals("", fault(jar(name, new byte[MEGABYTE])));
        assertEquals("too-much", fault(jar(name, new byte[MEGABYTE + 1])));
        assertEquals("", fault(jar(name + ".bin", new byte[MEGABYTE + 1])));
    }

    @Test
    void moreThanAHundredMegabytesAreTold() throws IOException {
        assertEquals("", fault(jar("a", new byte[100 * MEGABYTE - "first".length()])));
        assertEquals("too-much", fault(jar("a", new byte[100 * MEGABYTE - "first".length() + 1])));
    }

    @Test
    void moreFilesThanAPlainJarHoldsAreTold() throws IOException {
        assertEquals("", fault(files(65_535)));
        assertEquals("too-much", fault(files(65_536)));
    }

    private static byte[] files(int count) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (int i = 0; i < count; i++) {
                zip.putNextEntry(new ZipEntry("f" + i));
            }
        }
        return bytes.toByteArray();
    }

    @Test
    void aFileThatIsNotWhatWasPackedIsTold() throws IOException {
        byte[] random = new byte[1000];
        new java.util.Random(1).nextBytes(random); // does not pack, so that it stands there as it is
        byte[] jar = jar("a", random);
        assertEquals("", fault(jar));
        byte[] some = Arrays.copyOfRange(random, 500, 520);
        byte[] others = some.clone();
        others[3] ^= 1;
        assertEquals("damaged", fault(with(jar, some, others)), "one bit");
        assertEquals("damaged", fault(withSize(jar, 999)), "longer than its directory says");
        assertEquals("damaged", fault(withSize(jar, 1001)), "shorter than its directory says");
    }

    /** The directory says another size of the file of 1000 bytes. */
    private static byte[] withSize(byte[] jar, int size) {
        return with(jar, new byte[] {(byte) 0xe8, 3, 0, 0}, new byte[] {(byte) size, (byte) (size >> 8), 0, 0});
    }

    @Test
    void aSignatureThatNobodyGaveIsTold() throws IOException {
        for (String name :
                List.of("META-INF/A.SF", "meta-inf/a.sf", "META-INF/A.RSA", "META-INF/A.EC", "META-INF/SIG-A")) {
            assertEquals("seal", fault(jar(name, bytes("Signature-Version: 1.0\n\n"))), name);
        }
    }

    @Test
    void theBundleItWouldBecomeAPartOfIsReadOffTheManifest() throws IOException {
        assertEquals("system.bundle", host("Fragment-Host: system.bundle; extension:=framework\n"));
        assertEquals("com.example.buckles", host("A: b\r\nfragment-host: com.exam\r\n ple.buckles\r\nC: d\r\n"));
        assertEquals("", host("Bundle-Name: no Fragment-Host: a\n"));
        assertEquals("", host("Bundle-Name: a\n Fragment-Host: a\n"));
        Path plain = Files.write(folder.resolve("plain.jar"), jar("a", bytes("a")));
        assertEquals("", JarLook.host(plain.toFile()));
        assertEquals("", JarLook.host(folder.resolve("nowhere.jar").toFile()));
    }

    private String host(String headers) throws IOException {
        Path jar = folder.resolve("part.jar");
        Files.write(jar, jar("META-INF/MANIFEST.MF", bytes("Manifest-Version: 1.0\n" + headers + "\n")));
        return JarLook.host(jar.toFile());
    }
}
