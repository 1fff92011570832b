package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import org.osgi.framework.Constants;

/**
 * Which bundles the maker has turned off: a text file with a line {@code off NAME} for each. A line that begins with
 * {@code #} is a remark. Any other is told, since a bundle that somebody means to have turned off would be started.
 */
final class Choices {

    private static final String OFF = "off ";
    private static final String REMARK = "#";

    private final Set<String> off;
    private final List<Integer> nonsense;

    private Choices(Set<String> off, List<Integer> nonsense) {
        this.off = off;
        this.nonsense = nonsense;
    }

    /**
     * Reads the file; where there is none, nothing is turned off. Names are ASCII, so that no byte can be unreadable.
     *
     * @throws IOException if it is there and cannot be read
     */
    static Choices read(File file) throws IOException {
        if (!file.exists()) {
            return none();
        }
        Set<String> off = new HashSet<>();
        List<Integer> nonsense = new ArrayList<>();
        int number = 0;
        for (String line : Files.readAllLines(file.toPath(), StandardCharsets.ISO_8859_1)) {
            number++;
            String name = line.startsWith(OFF) ? line.substring(OFF.length()).strip() : "";
            if (isName(name)) {
                off.add(name);
            } else if (!line.isBlank() && !line.startsWith(REMARK)) {
                nonsense.add(number);
            }
        }
        return new Choices(off, nonsense);
    }

    private static boolean isName(String name) {
        for (int i = 0; i < name.length(); i++) {
            if (name.charAt(i) <= ' ' || name.charAt(i) > '~') {
                return false;
            }
        }
        return !name.isEmpty();
    }

    static Choices none() {
        return new Choices(Set.of(), List.of());
    }

    /** The numbers of the lines that say nothing, counted from one. */
    List<Integer> nonsense() {
        return nonsense;
    }

    /** Jars are looked into only where something is turned off at all. */
    boolean turnedOff(File jar) {
        return !off.isEmpty() && off.contains(symbolicName(jar));
    }

    private static String symbolicName(File jar) {
        try (JarFile file = new JarFile(jar, false)) {
            Manifest manifest = file.getManifest();
            String name =
                    manifest == null ? null : manifest.getMainAttributes().getValue(Constants.BUNDLE_SYMBOLICNAME);
            return name == null ? "" : name.split(";", 2)[0].strip();
        } catch (IOException unreadable) {
            return ""; // told when it is to be started
        }
    }
}
