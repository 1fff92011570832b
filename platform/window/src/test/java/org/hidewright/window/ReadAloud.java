package org.hidewright.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.hidewright.window.EveryState.Setting;

/**
 * A program of its own: walks through every state of the window and writes down what the accessibility tree holds there, as a
 * screen reader gets it over its bus. {@link ScreenReaderTest} starts it with a bus to itself.
 */
final class ReadAloud {
    private ReadAloud() {}

    /** Arguments: a folder to work in, the reader of the tree, the file for what was read. */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        Path reader = Path.of(args[1]);
        StringBuilder all = new StringBuilder();
        EveryState.walk(folder, new Setting(Locale.ENGLISH, false, 100), (real, state) -> {
            Path tree = Files.createTempFile(folder, "tree", ".txt");
            Process reading = new ProcessBuilder("/usr/bin/python3", reader.toString())
                    .redirectOutput(tree.toFile())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            real.until(() -> !reading.isAlive());
            if (reading.exitValue() != 0) {
                throw new IOException("the tree could not be read in the state " + state);
            }
            Files.readString(tree)
                    .lines()
                    .forEach(line -> all.append(state).append('\t').append(line).append('\n'));
        });
        Files.writeString(Path.of(args[2]), all.toString(), StandardCharsets.UTF_8);
        System.exit(0);
    }
}
