package org.hidewright.window;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.addons.CatalogueWithAddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.paper.CsvWriter;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.window.ProjectWindow;
import org.hidewright.core.workshop.Stock;
import org.hidewright.window.look.ClearLines;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.model.Memory;
import org.hidewright.window.papers.Writers;
import org.hidewright.window.words.WindowTexts;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Opens the window on the first thread and stays until it is closed. */
@Component
public final class WindowService implements ProjectWindow {
    private final BundleContext context;
    private final Catalogue catalogue;
    private final AddOns addOns;

    @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
    private ServiceReference<PdfWriter> pdf;

    @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
    private ServiceReference<CsvWriter> csv;

    @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
    private ServiceReference<PagePictures> pictures;

    @Reference(policyOption = ReferencePolicyOption.GREEDY)
    private List<ServiceReference<DrawingWriter>> drawings;

    @Reference(policyOption = ReferencePolicyOption.GREEDY)
    private List<ServiceReference<DrawingReader>> drawingReaders;

    @Activate
    public WindowService(BundleContext context, @Reference Catalogue catalogue, @Reference AddOns addOns) {
        this.context = context;
        this.catalogue = catalogue;
        this.addOns = addOns;
    }

    @Override
    public int open(Opening opening) {
        if (System.getenv().getOrDefault("DBUS_SESSION_BUS_ADDRESS", "").isEmpty()) {
            // no session to take part in, and nothing to print about that
            System.setProperty("org.eclipse.swt.internal.SessionManagerDBus.disable", "true");
        }
        ClearLines.ask();
        Display.setAppName("Hidewright");
        Display display = Display.getDefault();
        Inks inks = new Inks(display, Display.isSystemDarkTheme() ? Palette.DARK : Palette.LIGHT);
        ExecutorService work = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "working out");
            thread.setDaemon(true);
            return thread;
        });
        Shell shell = new Shell(display);
        Path settings = Path.of(context.getProperty("hidewright.settings"));
        Memory memory = Memory.in(settings);
        Workroom room = new Workroom(
                new CatalogueWithAddOns(catalogue, () -> addOns),
                Stock.of(catalogue::tables),
                settings,
                memory,
                new UnitsSeen(memory, opening.units()),
                new WindowTexts(opening.language()),
                new SystemFileAsking(shell),
                writers(),
                readers(),
                Optional.of(addOns),
                Path.of(context.getProperty("hidewright.home")).resolve("samples"),
                work);
        MainWindow window = new MainWindow(display, inks, room, shell);
        display.setRuntimeExceptionHandler(window::broke);
        try {
            window.open();
            opening.workshop().ifPresentOrElse(window.workshop()::open, window.workshop()::openRemembered);
            opening.project().ifPresent(window::open);
            if (opening.pictures().isPresent()) {
                return new StatePictures(window, room, opening.pictures().get()).make();
            }
            while (!shell.isDisposed()) {
                if (!display.readAndDispatch()) {
                    display.sleep();
                }
            }
        } finally {
            work.shutdownNow();
            display.dispose();
        }
        return 0;
    }

    private Writers writers() {
        return new Writers(
                service(pdf),
                service(csv),
                drawings.stream()
                        .map(context::getService)
                        .sorted(Comparator.comparing(DrawingWriter::kind))
                        .toList(),
                service(pictures));
    }

    private List<DrawingReader> readers() {
        return drawingReaders.stream()
                .map(context::getService)
                .sorted(Comparator.comparing(DrawingReader::ending))
                .toList();
    }

    private <S> Optional<S> service(ServiceReference<S> reference) {
        return Optional.ofNullable(reference).map(context::getService);
    }
}
