package org.hidewright.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Several commands in one run, so that the build can record the classes they load. The system property
 * {@code hidewright.rehearsal} names a file with one command a line, its arguments parted by tabs; an empty line is the
 * bare command, and a line that begins with {@code #} is a note.
 */
final class Rehearsal {

    private Rehearsal() {}

    /** The commands to play, or the one that was asked for when this is no rehearsal. */
    static List<String[]> commands(String[] asked) throws IOException {
        String file = System.getProperty("hidewright.rehearsal");
        List<String[]> commands = new ArrayList<>();
        if (file == null) {
            commands.add(asked);
        } else {
            for (String line : Files.readAllLines(Path.of(file))) {
                if (!line.startsWith("#")) {
                    commands.add(line.isEmpty() ? new String[0] : line.split("\t"));
                }
            }
        }
        return commands;
    }
}
