package org.hidewright.window;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the maker for a file or a folder; each answer is empty where the maker thinks better of it. */
public interface FileAsking {
    /** A file to open, with one of the endings. */
    Optional<Path> toOpen(String title, String... endings);

    /**
     * A file to write.
     *
     * @param suggested its name, perhaps in a folder
     */
    Optional<Path> toSave(String title, Path suggested);

    /** A folder to write into. */
    Optional<Path> folder(String title, Path suggested);
}
