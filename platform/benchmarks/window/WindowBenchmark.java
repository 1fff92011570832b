package org.hidewright.window;

import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.workshop.Stock;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.model.Memory;
import org.hidewright.window.papers.Writers;
import org.hidewright.window.words.WindowTexts;

/**
 * A keystroke in a project of 12 slips and 10 parts: how long it keeps the thread of the window busy until answers and drawing
 * are repainted; and how long the program takes until its window is to be seen, against a command that answers. Argument: the
 * folder for the results.
 */
public final class WindowBenchmark {
    private static final int KEYSTROKES = 300;
    private static final int WARM = 60;
    private static final int STARTS = 9;
    private static final Path PROJECT = Path.of("platform/benchmarks/window/twelve-slips.json");

    private final Display display = new Display();
    private final ExecutorService work = Executors.newSingleThreadExecutor();
    private final StringBuilder raw = new StringBuilder("what\tround\tms\n");
    private final StringBuilder table = new StringBuilder();

    public static void main(String[] arguments) throws Exception {
        new WindowBenchmark().run(Path.of(arguments.length > 0 ? arguments[0] : "platform/benchmarks/window/results"));
        System.exit(0);
    }

    private void run(Path results) throws Exception {
        row("# The window");
        row("");
        row("Machine: " + System.getProperty("os.name") + " " + System.getProperty("os.arch") + ", "
                + Runtime.getRuntime().availableProcessors() + " cores, Java " + Runtime.version()
                + "; a screen in memory of 1366 x 768 (Xvfb).");
        row("");
        row("Work on the thread of the window from a keystroke until answers and drawing are repainted, milliseconds; "
                + KEYSTROKES + " keystrokes each after " + WARM + " to warm up.");
        row("");
        row("| field | median | nine in ten below | worst | median until all is shown, ranges too |");
        row("|---|---|---|---|---|");
        keystrokes();
        row("");
        row("From the start of a process, milliseconds; medians of " + STARTS + " in turns.");
        row("");
        row("| what | median | times the command |");
        row("|---|---|---|");
        starts();
        Files.createDirectories(results);
        Files.writeString(results.resolve("window.md"), table.toString());
        Files.writeString(results.resolve("window.tsv"), raw.toString());
        System.out.print(table);
    }

    private void row(String line) {
        table.append(line).append('\n');
    }

    private void keystrokes() throws Exception {
        Path scratch = Files.createTempDirectory("window");
        Path project = Files.copy(PROJECT, scratch.resolve("project.json"));
        Catalogue catalogue = catalogue();
        Stock stock = Stock.of(catalogue::tables);
        Shell shell = new Shell(display);
        Memory memory = Memory.in(scratch);
        Workroom room = new Workroom(
                catalogue,
                stock,
                scratch,
                memory,
                new UnitsSeen(memory, Optional.empty()),
                new WindowTexts(Locale.ENGLISH),
                new SystemFileAsking(shell),
                new Writers(Optional.empty(), Optional.empty(), List.of(), Optional.empty()),
                List.of(),
                Optional.empty(),
                scratch.resolve("samples"),
                work);
        MainWindow window = new MainWindow(display, new Inks(display, Palette.LIGHT), room, shell);
        window.open();
        window.open(project);
        settle();
        measure("a length of the body, which moves the drawing", shell, "body/width", "mm");
        measure("the pitch of the strikes, which moves answers alone", shell, "gusset-strikes/pitch", "mm");
        shell.dispose();
        settle();
    }

    /** The calculators of the bundles on the class path, by the descriptions of their components. */
    private static Catalogue catalogue() throws Exception {
        List<DeclaredCalculator> calculators = new ArrayList<>();
        ClassLoader loader = WindowBenchmark.class.getClassLoader();
        for (URL manifest : Collections.list(loader.getResources("META-INF/MANIFEST.MF"))) {
            try (InputStream in = manifest.openStream()) {
                String components = new Manifest(in).getMainAttributes().getValue("Service-Component");
                for (String component : components == null ? new String[0] : components.split(",")) {
                    try (InputStream text = loader.getResourceAsStream(component)) {
                        Matcher named = Pattern.compile("implementation class=\"([^\"]+)\"")
                                .matcher(new String(text.readAllBytes(), StandardCharsets.UTF_8));
                        Class<?> type = named.find() ? loader.loadClass(named.group(1)) : Object.class;
                        if (Calculator.class.isAssignableFrom(type)) {
                            calculators.add(RecordCalculator.of(
                                    (Calculator<?, ?>) type.getConstructor().newInstance()));
                        }
                    }
                }
            }
        }
        return Catalogue.of("bundled", calculators.toArray(DeclaredCalculator[]::new));
    }

