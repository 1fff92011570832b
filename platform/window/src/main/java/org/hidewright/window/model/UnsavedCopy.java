package org.hidewright.window.model;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.hidewright.core.store.Fingerprint;
import org.hidewright.core.store.WholeFile;

/**
 * A copy of what is not saved yet, for the case that the program ends before it is. It lies in the maker’s folder of settings
 * under a name that is made of the project’s path, and is gone once the project is saved or closed. What the last time has left
 * is set aside first, so that neither new changes nor leaving the project can cost it: it goes when the maker says so.
 */
public final class UnsavedCopy {
    private static final int NAME_LENGTH = 24;

    private final Path copy;
    private final Path aside;
    /** What is to be kept; null where nothing is. */
    private String wanted;

    /** @param settings the maker’s folder of settings; need not be there */
    public UnsavedCopy(Path settings, Path project) {
        String path = project.toAbsolutePath().normalize().toString();
        String name =
                Fingerprint.of(path.getBytes(StandardCharsets.UTF_8)).sha256().substring(0, NAME_LENGTH);
        Path folder = settings.resolve("unsaved");
        this.copy = folder.resolve(name + ".json");
        this.aside = folder.resolve(name + ".left.json");
    }

    /** Says what is to be kept; {@link #write} does it, on whatever thread. */
    public synchronized void want(String text) {
        wanted = text;
    }

    /** Writes what is to be kept, if anything still is: what was saved or let go meanwhile is not. */
    public synchronized void write() throws IOException {
        if (wanted != null) {
            Files.createDirectories(copy.toAbsolutePath().getParent());
            WholeFile.write(copy, wanted.getBytes(StandardCharsets.UTF_8));
        }
    }

    /**
     * What was left unsaved, if it is another text than that of the file; set aside until {@link #dropLeft}. Of an older one
     * that nobody has said anything about, the newer takes the place.
     */
    public synchronized Optional<String> left(String saved) throws IOException {
        if (Files.isRegularFile(copy)) {
            if (Files.readString(copy).equals(saved)) {
                drop();
            } else {
                Files.move(copy, aside, StandardCopyOption.REPLACE_EXISTING);
            }
        }
        return Files.isRegularFile(aside)
                ? Optional.of(Files.readString(aside)).filter(text -> !text.equals(saved))
                : Optional.empty();
    }

    /** Takes away what was left, once it is taken over or let go. */
    public void dropLeft() throws IOException {
        Files.deleteIfExists(aside);
    }

    /** Takes the copy away: nothing is to be kept. */
    public synchronized void drop() throws IOException {
        wanted = null;
        Files.deleteIfExists(copy);
    }
}
