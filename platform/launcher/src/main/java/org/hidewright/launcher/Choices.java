package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.Set;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import org.osgi.framework.Constants;

/**
 * Which bundles the maker has turned off: a text file with a line {@code off NAME} for each. Other lines are for
 * others to read.
 */
final class Choices {

    private static final String OFF = "off ";

    private final Set<String> off;

    private Choices(Set<String> off) {
        this.off = off;
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
        for (String line : Files.readAllLines(file.toPath(), StandardCharsets.ISO_8859_1)) {
            if (line.startsWith(OFF)) {
                off.add(line.substring(OFF.length()).strip());
            }
        }
        return new Choices(off);
    }

    static Choices none() {
        return new Choices(Set.of());
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
