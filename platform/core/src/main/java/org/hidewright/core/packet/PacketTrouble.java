package org.hidewright.core.packet;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.hidewright.core.store.WriteFault;

/** A packet cannot be written. Whoever writes it says so in words that tell how to go on there. */
public final class PacketTrouble extends Exception {
    private static final long serialVersionUID = 1L;

    /** What can be the matter. */
    public enum Kind {
        WRITE,
        MAY_NOT_WRITE,
        CANNOT_MAKE,
        DISK_FULL,
        BEING_WRITTEN,
        FILE_IN_THE_WAY,
        FOLDER_IN_THE_WAY,
        OTHER_PACKET,
        OTHER_FILE;

        /** By which texts are found. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private final Kind kind;
    private final transient List<String> args;

    PacketTrouble(Kind kind, String... args) {
        super(kind.key() + " " + String.join(", ", args));
        this.kind = kind;
        this.args = List.of(args);
    }

    /** Why a path could not be written, as far as Java or the system says. */
    public static PacketTrouble unwritten(Path path, IOException e) {
        PacketTrouble trouble = of(path, e);
        trouble.initCause(e);
        return trouble;
    }

    private static PacketTrouble of(Path path, IOException e) {
        return switch (WriteFault.of(e)) {
            case BUSY -> new PacketTrouble(Kind.BEING_WRITTEN, path.toString());
            case NOT_ALLOWED -> new PacketTrouble(Kind.MAY_NOT_WRITE, path.toString());
            case NO_FOLDER -> new PacketTrouble(Kind.CANNOT_MAKE, path.toString(), missing(path, e));
            case FULL -> new PacketTrouble(Kind.DISK_FULL, path.toString());
            case OTHER -> new PacketTrouble(Kind.WRITE, path.toString(), WriteFault.reason(e));
        };
    }

    private static String missing(Path path, IOException e) {
        return e instanceof FileSystemException system && system.getFile() != null ? system.getFile() : path.toString();
    }

    public Kind kind() {
        return kind;
    }

    /** What it is about: the path first. */
    public List<String> args() {
        return args;
    }
}
