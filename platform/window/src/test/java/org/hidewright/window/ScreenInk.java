package org.hidewright.window;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.hidewright.window.look.Palette;

/** What is really painted on the screen: words are found as islands of pixels, and the clearest pixel of each counts. */
final class ScreenInk {
    /** Less than this and a pixel is as good as what is behind it. */
    private static final double SEEN = 1.2;
    /** Lower than this, in pixels, is a line and no letters. */
    private static final int LOW = 5;

    /** Contrasts as they were reckoned, by both colours: there are few of them on a screen. */
    private static final Map<Long, Double> CONTRASTS = new HashMap<>();

    private final int[] colours;
    private final Rectangle place;

    /**
     * An island of pixels.
     *
     * @param place on the screen
     * @param contrast of its clearest pixel to what is behind it, by WCAG
     */
    record Word(Rectangle place, double contrast) {}

    private ScreenInk(ImageData data, Rectangle place) {
        this.place = place;
        colours = new int[data.width * data.height];
        for (int y = 0; y < data.height; y++) {
            data.getPixels(0, y, data.width, colours, y * data.width);
        }
        for (int i = 0; i < colours.length; i++) {
            int pixel = colours[i];
            colours[i] = channel(pixel, data.palette.redMask, data.palette.redShift) << 16
                    | channel(pixel, data.palette.greenMask, data.palette.greenShift) << 8
                    | channel(pixel, data.palette.blueMask, data.palette.blueShift);
        }
    }

    private static int channel(int pixel, int mask, int shift) {
        return shift < 0 ? (pixel & mask) >>> -shift : (pixel & mask) << shift;
    }

    /** Of all of the screen, as it is now. */
    static ScreenInk now(Display display) {
        Rectangle all = display.getBounds();
        Image image = new Image(display, all.width, all.height);
        GC gc = new GC(display);
        gc.copyArea(image, all.x, all.y);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        return new ScreenInk(data, all);
    }

    /** What of a control can be seen, on the screen, without its edge. */
    static Rectangle seen(Control control, int edge) {
        Display display = control.getDisplay();
        Rectangle seen = display.map(control.getParent(), null, control.getBounds());
        for (Composite round = control.getParent(); round != null; round = round.getParent()) {
            seen = seen.intersection(display.map(round, null, round.getClientArea()));
        }
        return new Rectangle(
                seen.x + edge, seen.y + edge, Math.max(0, seen.width - 2 * edge), Math.max(0, seen.height - 2 * edge));
    }

    int at(int x, int y) {
        return colours[(y - place.y) * place.width + x - place.x];
    }

    /** The colour that covers most of an area. */
    int behind(Rectangle area) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int y = area.y; y < area.y + area.height; y++) {
            for (int x = area.x; x < area.x + area.width; x++) {
                counts.merge(at(x, y), 1, Integer::sum);
            }
        }
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    /** Islands of pixels in an area; more than a gap apart they are two. */
    List<Word> words(Rectangle area, int gap) {
        Rectangle inside = area.intersection(place);
        List<Word> words = new ArrayList<>();
        if (!inside.isEmpty()) {
            rows(inside, behind(inside), gap, words, true);
        }
        return words;
    }

    private void rows(Rectangle area, int behind, int gap, List<Word> words, boolean outer) {
        int from = -1;
        for (int y = area.y; y <= area.y + area.height; y++) {
            boolean ink = y < area.y + area.height && isInked(new Rectangle(area.x, y, area.width, 1), behind);
            if (ink && from < 0) {
                from = y;
            } else if (!ink && from >= 0) {
                if (y - from >= LOW) {
                    columns(new Rectangle(area.x, from, area.width, y - from), behind, gap, words, outer);
                }
                from = -1;
            }
        }
    }

    private void columns(Rectangle band, int behind, int gap, List<Word> words, boolean outer) {
        int from = -1;
        int last = -1;
        for (int x = band.x; x <= band.x + band.width; x++) {
            boolean end = x == band.x + band.width;
            if (!end && isInked(new Rectangle(x, band.y, 1, band.height), behind)) {
                from = from < 0 ? x : from;
                last = x;
            } else if (from >= 0 && (end || x - last > gap)) {
                word(new Rectangle(from, band.y, last - from + 1, band.height), behind, gap, words, outer);
                from = -1;
            }
        }
    }

    /** A block of another colour, as behind a chosen line, is looked at for itself. */
    private void word(Rectangle area, int behind, int gap, List<Word> words, boolean outer) {
        int inside = behind(area);
        if (outer && contrast(inside, behind) >= SEEN) {
            rows(area, inside, gap, words, false);
            return;
        }
        double most = 1;
        for (int y = area.y; y < area.y + area.height; y++) {
            for (int x = area.x; x < area.x + area.width; x++) {
                most = Math.max(most, contrast(at(x, y), behind));
            }
        }
        words.add(new Word(area, most));
    }

    private boolean isInked(Rectangle area, int behind) {
        for (int y = area.y; y < area.y + area.height; y++) {
            for (int x = area.x; x < area.x + area.width; x++) {
                int colour = at(x, y);
                if (colour != behind && contrast(colour, behind) >= SEEN) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double contrast(int one, int other) {
        return one == other
                ? 1
                : CONTRASTS.computeIfAbsent(((long) one << 32) | other, key -> Palette.contrast(one, other));
    }

    /** The most that any pixel of an area differs from what it was before. */
    double change(ScreenInk before, Rectangle area) {
        Rectangle inside = area.intersection(place);
        double most = 1;
        for (int y = inside.y; y < inside.y + inside.height; y++) {
            for (int x = inside.x; x < inside.x + inside.width; x++) {
                most = Math.max(most, contrast(at(x, y), before.at(x, y)));
            }
        }
        return most;
    }
}
