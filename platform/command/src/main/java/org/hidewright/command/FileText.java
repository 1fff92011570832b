package org.hidewright.command;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads text files a maker names, saying plainly what is wrong when that fails. */
final class FileText {
    private FileText() {}

    static String read(String name, CommandTexts texts) throws BadArgument {
        try {
            Path file = Path.of(name);
            if (Files.isDirectory(file)) {
                throw new BadArgument(texts.text("trouble.folder", name));
            }
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (NoSuchFileException e) {
            throw new BadArgument(texts.text("trouble.no-file", name));
        } catch (AccessDeniedException e) {
            throw new BadArgument(texts.text("trouble.may-not-read", name));
        } catch (CharacterCodingException e) {
            throw new BadArgument(texts.text("trouble.not-utf-8", name));
        } catch (IOException | InvalidPathException e) {
            throw new BadArgument(texts.text("trouble.read", name, e.getMessage()));
        }
    }
}
