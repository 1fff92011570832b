package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A change of the add-ons that was decided and not yet done to its end, because the program was killed in the middle. It lies
 * in the folder of settings as {@value #DECIDED}, whole from the moment it has that name, and every deed of it can be
 * done twice: whoever finds it does what is left of it, before anything reads the add-ons. So a start sees the old ones or the
 * new ones, never some of each.
 *
 * <ul>
 *   <li>{@code come}: jars that come, or take the place of others of their name;
 *   <li>{@code new}: empty files with the names of those that take no other’s place;
 *   <li>{@code go}: empty files with the names of jars that go;
 *   <li>{@code addons.txt}: what is turned off from then on, where that changes;
 *   <li>{@code before}: all jars as they were, and the choices where they change; kept beside as {@value #BEFORE}, so that the
 *       change can be taken back;
 *   <li>{@code undo}: there if a deed failed, and all is to be as it was.
 * </ul>
 */
public final class DecidedChange implements Function<File, String> {

    static final String DECIDED = "addons-change";
    static final String BEFORE = "addons-before";
    static final String DONE = "addons-change.part";
    static final String LOCK = "addons.lock";

    private static final String ADD_ONS = "addons";
    private static final String CHOICES = "addons.txt";
    private static final String COME = "come";
    private static final String GO = "go";
    private static final String HELD_BEFORE = "before";
    private static final String NEW = "new";
    private static final String UNDO = "undo";
    private static final String COPY = "copy";

    private static final int PATIENCE = 500;
    private static final long PAUSE_MS = 10;

    private final Watch watch;

    /** Sees each deed before it is done. */
    public interface Watch {
        /** @throws IOException if the deed is to fail */
        void before() throws IOException;
    }

    DecidedChange() {
        this(DecidedChange::nothing);
    }

    /** A change that is watched, for tests that end it in the middle. */
    public DecidedChange(Watch watch) {
        this.watch = watch;
    }

    private static void nothing() {
        // nobody watches a start
    }

    /**
     * Does what was decided to its end. Nobody else may be at it.
     *
     * @param settings the folder of settings
     * @return what kept it from being done, in words of the system; empty where nothing did
     */
    @Override
    public String apply(File settings) {
        try {
            finish(settings.toPath());
            return "";
        } catch (IOException kept) {
            return words(kept);
        }
    }

    /** The system’s words alone would often be the name of the file, and no more. */
    private static String words(IOException kept) {
        return kept.getClass().getSimpleName() + ": " + kept.getMessage();
    }

    /** The same at a start, where another program may be at it at this moment: then that one is waited for. */
    String whenFree(File settings) {
        if (!new File(settings, DECIDED).exists()) {
            return "";
        }
        try (RandomAccessFile file = new RandomAccessFile(new File(settings, LOCK), "rw")) {
            for (int i = 0; !isLocked(file); i++) {
                if (i == PATIENCE) {
                    return LOCK;
                }
                Thread.sleep(PAUSE_MS);
            }
            return apply(settings);
        } catch (IOException kept) {
            return words(kept);
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
            return LOCK;
        }
    }

    /** Given back when the file is closed. Where a file system knows no locks it goes on without. */
    private static boolean isLocked(RandomAccessFile file) {
        try {
            return file.getChannel().tryLock() != null;
        } catch (IOException noLocks) {
            return true;
        }
    }

    private void finish(Path settings) throws IOException {
        Path change = settings.resolve(DECIDED);
        if (!Files.exists(change)) {
            return;
        }
        if (Files.exists(change.resolve(UNDO))) {
            undo(change, settings);
        } else {
            does(change, settings);
            Path before = change.resolve(HELD_BEFORE);
            if (Files.exists(before)) {
                delete(settings.resolve(BEFORE));
                move(before, settings.resolve(BEFORE));
            }
        }
        delete(settings.resolve(DONE));
        move(change, settings.resolve(DONE));
        delete(settings.resolve(DONE));
    }

    private void does(Path change, Path settings) throws IOException {
        Path addOns = settings.resolve(ADD_ONS);
        Files.createDirectories(addOns);
        for (Path jar : inside(change.resolve(COME))) {
            move(jar, addOns.resolve(jar.getFileName()));
        }
        for (Path name : inside(change.resolve(GO))) {
            watch.before();
            Files.deleteIfExists(addOns.resolve(name.getFileName()));
            watch.before();
            Files.delete(name);
        }
        if (Files.exists(change.resolve(CHOICES))) {
            move(change.resolve(CHOICES), settings.resolve(CHOICES));
        }
        force(addOns);
        force(settings);
    }

    private void undo(Path change, Path settings) throws IOException {
        Path addOns = settings.resolve(ADD_ONS);
        Path before = change.resolve(HELD_BEFORE);
        for (Path name : inside(change.resolve(NEW))) {
            watch.before();
            Files.deleteIfExists(addOns.resolve(name.getFileName()));
        }
        for (Path jar : inside(before)) {
            boolean choices = jar.endsWith(CHOICES);
            Path place = choices ? settings.resolve(CHOICES) : addOns.resolve(jar.getFileName());
            Path copy = change.resolve(COPY);
            watch.before();
            Files.copy(jar, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
            move(copy, place);
        }
    }

    private void move(Path from, Path to) throws IOException {
        watch.before();
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Deepest first; what is not there is gone already. */
    private void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            watch.before();
            Files.deleteIfExists(path);
        }
    }

    private static List<Path> inside(Path folder) {
        File[] found = folder.toFile().listFiles();
        if (found == null) {
            return List.of();
        }
        Arrays.sort(found);
        return Stream.of(found).map(File::toPath).toList();
    }

    /** As far as the system can: Windows opens no folders. */
    private static void force(Path folder) {
        try (FileChannel opened = FileChannel.open(folder)) {
            opened.force(true);
        } catch (IOException notHere) {
            // its names are as safe as the system keeps them
        }
    }
}
