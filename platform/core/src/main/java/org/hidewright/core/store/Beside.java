package org.hidewright.core.store;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/**
 * The names of what a save keeps beside a file {@code strap.json}: {@code strap.json.before}, the version before the last
 * save; {@code strap.json.unsaved} and {@code strap.json.broken}, what had to be put aside, with {@code -2}, {@code -3} where
 * the name is taken; and, while it lasts, {@code .strap.json.new} and {@code .strap.json.lock}.
 */
final class Beside {
    private Beside() {}

    static Path newVersion(Path file) {
        return file.resolveSibling("." + file.getFileName() + ".new");
    }

    static Path lock(Path file) {
        return file.resolveSibling("." + file.getFileName() + ".lock");
    }

    static Path previous(Path file) {
        return file.resolveSibling(file.getFileName() + ".before");
    }

    /** For a whole version that could not take the file's place. */
    static Path unsaved(Path file) {
        return free(file, ".unsaved");
    }

    /** For what is no project and stood in the place of a whole version. */
    static Path broken(Path file) {
        return free(file, ".broken");
    }

    /** Only under the lock is it still free when it is used. */
    private static Path free(Path file, String suffix) {
        Path free = file.resolveSibling(file.getFileName() + suffix);
        for (int i = 2; Files.exists(free, LinkOption.NOFOLLOW_LINKS); i++) {
            free = file.resolveSibling(file.getFileName() + suffix + "-" + i);
        }
        return free;
    }

    /** Whether a save was cut short, or is under way. */
    static boolean hasLeftovers(Path file) {
        return Files.exists(newVersion(file), LinkOption.NOFOLLOW_LINKS)
                || Files.exists(newVersion(previous(file)), LinkOption.NOFOLLOW_LINKS)
                || Files.exists(lock(file), LinkOption.NOFOLLOW_LINKS);
    }
}
