package org.hidewright.documents.page;

/** Where a page is drawn; millimetres, x right and y down from the top left of the sheet. */
public interface Canvas {
    /** Letters from a foot point; the turn is in radians, positive counter-clockwise as seen. */
    void text(String text, double x, double y, Style style, double turnRad);

    void moveTo(double x, double y);

    void lineTo(double x, double y);

    void curveTo(double x1, double y1, double x2, double y2, double x3, double y3);

    void close();

    /** Ends the path drawn so far by inking its line. */
    void stroke(Line line);

    /** Ends the path drawn so far by filling it. */
    void fill(Tone tone);

    /** Shows of what is drawn only what lies in an upright box. */
    void within(double x, double y, double width, double height, Runnable drawing);

    /** Ends the path drawn so far by filling it and inking its line. */
    void fillAndStroke(Tone tone, Line line);
}
