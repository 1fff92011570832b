package org.hidewright.core.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A new version of a file, whole and on the disk, but beside the file. It takes the file's place, or is put aside, or else
 * is gone when it is closed.
 */
final class NewVersion implements AutoCloseable {
    private final Path file;
    private final Path written;
    private final Disk disk;
    private boolean kept;

    private NewVersion(Path file, Path written, Disk disk) {
        this.file = file;
        this.written = written;
        this.disk = disk;
    }

    /**
     * Writes it and forces it to the disk. What an earlier save left half-written there goes first.
     *
     * @param file a file of the folder that is locked
     * @throws IOException if it cannot be written; then nothing of it is left
     */
    static NewVersion write(Path file, byte[] bytes, Disk disk) throws IOException {
        Path beside = Beside.newVersion(file);
        Files.deleteIfExists(beside);
        NewVersion version = new NewVersion(file, beside, disk);
        disk.begins(SaveStep.WRITE, file);
        boolean whole = false;
        try (FileChannel channel = disk.create(beside, Rights.toBegin(file))) {
            Rights.copy(file, beside);
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            disk.begins(SaveStep.SYNC, file);
            channel.force(true);
            whole = true;
            return version;
        } finally {
            if (!whole) {
                version.close();
            }
        }
    }

    /** Takes the file's place in one step. When this returns a loss of power does not undo it, as far as disks keep their word. */
    void place() throws IOException {
        disk.begins(SaveStep.RENAME, file);
        moveTo(file);
    }

    /** Stays beside the file under a name of its own, so that nothing of it is lost; returns where it is. */
    Path putAside() {
        Path aside = Beside.unsaved(file);
        try {
            moveTo(aside);
            return aside;
        } catch (IOException e) {
            boolean moved = kept;
            kept = true;
            return moved ? aside : written;
        }
    }

    private void moveTo(Path place) throws IOException {
        move(written, place, () -> kept = true);
    }

    /** Renames a file within its folder, over what is there, and forces the folder. */
    static void move(Path from, Path to) throws IOException {
        move(from, to, () -> {});
    }

    private static void move(Path from, Path to, Runnable moved) throws IOException {
        Path folder = to.toAbsolutePath().getParent();
        // Opened before anything is changed. Windows opens no folders, and its renames need no forcing.
        try (FileChannel opened = Rights.areKept(folder) ? FileChannel.open(folder) : null) {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
            moved.run();
            if (opened != null) {
                opened.force(true);
            }
        }
    }

    @Override
    public void close() {
        if (!kept) {
            try {
                Files.deleteIfExists(written);
            } catch (IOException e) {
                // The next who opens the file finds it and sees to it.
            }
        }
    }
}
