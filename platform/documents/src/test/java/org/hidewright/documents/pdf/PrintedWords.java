package org.hidewright.documents.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.core.paper.Paper;
import org.hidewright.documents.OutsideTool;

/** The words of a PDF with their boxes in millimetres from the top left, as poppler's pdftotext finds them. */
record PrintedWords(List<Page> pages) {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final Pattern LINE = Pattern.compile("<page width=\"([\\d.]+)\" height=\"([\\d.]+)\">"
            + "|<word xMin=\"([-\\d.]+)\" yMin=\"([-\\d.]+)\" xMax=\"([-\\d.]+)\" yMax=\"([-\\d.]+)\">(.*?)</word>");

    record Page(double width, double height, List<Word> words) {}

    /**
     * A word's box from the top of its capitals to the foot of its tails. Poppler's box has the typeface's whole ascent
     * (1.024) and descent (0.4); letters reach 0.72 up and 0.21 down, of which 0.66 and 0.2 are counted here.
     */
    record Word(String text, double left, double top, double right, double bottom) {
        boolean meets(Word other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    static PrintedWords of(byte[] pdf) {
        List<Page> pages = new ArrayList<>();
        Matcher line = LINE.matcher(OutsideTool.text(pdf, "pdftotext", "-bbox", "FILE", "-"));
        while (line.find()) {
            if (line.group(1) != null) {
                pages.add(new Page(mm(line.group(1)), mm(line.group(2)), new ArrayList<>()));
            } else {
                pages.get(pages.size() - 1).words().add(word(line));
            }
        }
        return new PrintedWords(pages);
    }

    private static Word word(Matcher line) {
        double left = mm(line.group(3));
        double top = mm(line.group(4));
        double right = mm(line.group(5));
        double bottom = mm(line.group(6));
        double above = 0.256;
        double below = 0.140;
        double touch = 0.02;
        String text = line.group(7);
        if (text.length() > 3 && bottom - top > 1.5 * (right - left)) { // reads upwards
            double letters = right - left;
            return new Word(text, left + above * letters, top + touch, right - below * letters, bottom - touch);
        }
        double letters = bottom - top;
        return new Word(text, left + touch, top + above * letters, right - touch, bottom - below * letters);
    }

    private static double mm(String points) {
        return Double.parseDouble(points) * MM_PER_POINT;
    }

    /** All text between head and foot of the pages in the order it was written, without any space. */
    static String body(byte[] pdf, Paper paper) {
        int resolution = 254; // 10 dots a millimetre
        int top = 20 * 10;
        int height = (int) (paper.heightMm() * 10) - 2 * top;
        String text = OutsideTool.text(
                pdf,
                "pdftotext",
                "-raw",
                "-r",
                Integer.toString(resolution),
                "-x",
                "0",
                "-y",
                Integer.toString(top),
                "-W",
                Integer.toString((int) (paper.widthMm() * 10)),
                "-H",
                Integer.toString(height),
                "FILE",
                "-");
        return text.replaceAll("[\\s\\p{Z}]", "");
    }
}
