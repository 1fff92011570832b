package org.hidewright.addons;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;

/**
 * The file of what the maker was told of before its first start, a line with the checksum and the name of each. The launcher reads
 * it; it is written here.
 */
final class Agreed {
    private static final String FIRST_LINE =
            "# Add-ons of which was said, before they first started, that a bundle is code with full rights.\n";

    private final Path file;

    Agreed(Path settings) {
        this.file = settings.resolve("addons-agreed.txt");
    }

    /** @param jars names by the bytes of the jars that are agreed to */
    void add(Map<byte[], String> jars) throws FileTrouble {
        try {
            String before = Files.exists(file) ? Files.readString(file, StandardCharsets.ISO_8859_1) : FIRST_LINE;
            StringBuilder text = new StringBuilder(before);
            if (!before.isEmpty() && !before.endsWith("\n")) {
                text.append('\n');
            }
            jars.forEach((bytes, name) -> {
                String sum = Sha256.of(bytes);
                if (text.indexOf(sum) < 0) {
                    text.append(sum).append(' ').append(name).append('\n');
                }
            });
            if (!text.toString().equals(before)) {
                Files.createDirectories(file.getParent());
                WholeFile.write(file, text.toString().getBytes(StandardCharsets.ISO_8859_1));
            }
        } catch (IOException e) {
            throw Trouble.notChanged(file, e);
        }
    }
}
