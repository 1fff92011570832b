package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.SourceVersion;
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

    /** Words that are no names: Java Language Specification 17, 3.9; which they are is held to the compiler's own list. */
    @Test
    void aPackageThatWouldNotCompileIsRefused() throws Exception {
        List<String> words = Files.readString(SCRIPT)
                .lines()
                .filter(line -> line.startsWith("words='"))
                .flatMap(line -> Stream.of(line.replaceAll("^words='|'$", "").split("\\|")))
                .toList();
        assertEquals(53, words.size());
        for (String word : words) {
            assertTrue(SourceVersion.isKeyword(word), word);
        }
        for (String wrong : List.of(
                "Net.my-walks",
                "net.my-walks",
                "net.Walks",
                "net..walks",
                "net.walks.",
                "net.2walks",
                "net.new.walks",
                "int",
                "java.walks",
                "net.w\u00e4lder",
                "net.walks/x",
                "net walks")) {
            assertEquals(
                    new Said(
                            64,
                            "start: “" + wrong
                                    + "” is no package. Write lower-case words of letters and digits joined by dots,"
                                    + " none of them a word of Java itself such as new, as in net.example.walks.\n"),
                    start("calculator", wrong, "lens-tag"));
            assertFalse(Files.exists(folder.resolve(wrong + ".lens-tag")));
        }
        for (String right : List.of("walks", "net.news.int8", "net.my_walks.v2", "javas.walks")) {
            assertEquals(0, start("calculator", right, "lens-tag").code(), right);
        }
    }

    /** Each name that a class made here imports, has inside or takes from the language. */
    @Test
    void anIdWhoseClassWouldTakeANameFromWhatIsMadeIsRefused() throws Exception {
        Path made = Path.of("../../samples/archetype/src/main/resources/archetype-resources/src");
        Set<String> taken = new TreeSet<>(Set.of("Object", "Record"));
        for (String file : List.of(
                "main/java/__className__.java",
                "test/java/__className__Test.java",
                "test/java/__className__ContractTest.java")) {
            String plain = Files.readString(made.resolve(file))
                    .replaceAll("(?s)[$]\\{className}\\w*|import static [^;]*|/\\*.*?\\*/|//[^\n]*|\"[^\"\n]*\"", "");
            Pattern.compile(
                            "(?<![\\w$]|[A-Z]\\w{1,20}\\.)[A-Z][a-z]\\w*(?![\\w]|\\()|(?<=record )\\w+|(?<=new |@)[A-Z]\\w+")
                    .matcher(plain)
                    .results()
                    .forEach(name -> taken.add(name.group()));
        }
        assertTrue(
                taken.containsAll(List.of("Length", "Override", "BundleContract", "Made", "Math")), taken.toString());
        for (String name : taken) {
            String id = name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
            assertEquals(
                    new Said(
                            64,
                            "start: “" + id + "” would make a class " + name
                                    + ", and what is made here needs that name for something else. Say more of it, such as my-"
                                    + id + ".\n"),
                    start("template", "net.example.walks", id));
            assertEquals(0, start("template", "net.example.walks", "my-" + id).code());
        }
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
