package org.hidewright.core.store;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds what a name leads to, whether or not anything is there. */
final class LinkEnd {
    /** As many as systems follow. */
    private static final int LINKS = 40;

    private LinkEnd() {}

    /**
     * The file itself, beside which a save works. What is no plain file, a pipe for one, stays as it is named.
     *
     * @throws FileSystemLoopException if links lead round in a circle
     */
    static Path of(Path named) throws IOException {
        if (Files.exists(named) && !Files.isRegularFile(named)) {
            return named.toAbsolutePath();
        }
        Path file = named.toAbsolutePath();
        for (int i = 0; Files.isSymbolicLink(file); i++) {
            if (i == LINKS) {
                throw new FileSystemLoopException(named.toString());
            }
            file = file.resolveSibling(Files.readSymbolicLink(file));
        }
        Path folder = file.getParent();
        return folder != null && Files.isDirectory(folder) ? folder.toRealPath().resolve(file.getFileName()) : file;
    }
}
