package org.hidewright.core.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.Nearest;

/** A file of text in UTF-8: its bytes as they are, and what they say. */
public final class TextFile {
    /** In a folder of more, a name that is near is not looked for among the rest. */
    private static final int MOST_NAMES = 10_000;

    private final byte[] bytes;
    private final String text;

    private TextFile(byte[] bytes, String text) {
        this.bytes = bytes;
        this.text = text;
    }

    /**
     * Reads a file whole.
     *
     * @throws FileTrouble if there is none, it is a folder, it may not or cannot be read, or it is no UTF-8
     */
    public static TextFile read(Path file) throws FileTrouble {
        return read(file, file.toString());
    }

    /**
     * Reads a file whole.
     *
     * @param named what the maker calls it
     */
    static TextFile read(Path file, String named) throws FileTrouble {
        byte[] bytes = bytes(file, named);
        return new TextFile(
                bytes, decoded(bytes).orElseThrow(() -> new FileTrouble(StoreNotices.NOT_UTF_8.with(named), null)));
    }

    /**
     * The bytes of a file that may be in another encoding.
     *
     * @throws FileTrouble if there is none, it is a folder, or it may not or cannot be read
     */
    public static byte[] bytes(Path file) throws FileTrouble {
        return bytes(file, file.toString());
    }

    private static byte[] bytes(Path file, String named) throws FileTrouble {
        try {
            if (Files.isDirectory(file)) {
                throw new FileTrouble(StoreNotices.IS_FOLDER.with(named), null);
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new FileTrouble(notThere(Path.of(named)), e);
        } catch (AccessDeniedException e) {
            throw new FileTrouble(StoreNotices.MAY_NOT_READ.with(named), e);
        } catch (IOException e) {
            throw new FileTrouble(StoreNotices.NOT_READ.with(named, WriteFault.reason(e)), e);
        }
    }

    /** With the nearest name there is beside it, as the maker would write it; what a save keeps there is not meant. */
    private static Notice notThere(Path named) {
        Path file = named.toAbsolutePath();
        List<String> beside = List.of();
        try (Stream<Path> files = Files.list(file.getParent())) {
            beside = files.limit(MOST_NAMES)
                    .filter(other -> Files.isRegularFile(other) && !other.equals(Beside.previous(file)))
                    .map(other -> other.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            // its folder is not there either, or may not be read: there is nothing to suggest
        }
        return Nearest.to(file.getFileName().toString(), beside)
                .map(near -> StoreNotices.NO_FILE_NEAREST.with(
                        named.toString(), named.resolveSibling(near).toString()))
                .orElseGet(() -> StoreNotices.NO_FILE.with(named.toString()));
    }

    /** The text, its byte order mark and line ends included; empty if the bytes are no UTF-8. */
    static Optional<String> decoded(byte[] bytes) {
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    byte[] bytes() {
        return bytes;
    }

    public String text() {
        return text;
    }
}
