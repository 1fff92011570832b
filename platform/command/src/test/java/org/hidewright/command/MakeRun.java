package org.hidewright.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hidewright.command.kit.Strap;
import org.junit.jupiter.api.io.TempDir;

/** A project of slips of the kit made into its packet, in a folder of its own. */
abstract class MakeRun {
    static final String QUESTIONS =
            "'thickness': '2 mm', 'core': {'flat-ring': {'inside': 20}}, 'edge': {'bevel': 1}," + " 'sections': []";

    final Terminal terminal = new Terminal(new Strap());

    @TempDir
    Path folder;

    String project(String head, String slips) throws Exception {
        Path file = folder.resolve("project.json");
        Files.writeString(
                file, ("{'hidewright': 1, 'name': 'Kit'" + head + ", 'slips': [" + slips + "]}").replace('\'', '"'));
        return file.toString();
    }

    static String slip(String id, String questions) {
        return "{'id': '" + id + "', 'calculator': 'kit-strap', 'questions': {" + questions + "}}";
    }

    int make(String project, String... more) {
        String[] arguments = new String[5 + more.length];
        System.arraycopy(
                new String[] {
                    "make", project, "--into", folder.resolve("out/deep").toString(), "--date=2026-03-01"
                },
                0,
                arguments,
                0,
                5);
        System.arraycopy(more, 0, arguments, 5, more.length);
        return terminal.run(arguments);
    }

    static List<String> names(Path folder) throws Exception {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
