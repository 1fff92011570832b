package org.hidewright.core.store;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Held while a file is saved, so that two savers do not cross. It binds only those who ask for it.
 *
 * <p>The lock is one of the system on a file beside, which ends with the program that holds it, however that ends: a lock
 * file that is left over blocks nobody and is taken away by the next who locks. Where the file system knows no locks a
 * save goes on without one.
 */
final class SaveLock implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(5);
    private static final long PAUSE_MILLIS = 10;
    private static final long MOST_BYTES = 1 << 20;
    /** Past every byte of the file, since some systems keep others from reading what is locked. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    /** One program shares its locks, so what it holds itself has to be known besides. */
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final Path lock;
    private final FileChannel channel;

    private SaveLock(Path file, Path lock, FileChannel channel) {
        this.file = file;
        this.lock = lock;
        this.channel = channel;
    }

    /**
     * Waits a few seconds at most.
     *
     * @throws HeldByAnother if another save holds it for longer
     * @throws IOException if the lock file cannot be made
     */
    static SaveLock take(Path file) throws IOException {
        return take(file, PATIENCE);
    }

    static SaveLock take(Path file, Duration patience) throws IOException {
        Path beside = Beside.lock(file).toAbsolutePath();
        Path lock = beside.getParent().toRealPath().resolve(beside.getFileName()); // one name for one lock
        long until = System.nanoTime() + patience.toNanos();
        while (true) {
            if (HELD_HERE.add(lock)) {
                FileChannel channel = null;
                try {
                    channel = locked(lock);
                } finally {
                    if (channel == null) {
                        HELD_HERE.remove(lock);
                    }
                }
                if (channel != null) {
                    return new SaveLock(file, lock, channel);
                }
            }
            if (System.nanoTime() - until >= 0) {
                throw new HeldByAnother(file);
            }
            pause();
        }
    }

    private static FileChannel locked(Path lock) throws IOException {
        FileChannel channel;
        try {
            channel = FileChannel.open(
                    lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        } catch (AccessDeniedException e) {
            if (Files.isRegularFile(lock, LinkOption.NOFOLLOW_LINKS) && isGoneOrHeld(lock)) {
                return null;
            }
            throw e;
        }
        boolean ours = false;
        try {
            ours = locks(channel) && isStillAt(lock, channel);
            return ours ? channel : null;
        } finally {
            if (!ours) {
                channel.close();
            }
        }
    }

    /**
     * Somebody else's lock file, in a folder that several share, can be left over too. It is taken away while it is locked
     * for reading, which nobody can who finds it held; by its size it is still the one that was locked.
     */
    static boolean isGoneOrHeld(Path lock) throws IOException {
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
            if (channel.tryLock(LOCKED_BYTE, 1, true) != null && channel.size() == Files.size(lock)) {
                Files.deleteIfExists(lock);
            }
            return true;
        } catch (NoSuchFileException e) {
            return true;
        } catch (AccessDeniedException e) {
            return false;
        }
    }

    private static boolean locks(FileChannel channel) {
        try {
            FileLock held = channel.tryLock(LOCKED_BYTE, 1, false);
            return held != null;
        } catch (OverlappingFileLockException e) {
            return false; // by a second name of its folder, as a mount can give it
        } catch (IOException e) {
            return true; // no locks on this file system: what was opened is still compared before it is replaced
        }
    }

    /**
     * Whoever held the lock before may have taken its file away after we opened it; then others lock another file. A size
     * that is ours alone tells, and it is asked by name: to open the file again and close it would give the lock away on
     * POSIX systems.
     */
    private static boolean isStillAt(Path lock, FileChannel channel) throws IOException {
        long size = ThreadLocalRandom.current().nextLong(2, MOST_BYTES);
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(new byte[1]), size - 1);
        try {
            return Files.size(lock) == size;
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    private static void pause() throws InterruptedIOException {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("interrupted");
        }
    }

    /** The file that may be saved under it. */
    Path file() {
        return file;
    }

    @Override
    public void close() {
        try (channel) {
            Files.deleteIfExists(lock);
        } catch (IOException e) {
            // A lock file that stays is taken over by the next save.
        } finally {
            HELD_HERE.remove(lock);
        }
    }
}
