package org.hidewright.window.papers;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.PagePictures.Picture;
import org.hidewright.window.words.WindowTexts;

/**
 * Prints a document in true size, whatever the printer would rather do. Pictures of the pages are made one by one where work is
 * done, so that the window goes on meanwhile.
 */
final class Printing {
    /** Lines of a pattern are sharp at this, and a page takes no more memory than it must. */
    private static final double PIXELS_PER_MM = 300 / 25.4;

    private final WindowTexts texts;
    private final PagePictures pictures;
    private final Executor work;
    private final Consumer<String> told;

    /**
     * A way to print.
     *
     * @param work where pictures are made
     * @param told how far it is, and what came of it; on the thread of the window
     */
    Printing(WindowTexts texts, PagePictures pictures, Executor work, Consumer<String> told) {
        this.texts = texts;
        this.pictures = pictures;
        this.work = work;
        this.told = told;
    }

    /** Asks for a printer and prints. */
    void print(Shell shell, Pages.Document document) {
        if (Printer.getPrinterList().length == 0) {
            told.accept(texts.text("print.none.help"));
            return;
        }
        PrinterData chosen = new PrintDialog(shell).open();
        if (chosen != null) {
            print(document, chosen, shell.getDisplay());
        }
    }

    /** Prints on a printer that was chosen. */
    void print(Pages.Document document, PrinterData chosen, Display display) {
        Printer printer = new Printer(chosen);
        if (printer.startJob(document.title())) {
            new PrintJob(this, document, printer, display).pages(chosen);
        } else {
            printer.dispose();
            told.accept(texts.text("print.refused.help"));
        }
    }

    /** Makes a picture of a page where work is done, and hands it on there. */
    void picture(Pages.Document document, int page, Consumer<Picture> made) {
        work.execute(() -> made.accept(pictures.picture(document.pdf(), page, PIXELS_PER_MM)));
    }

    void tellPage(int page, int last) {
        told.accept(texts.text("print.page.help", page, last));
    }

    void tellDone(Pages.Document document, int count, boolean rightSheet) {
        told.accept(
                rightSheet
                        ? texts.text("print.done.help", count)
                        : texts.text("print.other-sheet.help", document.paper().title()));
    }
}
