package org.hidewright.window.papers;

import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.PagePictures.Picture;
import org.hidewright.window.words.WindowTexts;

/** Prints a document in true size, whatever the printer would rather do. */
final class Printing {
    /** Lines of a pattern are sharp at this, and a page takes no more memory than it must. */
    private static final double PIXELS_PER_MM = 300 / 25.4;

    private final Shell shell;
    private final WindowTexts texts;
    private final PagePictures pictures;

    Printing(Shell shell, WindowTexts texts, PagePictures pictures) {
        this.shell = shell;
        this.texts = texts;
        this.pictures = pictures;
    }

    /** Asks for a printer and prints; says what came of it. */
    String print(Pages.Document document) {
        if (Printer.getPrinterList().length == 0) {
            return texts.text("print.none.help");
        }
        PrinterData chosen = new PrintDialog(shell).open();
        return chosen == null ? "" : print(document, chosen);
    }

    /** Prints on a printer that was chosen; says what came of it. */
    String print(Pages.Document document, PrinterData chosen) {
        Printer printer = new Printer(chosen);
        try {
            Rectangle trim = printer.computeTrim(0, 0, 0, 0);
            Rectangle sheet = new Rectangle(trim.x, trim.y, printer.getBounds().width, printer.getBounds().height);
            if (!printer.startJob(document.title())) {
                return texts.text("print.refused.help");
            }
            int from = chosen.scope == PrinterData.PAGE_RANGE ? Math.max(1, chosen.startPage) : 1;
            int to = chosen.scope == PrinterData.PAGE_RANGE
                    ? Math.min(document.pages(), chosen.endPage)
                    : document.pages();
            for (int page = from; page <= to; page++) {
                page(printer, sheet, document, page);
            }
            printer.endJob();
            return OnPaper.isSheet(document.paper(), sheet, printer.getDPI())
                    ? texts.text("print.done.help", to - from + 1)
                    : texts.text("print.other-sheet.help", document.paper().title());
        } finally {
            printer.dispose();
        }
    }

    private void page(Printer printer, Rectangle sheet, Pages.Document document, int page) {
        if (printer.startPage()) {
            Image image = image(printer, pictures.picture(document.pdf(), page, PIXELS_PER_MM));
            Rectangle place = OnPaper.of(document.paper(), sheet, printer.getDPI());
            GC gc = new GC(printer);
            Rectangle all = image.getBounds();
            gc.drawImage(image, 0, 0, all.width, all.height, place.x, place.y, place.width, place.height);
            gc.dispose();
            image.dispose();
            printer.endPage();
        }
    }

    /** A picture of a page for a device. */
    static Image image(Device device, Picture picture) {
        ImageData data =
                new ImageData(picture.width(), picture.height(), 24, new PaletteData(0xFF0000, 0x00FF00, 0x0000FF));
        for (int y = 0; y < picture.height(); y++) {
            data.setPixels(0, y, picture.width(), picture.pixels(), y * picture.width());
        }
        return new Image(device, data);
    }
}
