package org.hidewright.window.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.PagePictures.Picture;
import org.hidewright.window.look.FocusRing;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Tools;
import org.hidewright.window.piece.PieceBar;
import org.hidewright.window.words.WindowTexts;

/** The documents of a project page by page, as they will be printed. */
public final class PapersPage extends Composite {
    private static final double LARGEST = 5;
    private static final int MARGIN = 10;

    private final WindowTexts texts;
    private final PagePictures pictures;
    private final Executor work;
    private final Combo which;
    private final Label where;
    private final Label told;
    private final ScrolledComposite scroll;
    private final Canvas sheet;
    /** 1 where a whole page is seen. */
    private double larger = 1;

    private List<Pages.Document> documents = List.of();
    private int page = 1;
    private Image image;
    /** Counts what was asked for; a picture that comes too late is not shown. */
    private long latest;

    /**
     * A page of pages.
     *
     * @param pictures shows pages
     * @param work where pictures are made
     * @param leave called when the maker has seen enough
     * @param export writes the packet
     */
    public PapersPage(
            Composite parent,
            Inks inks,
            WindowTexts texts,
            PagePictures pictures,
            Executor work,
            Runnable leave,
            Runnable export) {
        super(parent, SWT.NONE);
        this.texts = texts;
        this.pictures = pictures;
        this.work = work;
        inks.dress(this, inks.palette().ink(), inks.palette().board());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        Tools tools = new Tools(this, inks).atEdge();
        tools.words(texts.text("page.back"), "papers.back", leave);
        which = new Combo(tools, SWT.READ_ONLY);
        which.setData("id", "papers.which");
        which.addListener(SWT.Selection, event -> turn(1));
        tools.words(texts.text("papers.before"), "papers.before", () -> turn(page - 1));
        where = inks.dress(
                new Label(tools, SWT.NONE), inks.palette().ink(), inks.palette().paper());
        where.setData("id", "papers.where");
        tools.words(texts.text("papers.after"), "papers.after", () -> turn(page + 1));
        tools.words(texts.text("drawing.larger"), "papers.larger", () -> zoom(PieceBar.STEP));
        tools.words(texts.text("drawing.smaller"), "papers.smaller", () -> zoom(1 / PieceBar.STEP));
        tools.words(texts.text("papers.print"), "papers.print", this::print);
        tools.words(texts.text("papers.export"), "papers.export", export);
        told = inks.dress(
                new Label(this, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().board());
        told.setData("id", "papers.told");
        told.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        ((GridData) told.getLayoutData()).horizontalIndent = Tools.EDGE;
        scroll = inks.dress(
                new ScrolledComposite(this, SWT.H_SCROLL | SWT.V_SCROLL),
                inks.palette().ink(),
                inks.palette().board());
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        scroll.addListener(SWT.Resize, event -> draw());
        sheet = inks.dress(
                new Canvas(scroll, SWT.DOUBLE_BUFFERED),
                inks.palette().ink(),
                inks.palette().board());
        scroll.setContent(sheet);
        sheet.setData("id", "papers.sheet");
        sheet.setData("wordless", true); // words of a page are part of its picture
        sheet.addPaintListener(event -> paint(event.gc));
        sheet.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.PAGE_DOWN || event.keyCode == SWT.PAGE_UP) {
                turn(page + (event.keyCode == SWT.PAGE_DOWN ? 1 : -1));
            }
        });
        FocusRing.on(sheet, inks);
        Spoken.name(sheet, () -> which.getText() + ", " + where.getText());
        Spoken.name(which, () -> texts.text("papers.which"));
        Spoken.tell(which);
        addListener(SWT.Dispose, event -> show((Image) null));
    }

    private void tell(String text) {
        if (!isDisposed() && !told.getText().equals(text)) {
            told.setText(text);
            layout();
        }
    }

    /** Says that the documents are being made. */
    public void expect() {
        documents = List.of();
        show((Image) null);
        tell(texts.text("papers.making.help"));
    }

    /** Shows documents, the first of them, or the one that was shown before. */
    public void show(Pages pages) {
        int index = Math.max(0, which.getSelectionIndex());
        documents = new ArrayList<>(pages.documents().values());
        which.setItems(documents.stream().map(Pages.Document::title).toArray(String[]::new));
        which.select(Math.min(index, documents.size() - 1));
        layout(true, true); // the tools may need another row
        turn(page);
    }

    private Optional<Pages.Document> document() {
        int index = which.getSelectionIndex();
        return index < 0 || index >= documents.size() ? Optional.empty() : Optional.of(documents.get(index));
    }

    private void turn(int to) {
        document().ifPresent(document -> {
            page = Math.max(1, Math.min(document.pages(), to));
            where.setText(texts.text("papers.where", page, document.pages()));
            where.getParent().layout();
            draw();
        });
    }

    /** Larger or smaller by a factor, not smaller than a whole page. */
    public void zoom(double by) {
        larger = Math.max(1, Math.min(LARGEST, larger * by));
        draw();
    }

    /** A whole page. */
    public void fit() {
        zoom(1 / LARGEST);
    }

    private void draw() {
        long mine = ++latest;
        Rectangle area = scroll.getClientArea();
        document()
                .filter(document -> area.width > 4 * MARGIN && area.height > 4 * MARGIN)
                .ifPresent(document -> {
                    int zoom = getMonitor().getZoom();
                    double fits = Math.min(
                            (area.width - 2 * MARGIN) / document.paper().widthMm(),
                            (area.height - 2 * MARGIN) / document.paper().heightMm());
                    int shown = page;
                    work.execute(() -> {
                        Picture picture = pictures.picture(document.pdf(), shown, fits * larger * zoom / 100);
                        if (!isDisposed()) {
                            getDisplay().asyncExec(() -> {
                                if (!isDisposed() && mine == latest) {
                                    show(PageImage.forScreen(getDisplay(), picture, zoom));
                                }
                            });
                        }
                    });
                });
    }

    private void show(Image shown) {
        if (image != null) {
            image.dispose();
        }
        if (image == null && shown != null) {
            tell(""); // that pages were being made
        }
        image = shown;
        if (!sheet.isDisposed()) {
            Rectangle area = scroll.getClientArea();
            Rectangle all = shown == null ? area : shown.getBounds();
            sheet.setSize(Math.max(area.width, all.width + 2 * MARGIN), Math.max(area.height, all.height + 2 * MARGIN));
            sheet.redraw();
        }
    }

    private void paint(GC gc) {
        if (image != null) {
            Rectangle all = image.getBounds();
            Rectangle area = sheet.getClientArea();
            gc.drawImage(image, (area.width - all.width) / 2, MARGIN);
        }
    }

    /** Whether a page is to be seen. */
    public boolean isShown() {
        return image != null;
    }

    /** Prints the document that is shown. */
    public void print() {
        document().ifPresent(document -> new Printing(texts, pictures, work, this::tell).print(getShell(), document));
    }
}
