package org.hidewright.core.outline;

import org.hidewright.core.store.FileTrouble;

/** Reads the lines of a drawing that another program has written. */
public interface DrawingReader {
    /** No place of a curve is farther from the stretches it is read as, in millimetres. */
    double NEAR_MM = 0.002;

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
