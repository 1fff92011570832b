package org.hidewright.addons;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;

/**
 * The file that says what is turned off, a line {@code off NAME} for each bundle. The launcher reads it before anything
 * else is there; it is written here. Lines that say something else are somebody’s own and stay.
 */
final class Choices {
    private static final String OFF = "off ";
    private static final String FIRST_LINE = "# Bundles that are turned off. Changed by: hidewright addons off|on NAME";

    private static final String BETWEEN_LINES = "(?<=\n)|(?<=\r)(?!\n)";
    private static final String ENDED = "(?s).*[\r\n]";

    private final Path file;

    Choices(Path file) {
        this.file = file;
    }

    /** The bundles that are turned off; none where the file cannot be read, as at a start. */
    Set<String> off() {
        try {
            return Files.exists(file)
                    ? read().stream()
                            .filter(line -> line.startsWith(OFF))
                            .map(line -> line.substring(OFF.length()).strip())
                            .collect(Collectors.toSet())
                    : Set.of();
        } catch (IOException e) {
            return Set.of();
        }
    }

    void turn(String id, boolean on) throws FileTrouble {
        try {
            List<String> lines = new ArrayList<>(Files.exists(file) ? read() : List.of(FIRST_LINE + "\n"));
            List<String> before = List.copyOf(lines);
            lines.removeIf(line ->
                    line.startsWith(OFF) && line.substring(OFF.length()).strip().equals(id));
            if (!on) {
                if (!lines.isEmpty() && !lines.get(lines.size() - 1).matches(ENDED)) {
                    lines.add("\n");
                }
                lines.add(OFF + id + "\n");
            }
            if (!lines.equals(before)) {
                Files.createDirectories(file.getParent());
                WholeFile.write(file, String.join("", lines).getBytes(StandardCharsets.ISO_8859_1));
            }
        } catch (IOException e) {
            throw Trouble.notChanged(file, e);
        }
    }

    /** The lines that the launcher reads, each with its end; with this encoding every byte comes back as it was. */
    private List<String> read() throws IOException {
        String text = Files.readString(file, StandardCharsets.ISO_8859_1);
        return text.isEmpty() ? List.of() : List.of(text.split(BETWEEN_LINES));
    }
}
