package org.hidewright.core.paper;

/** Shows pages that a {@link PdfWriter} has written as pictures, for a screen or a printer. */
public interface PagePictures {
    /**
     * A page in the colours of its pixels.
     *
     * @param width in pixels
     * @param height in pixels
     * @param pixels red, green and blue in one number each, row by row from the top
     */
    record Picture(int width, int height, int[] pixels) {}

    /** How many pages a PDF file has. */
    int pages(byte[] pdf);

    /**
     * A page as a picture. May be called on any thread.
     *
     * @param page counted from 1
     * @param pixelsPerMm how fine
     */
    Picture picture(byte[] pdf, int page, double pixelsPerMm);
}
