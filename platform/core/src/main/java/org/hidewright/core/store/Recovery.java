package org.hidewright.core.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;

/**
 * Puts right what a save that was cut short has left beside a file.
 *
 * <p>A version that is not whole goes and is told; one that is the same as the file goes. A whole one takes the place of a file that is
 * missing, or that is not whole itself and was not changed later. Otherwise it is put aside, since it may hold work that was
 * never saved.
 *
 * @param readFrom where the best version is, if not in the file's own place
 * @param remarks what to tell the maker
 */
record Recovery(Optional<Path> readFrom, List<Remark> remarks) {
    private static final Recovery NOTHING = new Recovery(Optional.empty(), List.of());

    /** What is found on opening. A save that another program is at is not cut short, and is left to it. */
    static Recovery of(Path file, String named, Predicate<String> sound) {
        if (!Beside.hasLeftovers(file)) {
            return NOTHING;
        }
        try (SaveLock lock = SaveLock.take(file, Duration.ZERO)) {
            return under(lock, named, sound);
        } catch (HeldByAnother e) {
            return NOTHING;
        } catch (IOException e) {
            return whereNothingCanBeChanged(file, named, sound);
        }
    }

    private static Recovery under(SaveLock lock, String named, Predicate<String> sound) throws IOException {
        Path file = lock.file();
        Recovery half = withoutHalf(file, named, sound);
        Optional<Path> whole = wholeVersion(file);
        if (whole.isEmpty()) {
            return half;
        } else if (!isBetter(whole.get(), file, sound)) {
            return putAside(whole.get(), file, named);
        } else if (!Files.exists(file)) {
            NewVersion.move(whole.get(), file);
            return told(StoreNotices.RECOVERED.with(named));
        }
        Path broken = Beside.broken(file);
        NewVersion.move(file, broken);
        NewVersion.move(whole.get(), file);
        return told(StoreNotices.RECOVERED_BROKEN.with(named, broken.toString()));
    }

    /** What is found on saving: nothing but what is being saved is then put in the file's place. */
    static Recovery beforeSaving(SaveLock lock, String named, Predicate<String> sound) throws IOException {
        Recovery half = withoutHalf(lock.file(), named, sound);
        Optional<Path> whole = wholeVersion(lock.file());
        return whole.isEmpty() ? half : putAside(whole.get(), lock.file(), named);
    }

    private static Recovery putAside(Path whole, Path file, String named) throws IOException {
        Path aside = Beside.unsaved(file);
        NewVersion.move(whole, aside);
        return told(StoreNotices.SAVE_CUT_SHORT.with(named, aside.toString()));
    }

    /** What was not written to its end goes; of the version before, unsaid, since that is still the file. */
    private static Recovery withoutHalf(Path file, String named, Predicate<String> sound) throws IOException {
        Files.deleteIfExists(Beside.newVersion(Beside.previous(file)));
        Path left = Beside.newVersion(file);
        if (!Files.isRegularFile(left, LinkOption.NOFOLLOW_LINKS) || isWhole(left, sound)) {
            return NOTHING;
        }
        Files.delete(left);
        return told(StoreNotices.SAVE_HALF_WRITTEN.with(named));
    }

    /** A whole version that the file does not hold; one that it holds goes. */
    private static Optional<Path> wholeVersion(Path file) throws IOException {
        Path left = Beside.newVersion(file);
        if (!Files.isRegularFile(left, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        byte[] bytes = Files.readAllBytes(left);
        if (Files.isRegularFile(file) && Arrays.equals(bytes, Files.readAllBytes(file))) {
            Files.delete(left);
            return Optional.empty();
        }
        return Optional.of(left);
    }

    /** In a folder that may only be read, say. */
    private static Recovery whereNothingCanBeChanged(Path file, String named, Predicate<String> sound) {
        Path left = Beside.newVersion(file);
        try {
            if (!Files.isRegularFile(left) || !isWhole(left, sound) || !isBetter(left, file, sound)) {
                return NOTHING;
            }
        } catch (IOException e) {
            return NOTHING;
        }
        Notice notice = Files.exists(file)
                ? StoreNotices.RECOVERED_BROKEN.with(named, file.toString())
                : StoreNotices.RECOVERED.with(named);
        return new Recovery(Optional.of(left), told(notice).remarks());
    }

    private static Recovery told(Notice notice) {
        return new Recovery(Optional.empty(), List.of(Remark.of(notice, CoreTexts.TEXTS)));
    }

    /** Whether a whole version is to stand for the file. What was changed after it was written is the maker's own. */
    private static boolean isBetter(Path left, Path file, Predicate<String> sound) throws IOException {
        if (!Files.exists(file)) {
            return true;
        }
        return Files.isRegularFile(file)
                && !isWhole(file, sound)
                && Files.getLastModifiedTime(file).compareTo(Files.getLastModifiedTime(left)) <= 0;
    }

    private static boolean isWhole(Path file, Predicate<String> sound) throws IOException {
        return TextFile.decoded(Files.readAllBytes(file)).filter(sound).isPresent();
    }
}
