package org.hidewright.core.outline;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.core.store.FileTrouble;

/** Reads the lines of a drawing that another program has written. */
public interface DrawingReader {
    /** No place of a curve is farther from the stretches it is read as, in millimetres. */
    double NEAR_MM = 0.002;

    /** The one of these that reads such files, by how the name of the file ends. */
    static Optional<DrawingReader> of(List<DrawingReader> readers, Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return readers.stream().filter(reader -> name.endsWith(reader.ending())).findFirst();
    }

    /** What the names of all their files end in, to be told. */
    static String endings(List<DrawingReader> readers) {
        return readers.stream().map(DrawingReader::ending).collect(Collectors.joining(", "));
    }

    /** What a file is called, without its ending. */
    default String title(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - ending().length());
    }

    /** What the names of its files end in: {@code .svg}. */
    String ending();

    /**
     * The lines of a file, in millimetres and with y running up, in the order of the file.
     *
     * <p>May be called on any thread.
     *
     * @throws FileTrouble if it is no such drawing, or something in it cannot be read
     */
    ReadDrawing read(byte[] file) throws FileTrouble;
}
