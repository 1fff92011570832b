package org.hidewright.addons;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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
            return Files.exists(file) ? off(Files.readAllBytes(file)) : Set.of();
        } catch (IOException e) {
            return Set.of();
        }
    }

    /** The bundles that the bytes of such a file turn off. */
    static Set<String> off(byte[] bytes) {
        return lines(bytes).stream()
                .map(Choices::named)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toSet());
    }

    void turn(String id, boolean on) throws FileTrouble {
        Optional<byte[]> changed = turned(Map.of(id, on));
        if (changed.isPresent()) {
            try {
                Files.createDirectories(file.getParent());
                WholeFile.write(file, changed.get());
            } catch (IOException e) {
                throw Trouble.notChanged(file, e);
            }
        }
    }

    /**
     * What the file says once bundles are turned on and off; empty where that is what it says.
     *
     * @param to whether a bundle is on, by its id
     */
    Optional<byte[]> turned(Map<String, Boolean> to) throws FileTrouble {
        try {
            List<String> lines = new ArrayList<>(Files.exists(file) ? lines(Files.readAllBytes(file)) : List.of());
            List<String> before = List.copyOf(lines);
            Set<String> off = new TreeSet<>(to.keySet());
            off.removeIf(id -> to.get(id) || off().contains(id));
            lines.removeIf(line -> to.getOrDefault(named(line), false));
            if (before.isEmpty() && !Files.exists(file) && !off.isEmpty()) {
                lines.add(FIRST_LINE + "\n");
            }
            for (String id : off) {
                if (!lines.isEmpty() && !lines.get(lines.size() - 1).matches(ENDED)) {
                    lines.add("\n");
                }
                lines.add(OFF + id + "\n");
            }
            return lines.equals(before)
                    ? Optional.empty()
                    : Optional.of(String.join("", lines).getBytes(StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            throw Trouble.notChanged(file, e);
        }
    }

    /** The bundle that a line turns off; empty where it turns off none. */
    private static String named(String line) {
        return line.startsWith(OFF) ? line.substring(OFF.length()).strip() : "";
    }

    /** The lines that the launcher reads, each with its end; with this encoding every byte comes back as it was. */
    private static List<String> lines(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        return text.isEmpty() ? List.of() : List.of(text.split(BETWEEN_LINES));
    }
}
