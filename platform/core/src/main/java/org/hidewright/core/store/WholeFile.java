package org.hidewright.core.store;

import java.io.IOException;
import java.nio.file.Path;

/** Writes files so that at any moment either the old or the new one is there whole. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes a file beside its place, forces it to the disk and lets it take the place in one step. Another name of what
     * was there, by a link of either kind, still leads to what was there.
     *
     * @throws IOException if it cannot be written, see {@link WriteFault}; what was there is then as it was
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        try (SaveLock lock = SaveLock.take(file);
                NewVersion version = NewVersion.write(lock.file(), bytes, Disk.REAL)) {
            version.place();
        }
    }
}
