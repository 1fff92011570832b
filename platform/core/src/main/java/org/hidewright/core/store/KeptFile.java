package org.hidewright.core.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;

/**
 * A text as it lay in its file when it was opened. Immutable; a save gives another one, from which the next save goes on.
 *
 * <p>A save writes the new version beside the file, forces it to the disk, keeps the version before as {@code NAME.before},
 * lets the new one take the file's place in one step and forces the folder; only then it returns. Whatever stops it, the
 * file is as it was. What another program wrote meanwhile is never written over: the maker's own version is then put
 * beside it as {@code NAME.unsaved}. A link is followed once, on opening, and what it leads to is saved.
 *
 * <p>The tests kill a saving program with SIGKILL and find the last acknowledged save, or the one in flight. That shows the
 * order of the steps, not what a loss of power does: after a kill the system still writes out all it was given. What is
 * forced survives a loss of power only if the file system and the disk keep their word, and no test here can see that.
 * Between the last look at the file and its renaming lies a moment in which a program that does not know our lock can
 * write; that version is then lost.
 */
final class KeptFile {
    private final Path file;
    private final String named;
    /** What lay in the file's place when it was opened; null if nothing did. */
    private final byte[] there;

    private final Predicate<String> whole;

    private KeptFile(Path file, String named, byte[] there, Predicate<String> whole) {
        this.file = file;
        this.named = named;
        this.there = there;
        this.whole = whole;
    }

    /**
     * A file that was opened.
     *
     * @param text what is in it, or in the better version that a save which was cut short has left
     * @param remarks what was put right
     */
    record Opened(KeptFile file, String text, List<Remark> remarks) {
        /** That its text is not what it should be; the version before the last save is named where there is one. */
        FileTrouble refused(List<Remark> why) {
            return file.trouble(why, remarks, null);
        }
    }

    /** A file that was saved, and what was put right before. */
    record Saved(KeptFile file, List<Remark> remarks) {}

    /**
     * Opens a file, after putting right what a save that was cut short has left.
     *
     * @param whole whether a text is what such a file holds, and not cut off anywhere
     * @throws FileTrouble if there is none or it cannot be read; the remarks say which, and name the version before the last
     *     save where there is one
     */
    static Opened open(Path file, Predicate<String> whole) throws FileTrouble {
        String named = file.toString();
        List<Remark> remarks = new ArrayList<>();
        Path real = file;
        try {
            real = LinkEnd.of(file);
            Recovery recovery = Recovery.of(real, named, whole);
            remarks.addAll(recovery.remarks());
            TextFile read = TextFile.read(recovery.readFrom().orElse(real), named);
            byte[] there = recovery.readFrom().isEmpty() ? read.bytes() : now(real);
            return new Opened(new KeptFile(real, named, there, whole), read.text(), List.copyOf(remarks));
        } catch (FileTrouble e) {
            throw new KeptFile(real, named, null, whole).trouble(e.remarks(), remarks, e);
        } catch (IOException e) {
            throw new FileTrouble(StoreNotices.NOT_READ.with(named, WriteFault.reason(e)), e);
        }
    }

    private FileTrouble trouble(List<Remark> why, List<Remark> putRight, FileTrouble cause) {
        List<Remark> all = new ArrayList<>(why);
        all.addAll(putRight);
        earlierVersion(file).ifPresent(all::add);
        return new FileTrouble(all, cause);
    }

    private static Optional<Remark> earlierVersion(Path file) {
        return file.getFileName() != null && Files.isRegularFile(Beside.previous(file))
                ? Optional.of(Remark.of(
                        StoreNotices.EARLIER_VERSION.with(Beside.previous(file).toString()), CoreTexts.TEXTS))
                : Optional.empty();
    }

    /** Of what lay in the file's place when it was opened or saved; empty if nothing did. */
    Optional<Fingerprint> fingerprint() {
        return Optional.ofNullable(there).map(Fingerprint::of);
    }

    /** Whether the file is no longer as it was opened or saved, as far as it can be looked at. */
    boolean changedMeanwhile() {
        try {
            return !Arrays.equals(there, now(file));
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Saves a text; one that is the same as what was opened writes nothing.
     *
     * @return the file as saved, when the disk has it
     * @throws FileTrouble if it was not saved; the remarks say why, and where the text is put when another program has
     *     changed the file or taken it away
     */
    Saved save(String text, Disk disk) throws FileTrouble {
        byte[] bytes = encoded(text);
        if (there != null && Arrays.equals(bytes, there)) {
            return new Saved(this, List.of());
        } else if (Files.isRegularFile(file) && !Files.isWritable(file)) {
            throw new FileTrouble(StoreNotices.MAY_NOT_WRITE.with(named), null);
        }
        try (SaveLock lock = SaveLock.take(file)) {
            Recovery left = Recovery.beforeSaving(lock, named, whole);
            try (NewVersion version = NewVersion.write(file, bytes, disk)) {
                byte[] before = mustBeAsOpened(version, bytes);
                if (before != null && !Arrays.equals(before, bytes)) {
                    try (NewVersion previous = NewVersion.write(Beside.previous(file), before, disk)) {
                        previous.place();
                    }
                    mustBeAsOpened(version, bytes); // keeping it took its time
                }
                version.place();
            }
            return new Saved(new KeptFile(file, named, bytes, whole), left.remarks());
        } catch (IOException e) {
            throw new FileTrouble(notSaved(e), e);
        }
    }

    private byte[] encoded(String text) throws FileTrouble {
        try {
            ByteBuffer bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
            return Arrays.copyOf(bytes.array(), bytes.limit());
        } catch (CharacterCodingException e) {
            throw new FileTrouble(StoreNotices.NOT_SAVED.with(named, Phrase.of("half-character")), e);
        }
    }

    /** What lies in the file's place: as it was opened, or what is being saved, which somebody else may have written too. */
    private byte[] mustBeAsOpened(NewVersion version, byte[] bytes) throws IOException, FileTrouble {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileTrouble(
                    StoreNotices.NO_PLAIN_FILE.with(named, version.putAside().toString()), null);
        }
        byte[] now = now(file);
        if (now == null && there != null) {
            throw new FileTrouble(
                    StoreNotices.FILE_GONE.with(named, version.putAside().toString()), null);
        } else if (now != null
                && !Arrays.equals(now, bytes)
                && !fingerprint().equals(Optional.of(Fingerprint.of(now)))) {
            throw new FileTrouble(
                    StoreNotices.CHANGED_BY_ANOTHER.with(
                            named, version.putAside().toString()),
                    null);
        }
        return now;
    }

    private static byte[] now(Path file) throws IOException {
        return Files.exists(file) ? Files.readAllBytes(file) : null;
    }

    private Notice notSaved(IOException e) {
        return switch (WriteFault.of(e)) {
            case BUSY -> StoreNotices.BEING_SAVED.with(named);
            case NOT_ALLOWED -> StoreNotices.MAY_NOT_WRITE.with(named);
            case NO_FOLDER ->
                StoreNotices.FOLDER_GONE.with(
                        named, String.valueOf(file.toAbsolutePath().getParent()));
            case FULL -> StoreNotices.DISK_FULL.with(named);
            case OTHER -> StoreNotices.NOT_SAVED.with(named, WriteFault.reason(e));
        };
    }
}
