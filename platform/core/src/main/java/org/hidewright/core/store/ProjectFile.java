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
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.Remark;

/**
 * A project and the file it was opened from. Immutable; a save gives another one, from which the next save goes on.
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
public final class ProjectFile {
    private final Path file;
    private final String named;
    /** What lay in the file's place when it was opened; null if nothing did. */
    private final byte[] there;

    private final Project project;
    private final List<Remark> remarks;

    private ProjectFile(Path file, String named, byte[] there, Project project, List<Remark> remarks) {
        this.file = file;
        this.named = named;
        this.there = there;
        this.project = project;
        this.remarks = List.copyOf(remarks);
    }

    /**
     * Opens a project file, after putting right what a save that was cut short has left.
     *
     * @throws FileTrouble if there is none, it cannot be read, or it holds no project; the remarks say which, and name the
     *     version before the last save where there is one
     */
    public static ProjectFile open(Path file) throws FileTrouble {
        String named = file.toString();
        List<Remark> remarks = new ArrayList<>();
        Path real = file;
        try {
            real = LinkEnd.of(file);
            Recovery recovery = Recovery.of(real, named);
            remarks.addAll(recovery.remarks());
            TextFile read = TextFile.read(recovery.readFrom().orElse(real), named);
            ProjectReader.Result result = ProjectReader.read(read.text());
            if (result.project().isEmpty()) {
                throw new FileTrouble(result.remarks(), null);
            }
            byte[] there = recovery.readFrom().isEmpty() ? read.bytes() : now(real);
            return new ProjectFile(real, named, there, result.project().get(), remarks);
        } catch (FileTrouble e) {
            List<Remark> all = new ArrayList<>(e.remarks());
            all.addAll(remarks);
            earlierVersion(real).ifPresent(all::add);
            throw new FileTrouble(all, e);
        } catch (IOException e) {
            throw new FileTrouble(StoreNotices.NOT_READ.with(named, WriteFault.reason(e)), e);
        }
    }

    private static Optional<Remark> earlierVersion(Path file) {
        return file.getFileName() != null && Files.isRegularFile(Beside.previous(file))
                ? Optional.of(Remark.of(
                        StoreNotices.EARLIER_VERSION.with(Beside.previous(file).toString()), CoreTexts.TEXTS))
                : Optional.empty();
    }

    public Project project() {
        return project;
    }

    /** What was noticed about the file when it was opened or saved; what is said of the project the project has. */
    public List<Remark> remarks() {
        return remarks;
    }

    /** Of what lay in the file's place when it was opened or saved; empty if nothing did. */
    public Optional<Fingerprint> fingerprint() {
        return Optional.ofNullable(there).map(Fingerprint::of);
    }

    /**
     * Saves the project as it is now; a text that is the same as what was opened writes nothing.
     *
     * @return the file as saved, when the disk has it
     * @throws FileTrouble if it was not saved; the remarks say why, and where the text is put when another program has
     *     changed the file or taken it away
     */
    public ProjectFile save(Project changed) throws FileTrouble {
        return save(changed, Disk.REAL);
    }

    ProjectFile save(Project changed, Disk disk) throws FileTrouble {
        byte[] bytes = encoded(changed.text());
        if (there != null && Arrays.equals(bytes, there)) {
            return new ProjectFile(file, named, there, changed, List.of());
        } else if (Files.isRegularFile(file) && !Files.isWritable(file)) {
            throw new FileTrouble(StoreNotices.MAY_NOT_WRITE.with(named), null);
        }
        try (SaveLock lock = SaveLock.take(file)) {
            Recovery left = Recovery.beforeSaving(lock, named);
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
            return new ProjectFile(file, named, bytes, changed, left.remarks());
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
