package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody who has never been here types every command of the author’s guide as it stands, one after another, in a home of their own. */
class AuthorsGuideIT {
    private static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();
    private static final Pattern AT = Pattern.compile("(?m)^(?:block \\d+|done) at (\\d+)$");

    @TempDir
    Path scratch;

    @Test
    void everyCommandOfTheGuideDoesWhatItSays() throws Exception {
        String guide = Files.readString(ROOT.resolve("docs/authors-guide.md"));
        assertEquals(List.of(), GuideCommands.unmarked(guide), "blocks of commands begin with ```sh");
        List<String> blocks = GuideCommands.in(guide);
        assertTrue(blocks.size() >= 7, blocks.toString());
        Path home = Files.createDirectories(scratch.resolve("home"));
        String said = run(home, GuideCommands.script(blocks));
        System.out.println(times(blocks, said));

        Path bench = home.resolve("bench");
        isPacket(bench.resolve("out/pen-case"), "Pen case", "patterns-pen-case.svg");
        isPacket(bench.resolve("net.example.walks.lens-tag/out/lens-tag"), "Lens tag", "patterns-lens-tag.svg");
        // The sleeve of a jar of 65 mm: pi * (65 + 1 + 2) + 12, up to half millimetres
        assertTrue(said.contains("226.0\u00a0mm"), said);
        assertTrue(Files.readString(bench.resolve("jar-sleeve/ask.json")).contains("\"id\": \"jar-sleeve\""));
        // The example of the template in Java: 2.5 times a hole of 4 mm from the upper edge
        String card = PrintedText.of(bench.resolve("net.example.walks.lens-tag/out/lens-tag/job-card.pdf"));
        assertTrue(card.contains("10.0"), card);
    }

    @Test
    void whatStandsInOtherBlocksIsSeen() {
        String guide =
                "Text.\n\n```sh\ncd there\nmvn verify\n```\n\n```\n./hidewright explain\nText\n```\n\n```json\n{}\n```\n";
        assertEquals(List.of("cd there\nmvn verify\n"), GuideCommands.in(guide));
        assertEquals(List.of("./hidewright explain"), GuideCommands.unmarked(guide));
        assertEquals(2, GuideCommands.commands("cd there\n\n# and then\nmvn verify\n"));
    }

    private static void isPacket(Path folder, String name, String patterns) throws Exception {
        assertTrue(PrintedText.of(folder.resolve("job-card.pdf")).contains(name), name);
        assertTrue(Files.readString(folder.resolve(patterns)).contains("<path"), patterns);
        assertTrue(Files.exists(folder.resolve("patterns.pdf")), name);
    }

    /** Runs it at the root of the source tree, as the guide begins there; Maven finds what it needs without the net. */
    private String run(Path home, String script) throws Exception {
        Path tools = Files.createDirectories(scratch.resolve("tools"));
        Path mvn = Files.writeString(tools.resolve("mvn"), new StrangersMaven(scratch).asScript());
        assertTrue(mvn.toFile().setExecutable(true));
        Path log = scratch.resolve("guide.log");
        ProcessBuilder builder = new ProcessBuilder(
                        "sh",
                        Files.writeString(scratch.resolve("guide.sh"), script).toString())
                .directory(ROOT.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile());
        builder.environment().put("HOME", home.toString());
        builder.environment().put("XDG_CACHE_HOME", home.resolve(".cache").toString());
        builder.environment().put("XDG_CONFIG_HOME", home.resolve(".config").toString());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.environment().merge("PATH", tools.toString(), (path, ours) -> ours + ":" + path);
        builder.environment().keySet().removeAll(List.of("MAVEN_OPTS", "MAVEN_ARGS", "MAVEN_CONFIG", "DISPLAY"));
        Process process = builder.start();
        process.getOutputStream().close(); // nobody is there to answer a question
        if (!process.waitFor(10, TimeUnit.MINUTES)) {
            process.destroyForcibly();
        }
        String said = Files.readString(log);
        assertEquals(0, process.exitValue(), said);
        return said;
    }

    /** How long each block took, for the guide and for whoever wonders. */
    private static String times(List<String> blocks, String said) {
        List<Long> at = new ArrayList<>(AT.matcher(said)
                .results()
                .map((MatchResult line) -> Long.valueOf(line.group(1)))
                .toList());
        assertEquals(blocks.size() + 1, at.size(), said);
        StringBuilder times = new StringBuilder("The author’s guide, command by command:\n");
        for (int i = 0; i < blocks.size(); i++) {
            times.append(String.format(
                    Locale.ROOT,
                    "%6.1f s  %d commands, the last: %s%n",
                    (at.get(i + 1) - at.get(i)) / 1000.0,
                    GuideCommands.commands(blocks.get(i)),
                    blocks.get(i).strip().replaceAll("(?s).*\\n", "")));
        }
        return times.append(String.format(Locale.ROOT, "%6.1f s  all", (at.get(blocks.size()) - at.get(0)) / 1000.0))
                .toString();
    }
}
