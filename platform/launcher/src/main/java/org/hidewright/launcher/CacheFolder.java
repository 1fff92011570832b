package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The folder Felix keeps its notes in between starts: one for each place the program lies in, taken by one start at a
 * time. A start that finds it taken, or cannot write to it, uses a temporary folder that is deleted when it ends.
 */
final class CacheFolder implements AutoCloseable {

    private final File folder;
    private final RandomAccessFile lock;
    private final String contents;

    private CacheFolder(File folder, RandomAccessFile lock, String contents) {
        this.folder = folder;
        this.lock = lock;
        this.contents = contents;
    }

    /**
     * Takes the cache for a program. Its notes are good as long as the Java, the place, and the path, size and time of
     * every bundle are the same, and what the maker has said of add-ons at all. What is turned off is no bundle of a start, so that a changed choice makes them stale.
     */
    static CacheFolder take(File caches, LineUp lineUp) throws IOException {
        String contents = describe(lineUp);
        File folder =
                new File(caches, Integer.toHexString(lineUp.home().folder().hashCode()));
        RandomAccessFile lock = lock(folder);
        if (lock == null) {
            folder = Files.createTempDirectory("hidewright").toFile();
        }
        return new CacheFolder(folder, lock, contents);
    }

    /** Where a user’s caches lie on this system. */
    static File ofUser() {
        String caches = System.getenv("XDG_CACHE_HOME");
        if (caches == null || caches.isEmpty()) {
            caches = System.getenv("LOCALAPPDATA");
        }
        return caches == null || caches.isEmpty()
                ? new File(System.getProperty("user.home"), ".cache/hidewright")
                : new File(caches, "hidewright");
    }

    File felix() {
        return new File(folder, "felix");
    }

    /** Whether what Felix noted last time is about these very bundles. */
    boolean isCurrent() {
        try {
            return note().exists() && contents.equals(Files.readString(note().toPath()));
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** Says that Felix is about to write anew: until {@link #keep} its notes are no use to anyone. */
    void renew() throws IOException {
        Files.deleteIfExists(note().toPath());
    }

    /**
     * Says that Felix’s notes are complete, and keeps what the system bundle turned out to offer.
     *
     * @param soundAddOns paths of the add-ons that were found sound
     */
    void keep(SystemExports exports, Set<String> soundAddOns) throws IOException {
        Files.write(sound().toPath(), soundAddOns);
        Files.writeString(exports().toPath(), exports.toString());
        Files.writeString(note().toPath(), contents);
    }

    /** What the system bundle offers, when {@link #isCurrent}. */
    SystemExports systemExports() throws IOException {
        return SystemExports.read(Files.readString(exports().toPath()));
    }

    /** Paths of the add-ons that were found sound, when {@link #isCurrent}: to look a long one over takes a while. */
    Set<String> soundAddOns() {
        try {
            return new HashSet<>(Files.readAllLines(sound().toPath()));
        } catch (IOException unreadable) {
            return new HashSet<>();
        }
    }

    @Override
    public void close() throws IOException {
        if (lock == null) {
            delete(folder.toPath());
        } else {
            lock.close();
        }
    }

    private File note() {
        return new File(folder, "contents");
    }

    private File sound() {
        return new File(folder, "sound-addons");
    }

    private File exports() {
        return new File(folder, "system-exports");
    }

    private static RandomAccessFile lock(File folder) throws IOException {
        RandomAccessFile file = null;
        try {
            if (folder.isDirectory() || folder.mkdirs()) {
                file = new RandomAccessFile(new File(folder, "lock"), "rw");
                FileLock taken = file.getChannel().tryLock();
                if (taken != null) {
                    return file;
                }
            }
        } catch (IOException | OverlappingFileLockException notOurs) {
            // an unwritable or taken cache is no reason not to start
        }
        if (file != null) {
            file.close();
        }
        return null;
    }

    private static String describe(LineUp lineUp) {
        StringBuilder text = new StringBuilder(2000);
        text.append(System.getProperty("java.vm.version")).append('\n');
        text.append(lineUp.home().folder()).append('\n');
        for (File library : ProgramHome.jarsIn(lineUp.home().libraries())) {
            describe(text, 0, library);
        }
        for (BundleFile bundle : lineUp.files()) {
            describe(text, bundle.level(), bundle.jar());
        }
        describe(text, 0, lineUp.settings().trust());
        describe(text, 0, lineUp.settings().agreed());
        return text.toString();
    }

    private static void describe(StringBuilder text, int level, File jar) {
        text.append(level).append(' ').append(jar).append(' ');
        text.append(jar.length()).append(' ').append(jar.lastModified()).append('\n');
    }

    private static void delete(Path folder) throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            Files.deleteIfExists(path);
        }
    }
}
