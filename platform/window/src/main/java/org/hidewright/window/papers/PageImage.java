package org.hidewright.window.papers;

import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Display;
import org.hidewright.core.paper.PagePictures.Picture;

/** Pictures of pages as the toolkit has them. */
final class PageImage {
    private static final int USUAL_ZOOM = 100;

    private PageImage() {}

    static ImageData data(Picture picture) {
        ImageData data =
                new ImageData(picture.width(), picture.height(), 24, new PaletteData(0xFF0000, 0x00FF00, 0x0000FF));
        for (int y = 0; y < picture.height(); y++) {
            data.setPixels(0, y, picture.width(), picture.pixels(), y * picture.width());
        }
        return data;
    }

    /**
     * A picture for a screen, sharp where the screen has several of its own pixels for one of the window.
     *
     * @param zoom for which it was made, in hundredths
     */
    static Image forScreen(Display display, Picture picture, int zoom) {
        ImageData sharp = data(picture);
        return new Image(display, (ImageDataProvider) asked -> asked == zoom
                ? sharp
                : asked == USUAL_ZOOM
                        ? sharp.scaledTo(sharp.width * USUAL_ZOOM / zoom, sharp.height * USUAL_ZOOM / zoom)
                        : null);
    }
}
