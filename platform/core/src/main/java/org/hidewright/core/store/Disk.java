package org.hidewright.core.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Set;

/** What new versions are written to. Tests put a full disk in its place, and listen where a save has come to. */
interface Disk {
    Disk REAL = new Disk() {};

    /** A file that was not there before; a link that somebody laid in its place is not followed. */
    default FileChannel create(Path file, FileAttribute<?>... attributes) throws IOException {
        return FileChannel.open(file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), attributes);
    }

    /** Told before a step begins. */
    default void begins(SaveStep step, Path file) throws IOException {}
}
