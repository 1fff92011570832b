package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.addons.TrustedMakers;
import org.hidewright.core.addons.TrustedMakers.Maker;
import org.junit.jupiter.api.Test;

/** Whose signature is asked for, named by certificates that keytool of the JDK makes. */
class NamedMakersTest extends MakersSettings {
    private TrustedMakers makers() {
        return addOns().makers();
    }

    private String keytool(String... arguments) throws Exception {
        String[] command = new String[arguments.length + 5];
        command[0] = Path.of(System.getProperty("java.home"), "bin", "keytool").toString();
        System.arraycopy(arguments, 0, command, 1, arguments.length);
        System.arraycopy(
                new String[] {"-keystore", folder.resolve("keys.p12").toString(), "-storepass", "no secret"},
                0,
                command,
                arguments.length + 1,
                4);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        return said;
    }

    private Path certificate(String alias, String form) throws Exception {
        keytool("-genkeypair", "-alias", alias, "-dname", "CN=Maker " + alias, "-keyalg", "EC");
        Path file = folder.resolve(alias + ".cer");
        String[] export = {"-exportcert", "-alias", alias, "-file", file.toString(), form};
        keytool(form.isEmpty() ? java.util.Arrays.copyOf(export, 5) : export);
        return file;
    }

    @Test
    void aMakerIsNamedByACertificateInEitherForm() throws Exception {
        assertEquals(List.of(), makers().all());
        Maker anna = makers().trust(certificate("anna", ""));
        Maker bert = makers().trust(certificate("bert", "-rfc"));
        assertEquals("CN=Maker anna", anna.name());
        // as keytool prints it
        String printed = keytool("-list", "-alias", "anna").replace(":", "").toLowerCase(java.util.Locale.ROOT);
        assertTrue(printed.contains(anna.fingerprint()), printed);
        assertEquals(List.of(anna, bert), makers().all());
        String text = Files.readString(settings.resolve("addons-trust.txt"));
        assertTrue(text.startsWith("# "), text);
        assertTrue(text.endsWith("\nby " + bert.fingerprint() + " CN=Maker bert\n"), text);
        makers().trust(folder.resolve("anna.cer"));
        assertEquals(text, Files.readString(settings.resolve("addons-trust.txt")), "once is enough");
    }

    @Test
    void whenNobodyIsLeftNothingIsAskedFor() throws Exception {
        Maker anna = makers().trust(certificate("anna", ""));
        Maker bert = makers().trust(certificate("bert", ""));
        assertEquals(
                "Nobody is named “carl” among those whose signature is asked for. hidewright addons trust lists them.",
                told(() -> makers().distrust("carl")));
        assertTrue(told(() -> makers().distrust("")).startsWith("Nobody is named “”"));
        assertTrue(told(() -> makers().distrust("maker")).startsWith("“maker” can be several"), "a word of both names");
        assertEquals(anna, makers().distrust("Anna"));
        assertEquals(List.of(bert), makers().all());
        assertEquals(
                bert,
                makers().distrust(bert.fingerprint()
                        .toUpperCase(java.util.Locale.ROOT)
                        .replaceAll("..(?!$)", "$0:")));
        assertEquals(List.of(), makers().all());
        assertFalse(Files.exists(settings.resolve("addons-trust.txt")));
    }

    @Test
    void otherLinesStayAndAnAmbiguousNameIsTold() throws Exception {
        Files.createDirectories(settings);
        String one = "by " + "ab".repeat(32) + "\n";
        String two = "by " + "AB".repeat(31) + "cd  somebody \n";
        Files.writeString(settings.resolve("addons-trust.txt"), "# mine\nby nonsense\n" + one + two);
        assertEquals(
                List.of(new Maker("ab".repeat(32), ""), new Maker("ab".repeat(31) + "cd", "somebody")), makers().all());
        assertTrue(told(() -> makers().distrust("ab")).startsWith("“ab” can be several of those"));
        makers().distrust("somebody");
        assertEquals("# mine\nby nonsense\n" + one, Files.readString(settings.resolve("addons-trust.txt")));
    }

    @Test
    void whatIsNoCertificateIsTold() throws IOException {
        Path text = Files.writeString(folder.resolve("a.cer"), "no certificate");
        assertTrue(told(() -> makers().trust(text)).startsWith("a.cer cannot be read as a certificate: "));
        assertTrue(told(() -> makers().trust(folder.resolve("b.cer"))).startsWith("b.cer cannot be read: "));
        Files.createDirectories(settings.resolve("addons-trust.txt"));
        assertTrue(told(() -> makers().all()).startsWith("settings/addons-trust.txt cannot be read: "));
    }
}
