package org.hidewright.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.begin.NewSlips;
import org.hidewright.core.store.WholeFile;
import org.hidewright.core.wording.UnitSystem;

/** A project without a slip, called by its file. */
final class EmptyProject {
    private EmptyProject() {}

    static void write(Path path, UnitSystem system) throws IOException {
        String name = String.valueOf(path.getFileName()).replaceAll("\\.json$", "");
        WholeFile.write(path, NewSlips.text(name, system, List.of()).getBytes(StandardCharsets.UTF_8));
    }
}
