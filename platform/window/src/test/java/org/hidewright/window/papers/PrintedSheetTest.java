package org.hidewright.window.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.Paper;
import org.hidewright.window.words.WindowTexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A millimetre on paper is one: by the geometry of the sheet, and by a sheet that was printed into a file. */
class PrintedSheetTest {
    private static final double DOTS_PER_MM = 300 / 25.4;

    @TempDir
    Path folder;

    /** ISO 216: A4 is 210 by 297 mm; ANSI/ASME Y14.1: Letter is 8.5 by 11 in. */
    @Test
    void aPageTakesItsSizeInDots() {
        Rectangle a4 = OnPaper.of(Paper.A4, new Rectangle(-50, -40, 2400, 3400), new Point(300, 600));
        assertEquals(new Rectangle(-50, -40, 2480, 7016), a4, "210 / 25.4 × 300 and 297 / 25.4 × 600");
        Rectangle letter = OnPaper.of(Paper.LETTER, new Rectangle(0, 0, 2550, 3300), new Point(300, 300));
        assertEquals(new Rectangle(0, 0, 2550, 3300), letter);
    }

    @Test
    void anotherSheetIsNoticed() {
        Point dpi = new Point(300, 300);
        assertTrue(OnPaper.isSheet(Paper.A4, new Rectangle(-50, -50, 2480, 3508), dpi));
        assertFalse(OnPaper.isSheet(Paper.A4, new Rectangle(-50, -50, 2550, 3300), dpi), "Letter");
    }

    /** The toolkit of the desktop prints into a file; poppler shows what is on it. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aPrintedMarkLiesWhereItIsOnThePage() throws Exception {
        Display display = Display.getDefault();
        PrinterData file = Stream.of(Printer.getPrinterList())
                .filter(printer -> String.valueOf(printer.driver).contains("File"))
                .findFirst()
                .orElseThrow();
        Path printed = folder.resolve("printed.pdf");
        file.printToFile = true;
        file.fileName = printed.toString();
        PagePictures pictures = new PagePictures() {
            @Override
            public int pages(byte[] pdf) {
                return 1;
            }

            /** White, with a black square of 20 mm whose corner is 50 mm from the left and 80 mm from the top. */
            @Override
            public Picture picture(byte[] pdf, int page, double pixelsPerMm) {
                int width = (int) Math.round(210 * pixelsPerMm);
                int height = (int) Math.round(297 * pixelsPerMm);
                int[] pixels = new int[width * height];
                Arrays.fill(pixels, 0xFFFFFF);
                for (int y = (int) (80 * pixelsPerMm); y < 100 * pixelsPerMm; y++) {
                    Arrays.fill(pixels, y * width + (int) (50 * pixelsPerMm), y * width + (int) (70 * pixelsPerMm), 0);
                }
                return new Picture(width, height, pixels);
            }
        };
        List<String> told = new ArrayList<>();
        ExecutorService work = Executors.newSingleThreadExecutor();
        new Printing(new WindowTexts(Locale.ENGLISH), pictures, work, told::add)
                .print(new Pages.Document("Marks", new byte[0], 1, Paper.A4), file, display);
        long end = System.nanoTime() + 10_000_000_000L;
        while (!isWhole(printed) && System.nanoTime() < end) {
            if (!display.readAndDispatch()) {
                Thread.sleep(20);
            }
        }
        work.shutdown();
        assertEquals(
                List.of(
                        "Page 1 of 1 is on its way to the printer …",
                        "Pages sent to the printer in true size: 1. Hold a ruler to the check square before you cut."),
                told);
        BufferedImage sheet = shown(printed);
        int[] box = blackBox(sheet);
        assertEquals(20, (box[2] - box[0] + 1) / DOTS_PER_MM, 0.2, "as wide as it is");
        assertEquals(20, (box[3] - box[1] + 1) / DOTS_PER_MM, 0.2, "as high as it is");
        assertEquals(50, box[0] / DOTS_PER_MM, 0.3);
        assertEquals(80, box[1] / DOTS_PER_MM, 0.3);
    }

    /** The system writes it in its own time. */
    private static boolean isWhole(Path pdf) throws Exception {
        return Files.exists(pdf)
                && new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1)
                        .strip()
                        .endsWith("%%EOF");
    }

    private BufferedImage shown(Path pdf) throws Exception {
        Process shows = new ProcessBuilder("pdftoppm", "-r", "300", "-png", pdf.toString(), folder + "/sheet")
                .inheritIO()
                .start();
        assertEquals(0, shows.waitFor());
        try (Stream<Path> files = Files.list(folder)) {
            return ImageIO.read(files.filter(file -> file.toString().endsWith(".png"))
                    .findFirst()
                    .orElseThrow()
                    .toFile());
        }
    }

    /** Left, top, right and bottom of what is dark. */
    private static int[] blackBox(BufferedImage sheet) {
        int[] box = {sheet.getWidth(), sheet.getHeight(), 0, 0};
        for (int y = 0; y < sheet.getHeight(); y++) {
            for (int x = 0; x < sheet.getWidth(); x++) {
                if ((sheet.getRGB(x, y) & 0xFF) < 128) {
                    box[0] = Math.min(box[0], x);
                    box[1] = Math.min(box[1], y);
                    box[2] = Math.max(box[2], x);
                    box[3] = Math.max(box[3], y);
                }
            }
        }
        return box;
    }
}
