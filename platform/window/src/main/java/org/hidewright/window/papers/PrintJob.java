package org.hidewright.window.papers;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.hidewright.core.paper.PagePictures.Picture;

/** A document on its way to a printer, a page at a time. For the thread of the window. */
final class PrintJob {
    private final Printing printing;
    private final Pages.Document document;
    private final Printer printer;
    private final Display display;
    private final Rectangle sheet;
    private int first;
    private int last;

    /** @param printer that has taken the job; disposed when it is done */
    PrintJob(Printing printing, Pages.Document document, Printer printer, Display display) {
        this.printing = printing;
        this.document = document;
        this.printer = printer;
        this.display = display;
        Rectangle trim = printer.computeTrim(0, 0, 0, 0);
        this.sheet = new Rectangle(trim.x, trim.y, printer.getBounds().width, printer.getBounds().height);
    }

    /** Prints the pages that were chosen. */
    void pages(PrinterData chosen) {
        boolean range = chosen.scope == PrinterData.PAGE_RANGE;
        first = range ? Math.max(1, chosen.startPage) : 1;
        last = range ? Math.min(document.pages(), chosen.endPage) : document.pages();
        page(first);
    }

    private void page(int page) {
        if (page > last) {
            printer.endJob();
            boolean right = OnPaper.isSheet(document.paper(), sheet, printer.getDPI());
            printer.dispose();
            printing.tellDone(document, last - first + 1, right);
            return;
        }
        printing.tellPage(page, last);
        printing.picture(document, page, picture -> {
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    draw(picture);
                    page(page + 1);
                });
            }
        });
    }

    private void draw(Picture picture) {
        if (printer.startPage()) {
            Image image = new Image(printer, PageImage.data(picture));
            Rectangle place = OnPaper.of(document.paper(), sheet, printer.getDPI());
            GC gc = new GC(printer);
            Rectangle all = image.getBounds();
            gc.drawImage(image, 0, 0, all.width, all.height, place.x, place.y, place.width, place.height);
            gc.dispose();
            image.dispose();
            printer.endPage();
        }
    }
}
