package org.hidewright.core.store;

import java.io.IOException;
import java.nio.file.Path;

/** Another save of the same file is under way and did not end in time. */
final class HeldByAnother extends IOException {
    private static final long serialVersionUID = 1L;

    HeldByAnother(Path file) {
        super(file + " is being saved");
    }
}