    private void measure(String what, Shell shell, String id, String unit) throws Exception {
        Text field = field(shell, id);
        if (field == null) {
            throw new IllegalStateException("no field " + id);
        }
        field.setFocus();
        double value = Double.parseDouble(field.getText().replaceAll("[^0-9.]", ""));
        List<Double> busy = new ArrayList<>();
        List<Double> whole = new ArrayList<>();
        for (int i = 0; i < WARM + KEYSTROKES; i++) {
            String text = String.format(Locale.ROOT, "%.1f %s", value + i % 7 * 0.5, unit);
            long start = System.nanoTime();
            field.setText(text);
            long worked = System.nanoTime() - start + settle();
            double ms = worked / 1e6;
            if (i >= WARM) {
                busy.add(ms);
                whole.add((lastWork - start) / 1e6);
                raw.append(what).append('\t').append(i - WARM).append('\t').append(ms).append('\n');
            }
        }
        row(String.format(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.1f | %.0f |",
                what,
                at(busy, 0.5),
                at(busy, 0.9),
                at(busy, 1),
                at(whole, 0.5)));
    }

    private long lastWork;

    /** Works off everything until nothing is under way; the nanoseconds that this thread was busy. */
    private long settle() throws Exception {
        long busy = 0;
        long quietSince = System.nanoTime();
        lastWork = quietSince;
        Future<?> idle = work.submit(() -> {});
        while (System.nanoTime() - quietSince < 50_000_000 || !idle.isDone()) {
            long start = System.nanoTime();
            if (display.readAndDispatch()) {
                lastWork = System.nanoTime();
                busy += lastWork - start;
                quietSince = lastWork;
            } else {
                Thread.sleep(1);
            }
        }
        return busy;
    }

    private static Text field(Control control, String id) {
        if (control instanceof Text text && id.equals(control.getData("id"))) {
            return text;
        }
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                Text found = field(child, id);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    private static double at(List<Double> values, double share) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }

    private void starts() throws Exception {
        List<Double> command = new ArrayList<>();
        List<Double> visible = new ArrayList<>();
        List<Double> shown = new ArrayList<>();
        for (int i = 0; i < STARTS; i++) {
            command.add(start("command", i, List.of("work", "thickness", "thickness=2-3 oz"), 0));
            visible.add(start("window to be seen", i, List.of("window"), 1));
            shown.add(start("project to be seen", i, List.of("window", PROJECT.toString()), 2));
        }
        double base = at(command, 0.5);
        start("a command, to its end", command, base);
        start("the window, to be seen", visible, base);
        start("the window with the project worked out, to be seen", shown, base);
    }

    private void start(String what, List<Double> ms, double base) {
        row(String.format(Locale.ROOT, "| %s | %.0f | %.1f |", what, at(ms, 0.5), at(ms, 0.5) / base));
    }

    /** @param sees 0 waits for the end, 1 for anything on the screen, 2 for slips, which are what is white at the left */
    private double start(String what, int round, List<String> arguments, int sees) throws Exception {
        List<String> all = new ArrayList<>(List.of("platform/distribution/target/hidewright/hidewright"));
        all.addAll(arguments);
        ProcessBuilder builder = new ProcessBuilder(all).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("XDG_CONFIG_HOME", Files.createTempDirectory("settings").toString());
        while (!isDark()) {
            Thread.sleep(10);
        }
        long start = System.nanoTime();
        Process process = builder.start();
        if (sees == 0) {
            process.waitFor();
        } else {
            while (sees == 1 ? isDark() : !hasSlips()) {
                Thread.sleep(5);
            }
        }
        double ms = (System.nanoTime() - start) / 1e6;
        process.destroy();
        process.waitFor();
        raw.append(what).append('\t').append(round).append('\t').append(ms).append('\n');
        return ms;
    }

    private int pixel(int x, int y) {
        display.readAndDispatch();
        Image image = new Image(display, 1, 1);
        GC gc = new GC(display);
        gc.copyArea(image, x, y);
        gc.dispose();
        var data = image.getImageData();
        image.dispose();
        var rgb = data.palette.getRGB(data.getPixel(0, 0));
        return rgb.red << 16 | rgb.green << 8 | rgb.blue;
    }

    private boolean isDark() {
        return pixel(300, 300) == 0;
    }

    /** The paper of a slip, in its margin at the left of the first one. */
    private boolean hasSlips() {
        return pixel(14, 120) == Palette.LIGHT.paper();
    }
}
