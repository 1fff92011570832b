package org.hidewright.addons;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;

/**
 * The file that says what is turned off, a line {@code off NAME} for each bundle. The launcher reads it before anything
 * else is there; it is written here. Lines that say something else are somebody’s own and stay.
 */
final class Choices {
    private static final String OFF = "off ";
    private static final String FIRST_LINE = "# Bundles that are turned off. Changed by: hidewright addons off|on NAME";

    private final Path file;

    Choices(Path file) {
        this.file = file;
    }

    void turn(String id, boolean on) throws FileTrouble {
        try {
            List<String> lines = new ArrayList<>(Files.exists(file) ? read() : List.of(FIRST_LINE));
            List<String> before = List.copyOf(lines);
            lines.removeIf(line ->
                    line.startsWith(OFF) && line.substring(OFF.length()).strip().equals(id));
            if (!on) {
                lines.add(OFF + id);
            }
            if (!lines.equals(before)) {
                Files.createDirectories(file.getParent());
                WholeFile.write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.ISO_8859_1));
            }
        } catch (IOException e) {
            throw Trouble.notChanged(file, e);
        }
    }

    /** Read as the launcher does; with this encoding every byte comes back as it was. */
    private List<String> read() throws IOException {
        return Files.readAllLines(file, StandardCharsets.ISO_8859_1);
    }
}
