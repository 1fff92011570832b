package org.hidewright.core.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;
import java.util.stream.Stream;

/** Why a file could not be written, as far as Java or the system says. */
public enum WriteFault {
    /** Another program is writing it. */
    BUSY,
    /** Permissions or a disk that is only read stand against it. */
    NOT_ALLOWED,
    /** Its folder is not there, or is no folder. */
    NO_FOLDER,
    /** There is no room left. */
    FULL,
    /** Something else; {@link #reason} has the system's words. */
    OTHER;

    public static WriteFault of(IOException e) {
        if (e instanceof HeldByAnother) {
            return BUSY;
        } else if (e instanceof AccessDeniedException || says(e, "Read-only", "Permission denied", "not permitted")) {
            return NOT_ALLOWED;
        } else if (e instanceof NoSuchFileException
                || e instanceof NotDirectoryException
                || e instanceof FileAlreadyExistsException
                || says(e, "Not a directory")) {
            return NO_FOLDER;
        } else if (says(e, "No space left", "not enough space", "quota")) {
            return FULL;
        }
        return OTHER;
    }

    /** The reason as the system words it, without the path where it can be had alone. */
    public static String reason(IOException e) {
        if (e instanceof FileSystemException system) { // its message would be the path
            return system.getReason() != null
                    ? system.getReason()
                    : system.getClass().getSimpleName();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    /** Java has no type for these; systems say them in English unless they are told otherwise. */
    private static boolean says(IOException e, String... words) {
        String message = reason(e).toLowerCase(Locale.ROOT);
        return Stream.of(words).anyMatch(word -> message.contains(word.toLowerCase(Locale.ROOT)));
    }
}
