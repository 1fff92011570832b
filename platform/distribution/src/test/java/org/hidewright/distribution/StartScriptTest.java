package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the script that starts a bundle says; that what it makes works is tried where the guide is, with the real Maven. */
class StartScriptTest {
    private static final Path SCRIPT =
            Path.of("src/main/program/contract/start").toAbsolutePath();

    @TempDir
    Path folder;

    @BeforeEach
    void onASystemWithAShell() throws IOException {
        assumeTrue(File.separatorChar == '/');
        maven("for one in \"$@\"; do case $one in -DartifactId=*) mkdir \"${one#*=}\";; esac; done");
    }

    /** One that does this. */
    private void maven(String does) throws IOException {
        Path maven = Files.createDirectories(folder.resolve("bin")).resolve("mvn");
        Files.writeString(maven, "#!/bin/sh\n" + does + "\n");
        maven.toFile().setExecutable(true);
    }

    private record Said(int code, String words) {}

    private Said start(String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of("/bin/sh", SCRIPT.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder =
                new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
        builder.environment().put("PATH", folder.resolve("bin") + ":/usr/bin:/bin");
        Process process = builder.start();
        String words = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Said(process.waitFor(), words);
    }

    @Test
    void itSaysWhatWasMadeWhereAndWhatIsNext() throws Exception {
        assertEquals(new Said(0, """
                net.example.walks.lens-tag holds a template that works. What it asks and works out is in
                    src/main/java/net/example/walks/LensTag.java
                Build it and run its tests:
                    cd net.example.walks.lens-tag && mvn verify
                Its README.md says how it comes into the program.
                """), start("template", "net.example.walks", "lens-tag"));
    }

    @Test
    void aFolderThatIsThereIsLeftAsItIs() throws Exception {
        Files.createDirectory(folder.resolve("net.example.walks.lens-tag"));
        assertEquals(
                new Said(
                        73,
                        "start: net.example.walks.lens-tag is there already, and nothing was made. Take another id, or"
                                + " move it away.\n"),
                start("template", "net.example.walks", "lens-tag"));
    }

    @Test
    void aJavaThatIsTooOldIsSaidBeforeAnythingIsMade() throws Exception {
        Said tooOld = new Said(
                69,
                "start: Maven has a Java older than 17 here (mvn -version says which). Install a JDK 17, set JAVA_HOME"
                        + " to it, and start again.\n");
        for (String version : List.of("16.0.2", "1.8.0_392")) {
            maven("echo 'Apache Maven 3.9.9'; echo 'Java version: " + version
                    + ", vendor: X, runtime: /opt/17'; mkdir made");
            assertEquals(tooOld, start("template", "net.example.walks", "lens-tag"));
            assertFalse(Files.exists(folder.resolve("net.example.walks.lens-tag")));
            Files.deleteIfExists(folder.resolve("made"));
        }
        maven("echo 'Java version: 17.0.15, vendor: X'");
        assertEquals(0, start("template", "net.example.walks", "lens-tag").code());
    }

    @Test
    void whereMavenFailsThatIsSaidLast() throws Exception {
        maven("echo no network; exit 1");
        assertEquals(
                new Said(
                        70,
                        "no network\nstart: net.example.walks.lens-tag was not made; Maven says above what kept it.\n"),
                start("calculator", "net.example.walks", "lens-tag"));
        assertFalse(Files.exists(folder.resolve("net.example.walks.lens-tag")));
    }
}
