package org.hidewright.command;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.paper.CsvWriter;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.window.ProjectWindow;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.Version;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/**
 * What the launcher calls: takes the arguments of the command line and returns the exit code.
 *
 * <p>What one command alone needs, such as writers, is held as references, so that the others load nothing of it.
 */
@Component(service = ToIntFunction.class, property = "hidewright.entry=main")
public final class Commands implements ToIntFunction<String[]> {
    private final BundleContext context;

    @Reference
    private Catalogue catalogue;

    @Reference
    private ServiceReference<AddOns> addOns;

    @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
    private ServiceReference<PdfWriter> pdfWriter;

    @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
    private ServiceReference<CsvWriter> csvWriter;

    @Reference(policyOption = ReferencePolicyOption.GREEDY)
    private List<ServiceReference<DrawingWriter>> drawingWriters;

    @Reference(policyOption = ReferencePolicyOption.GREEDY)
    private List<ServiceReference<DrawingReader>> drawingReaders;

    @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
    private ServiceReference<ProjectWindow> window;

    @Activate
    public Commands(BundleContext context) {
        this.context = context;
    }

    @Override
    public int applyAsInt(String[] arguments) {
        PrintStream out = stream(FileDescriptor.out, false);
        PrintStream err = stream(FileDescriptor.err, true);
        try {
            return new CommandLineRun(
                            catalogue,
                            () -> context.getService(addOns),
                            new Paper(),
                            () -> Optional.ofNullable(window).map(context::getService),
                            version(),
                            in(),
                            out,
                            err)
                    .run(arguments);
        } finally {
            out.flush();
        }
    }

    /** What is typed comes in the characters of the terminal. */
    private static BufferedReader in() {
        return new BufferedReader(
                new InputStreamReader(new FileInputStream(FileDescriptor.in), Charset.defaultCharset()));
    }

    /** The stream of the process: what bundles print to that of the JVM must not come between answers. */
    private static PrintStream stream(FileDescriptor to, boolean atOnce) {
        return new PrintStream(new BufferedOutputStream(new FileOutputStream(to)), atOnce, StandardCharsets.UTF_8);
    }

    /** The version of this bundle, which is that of the program, without the qualifier of a build. */
    private String version() {
        Version version = context.getBundle().getVersion();
        return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
    }

    /** Writers and readers, each made when first asked for. */
    private final class Paper implements PaperServices {
        @Override
        public PdfWriter pdf() {
            return service(pdfWriter);
        }

        @Override
        public CsvWriter csv() {
            return service(csvWriter);
        }

        @Override
        public List<DrawingWriter> drawings() {
            return drawingWriters.stream()
                    .map(context::getService)
                    .sorted(Comparator.comparing(DrawingWriter::kind))
                    .toList();
        }

        @Override
        public List<DrawingReader> readers() {
            return drawingReaders.stream()
                    .map(context::getService)
                    .sorted(Comparator.comparing(DrawingReader::ending))
                    .toList();
        }

        private <S> S service(ServiceReference<S> reference) {
            return reference == null ? null : context.getService(reference);
        }
    }
}
