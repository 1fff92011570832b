package org.hidewright.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.TextFile;
import org.hidewright.core.wording.Remark;

/** Reads text files a maker names, saying plainly what is wrong when that fails. */
final class FileText {
    private FileText() {}

    /** @throws BadArgument if the name can be none of a file here */
    static Path named(String name, CommandTexts texts) throws BadArgument {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new BadArgument(texts.text("trouble.file-name", name, e.getReason()));
        }
    }

    static String read(String name, CommandTexts texts) throws BadArgument {
        try {
            return TextFile.read(named(name, texts)).text();
        } catch (FileTrouble e) {
            Remark trouble = e.remarks().get(0);
            throw new BadArgument(
                    texts.wording().what(trouble) + " " + texts.wording().next(trouble));
        }
    }
}
