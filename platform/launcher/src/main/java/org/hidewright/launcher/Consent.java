package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;

/**
 * Which add-ons the maker was told of before they start for the first time: that a bundle is code with full rights. A text file
 * with a line for each, the SHA-256 of its jar and its name, written when a bundle is installed or turned on. One that was copied
 * into the folder and does not stand there waits; one that somebody signed whom the workshop has named needs no word.
 */
final class Consent implements Function<File, String> {

    private final SettingsFolder settings;

    Consent(SettingsFolder settings) {
        this.settings = settings;
    }

    /** {@link LineUp#WAITING} where a jar has to wait; empty where it may start. */
    @Override
    public String apply(File jar) {
        try {
            return agreed().contains(Seal.sha256(Files.readAllBytes(jar.toPath())))
                            || Trust.read(settings.trust()).vouchesFor(jar)
                    ? ""
                    : LineUp.WAITING;
        } catch (IOException unreadable) {
            return ""; // told when it is to be started
        }
    }

    private Set<String> agreed() {
        Set<String> agreed = new HashSet<>();
        try {
            if (settings.agreed().exists()) {
                for (String line : Files.readAllLines(settings.agreed().toPath(), StandardCharsets.ISO_8859_1)) {
                    agreed.add(line.split(" ", 2)[0].toLowerCase(Locale.ROOT));
                }
            }
        } catch (IOException unreadable) {
            // then nothing is agreed to
        }
        return agreed;
    }
}
