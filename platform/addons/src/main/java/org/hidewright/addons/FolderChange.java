package org.hidewright.addons;

import java.io.File;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hidewright.core.store.FileTrouble;

/**
 * A change of what is installed: prepared whole beside it, made true by one new name, then done to its end by what the launcher
 * gives for that, at once or, when the program is killed, by the next start. What was there before is kept whole.
 *
 * <p>How a change lies there is told at the launcher’s {@code DecidedChange}.
 */
final class FolderChange {
    private static final String JAR = ".jar";

    private static final int PATIENCE = 500;
    private static final long PAUSE_MS = 10;

    private final Path settings;
    private final Function<File, String> finish;
    private final Watch watch;

    /** Sees each deed before it is done. */
    interface Watch {
        void before() throws IOException;
    }

    FolderChange(Path settings, Function<File, String> finish) {
        this(settings, finish, () -> {});
    }

    FolderChange(Path settings, Function<File, String> finish, Watch watch) {
        this.settings = settings;
        this.finish = finish;
        this.watch = watch;
    }

    /**
     * What is to be.
     *
     * @param come bytes of jars by their names
     * @param go names of jars that go
     * @param choices what the file of choices says from then on; empty where it stays
     */
    record Wanted(Map<String, byte[]> come, List<String> go, Optional<byte[]> choices) {
        boolean isNothing() {
            return come.isEmpty() && go.isEmpty() && choices.isEmpty();
        }
    }

    /** @throws FileTrouble if it cannot be made; then all is as it was, as far as the disk lets it be */
    void make(Wanted wanted) throws FileTrouble {
        synchronized (FolderChange.class) { // locks of files keep other programs away, and no other thread of this one
            Path at = settings.resolve("addons");
            try {
                Files.createDirectories(at);
                at = settings;
                try (FileChannel lock = lock()) {
                    end();
                    at = settings.resolve("addons-change.part");
                    prepare(wanted, at);
                    decide(at);
                    at = settings.resolve("addons");
                    end();
                    lock.force(false);
                }
            } catch (IOException e) {
                throw Trouble.notChanged(at, e);
            }
        }
    }

    /** Held until the channel is closed, however the program ends. Where a file system knows no locks it goes on without. */
    private FileChannel lock() throws IOException {
        Path file = settings.resolve("addons.lock");
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            for (int i = 0; channel.tryLock() == null; i++) {
                if (i == PATIENCE) {
                    channel.close();
                    throw new FileSystemException(file.toString(), null, "another program is at it");
                }
                Thread.sleep(PAUSE_MS);
            }
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
            channel.close();
            throw new InterruptedIOException(file.toString());
        } catch (FileSystemException held) {
            throw held;
        } catch (IOException noLocks) {
            return channel;
        }
        return channel;
    }

    private void prepare(Wanted wanted, Path part) throws IOException {
        delete(part);
        Path addOns = settings.resolve("addons");
        Path before = folder(part, "before");
        for (Path jar : jarsIn(addOns)) {
            write(before.resolve(jar.getFileName()), Files.readAllBytes(jar));
            Files.setLastModifiedTime(before.resolve(jar.getFileName()), Files.getLastModifiedTime(jar));
        }
        Path come = folder(part, "come");
        Path fresh = folder(part, "new");
        for (Map.Entry<String, byte[]> jar : wanted.come().entrySet()) {
            write(come.resolve(jar.getKey()), jar.getValue());
            if (!Files.exists(addOns.resolve(jar.getKey()))) {
                write(fresh.resolve(jar.getKey()), new byte[0]);
            }
        }
        Path go = folder(part, "go");
        for (String jar : wanted.go()) {
            write(go.resolve(jar), new byte[0]);
        }
        if (wanted.choices().isPresent()) {
            Path choices = settings.resolve("addons.txt");
            write(before.resolve("addons.txt"), Files.exists(choices) ? Files.readAllBytes(choices) : new byte[0]);
            write(part.resolve("addons.txt"), wanted.choices().get());
        }
        for (Path folder : List.of(before, come, fresh, go, part)) {
            force(folder);
        }
    }

    private void decide(Path part) throws IOException {
        watch.before();
        Files.move(part, settings.resolve("addons-change"), StandardCopyOption.ATOMIC_MOVE);
        force(settings);
    }

    /** Does what is decided to its end. Where that fails, what was done of it is undone. */
    private void end() throws IOException {
        String kept = finish.apply(settings.toFile());
        if (kept.isEmpty()) {
            return;
        }
        Path change = settings.resolve("addons-change");
        if (Files.exists(change.resolve("before"))) {
            write(change.resolve("undo"), new byte[0]);
            force(change);
            String left = finish.apply(settings.toFile()); // where this fails as well the next start tries again
            throw new IOException(left.isEmpty() ? kept : kept + ", " + left);
        }
    }

    private Path folder(Path in, String name) throws IOException {
        watch.before();
        return Files.createDirectories(in.resolve(name));
    }

    /** On the disk before it counts. */
    private void write(Path file, byte[] bytes) throws IOException {
        watch.before();
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            List<Path> deepestFirst;
            try (Stream<Path> all = Files.walk(folder)) {
                deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path path : deepestFirst) {
                watch.before();
                Files.delete(path);
            }
        }
    }

    private static void force(Path folder) {
        try (FileChannel opened = FileChannel.open(folder)) {
            opened.force(true);
        } catch (IOException notHere) {
            // Windows opens no folders: its names are as safe as it keeps them
        }
    }

    private static List<Path> jarsIn(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> path.toString().endsWith(JAR) && Files.isRegularFile(path))
                    .sorted()
                    .toList();
        }
    }

    /** A jar as it was before the last change. */
    Path heldBefore(String jar) {
        return settings.resolve("addons-before").resolve(jar);
    }

    /** What was there before the last change; empty where none was made. */
    Optional<Wanted> before() throws FileTrouble {
        Path before = settings.resolve("addons-before");
        if (!Files.isDirectory(before)) {
            return Optional.empty();
        }
        try {
            Map<String, byte[]> come = new LinkedHashMap<>();
            for (Path jar : jarsIn(before)) {
                come.put(jar.getFileName().toString(), Files.readAllBytes(jar));
            }
            List<String> go = jarsIn(settings.resolve("addons")).stream()
                    .map(jar -> jar.getFileName().toString())
                    .filter(name -> !come.containsKey(name))
                    .toList();
            Path choices = before.resolve("addons.txt");
            return Optional.of(new Wanted(
                    come, go, Files.exists(choices) ? Optional.of(Files.readAllBytes(choices)) : Optional.empty()));
        } catch (IOException e) {
            throw Trouble.notRead(before, e);
        }
    }
}
