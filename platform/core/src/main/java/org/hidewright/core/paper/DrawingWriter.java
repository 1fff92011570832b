package org.hidewright.core.paper;

import java.util.List;
import org.hidewright.api.drawing.Drawing;

/** Writes drawings as a file that a machine or a drawing program reads, in millimetres. */
public interface DrawingWriter {
    /**
     * One thing of a file.
     *
     * @param id names its group, in letters, digits, hyphens and points
     * @param title as it is to be read
     */
    record Named(String id, String title, Drawing drawing) {}

    /** What a maker asks for it by, in small letters, digits and hyphens. */
    String kind();

    /** What the name of its files ends in, after the name itself: {@code .svg}. */
    String ending();

    /**
     * Drawings as one file. The same drawings give the same bytes, on any day and machine. Lines and arcs stay what they
     * are, and so do cubic curves where the kind of file has them.
     *
     * <p>May be called on any thread.
     *
     * @param title of the whole
     * @param drawings as they lie, none on another
     */
    byte[] write(String title, List<Named> drawings);
}
