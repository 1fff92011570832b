package org.hidewright.window.model;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.hidewright.core.store.Fingerprint;
import org.hidewright.core.store.WholeFile;

/**
 * A copy of what is not saved yet, for the case that the program ends before it is. It lies in the maker’s folder of settings
 * under a name that is made of the project’s path, and is gone once the project is saved or closed.
 */
public final class UnsavedCopy {
    private static final int NAME_LENGTH = 24;

    private final Path copy;

    /** @param settings the maker’s folder of settings; need not be there */
    public UnsavedCopy(Path settings, Path project) {
        String path = project.toAbsolutePath().normalize().toString();
        String name =
                Fingerprint.of(path.getBytes(StandardCharsets.UTF_8)).sha256().substring(0, NAME_LENGTH);
        this.copy = settings.resolve("unsaved").resolve(name + ".json");
    }

    /** Writes it. */
    public void keep(String text) throws IOException {
        Files.createDirectories(copy.toAbsolutePath().getParent());
        WholeFile.write(copy, text.getBytes(StandardCharsets.UTF_8));
    }

    /** What was left unsaved, if it is another text than that of the file. */
    public Optional<String> left(String saved) {
        try {
            return Files.isRegularFile(copy)
                    ? Optional.of(Files.readString(copy)).filter(text -> !text.equals(saved))
                    : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Takes it away. */
    public void drop() throws IOException {
        Files.deleteIfExists(copy);
    }
}
