package org.hidewright.core.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;

/** Who may read and write a file, kept from one version to the next where the file system knows owners and groups. */
final class Rights {
    private Rights() {}

    private static PosixFileAttributeView of(Path file) {
        return Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    }

    /** Whether the file system knows owners, groups and others. */
    static boolean areKept(Path file) {
        return of(file) != null;
    }

    /** Nobody but its owner sees a new version before it has the rights of the old one. */
    static FileAttribute<?>[] toBegin(Path old) {
        return Files.isRegularFile(old, LinkOption.NOFOLLOW_LINKS) && areKept(old)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    static void copy(Path old, Path fresh) throws IOException {
        if (!Files.isRegularFile(old, LinkOption.NOFOLLOW_LINKS) || !areKept(old)) {
            return;
        }
        PosixFileAttributes wanted = of(old).readAttributes();
        PosixFileAttributes got = of(fresh).readAttributes();
        try {
            if (!wanted.owner().equals(got.owner())) {
                of(fresh).setOwner(wanted.owner());
            }
            if (!wanted.group().equals(got.group())) {
                of(fresh).setGroup(wanted.group());
            }
        } catch (IOException e) {
            // Few may give a file to somebody else; whoever saves it then owns it.
        }
        if (!wanted.permissions().equals(got.permissions())) {
            of(fresh).setPermissions(wanted.permissions());
        }
    }
}
