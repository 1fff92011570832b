import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import javax.tools.ToolProvider;

/**
 * What each of many small bundles costs a start of the built program: 0 to 200 installed calculators, in turns, with the notes
 * that the framework keeps between starts and without. Arguments: the rounds, the folder for the results.
 */
public final class BundlesBenchmark {
    private static final Path PROGRAM = Path.of("platform/distribution/target/hidewright").toAbsolutePath();
    private static final List<Integer> COUNTS = List.of(0, 50, 100, 200);
    private static final List<String> COMMAND = List.of("work", "thickness", "thickness=2-3 oz");
    private static final String WARM = "warm";
    private static final String COLD = "cold";
    private static final String PROCESSOR = "processor time";
    private static final Pattern CPU = Pattern.compile("(\\d+)m([\\d.]+)s (\\d+)m([\\d.]+)s");
    private static final double AIM_MS = 5;

    private static final String SOURCE = """
            package net.example.many.n%1$03d;

            import java.util.List;
            import org.hidewright.api.calculator.*;
            import org.hidewright.api.measure.Length;

            @Calculates("many-%1$03d")
            public final class Many implements Calculator<Many.Asking, Many.Told> {
                public enum Way { FLAT, FOLDED }

                public record Asking(
                        @Asked(unit = "mm", min = "0.5 mm", max = "20 mm", preset = "2 mm") Length thickness,
                        @Asked(preset = "flat") Way way) {}

                public record Told(@Answered(unit = "mm", by = "f", lead = true) Length length) {}

                private static final Formula F = Formula.of("f", "L = %1$d · t", Source.of("s", Source.Kind.DEFINITION));

                @Override
                public List<Formula> formulas() {
                    return List.of(F);
                }

                @Override
                public Outcome<Told> calculate(Asking asked, Working working) {
                    return Outcome.of(new Told(asked.thickness().times(%1$d)));
                }
            }
            """;

    private static final String TEXTS = """
            many-%1$03d.title = Many %1$d
            many-%1$03d.purpose = One of many.
            many-%1$03d.thickness = Thickness
            many-%1$03d.thickness.help = Of the leather.
            many-%1$03d.way = Way
            many-%1$03d.way.help = How it lies.
            way.flat = Flat
            way.folded = Folded
            many-%1$03d.answer.length = Length
            formula.f = Times as thick
            source.s = By definition
            """;

    private static final String COMPONENT = """
            <?xml version="1.0" encoding="UTF-8"?>
            <scr:component xmlns:scr="http://www.osgi.org/xmlns/scr/v1.3.0" name="net.example.many.n%1$03d.Many">
              <property name="calculator.calculates" type="String" value="many-%1$03d"/>
              <property name="calculator.version" type="Integer" value="1"/>
              <service>
                <provide interface="org.hidewright.api.calculator.Calculator"/>
              </service>
              <implementation class="net.example.many.n%1$03d.Many"/>
            </scr:component>
            """;

    private final StringBuilder raw = new StringBuilder("round\tbundles\tnotes\twhat\tms\n");
    private final Map<String, List<Double>> measured = new LinkedHashMap<>();
    private final List<String> steps = new ArrayList<>();
    private final Path scratch = Files.createTempDirectory("bundles");

    private BundlesBenchmark() throws IOException {}

    public static void main(String[] arguments) throws Exception {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 11;
        Path results = Path.of(arguments.length > 1 ? arguments[1] : "platform/benchmarks/bundles/results");
        new BundlesBenchmark().run(rounds, results);
    }

    private void run(int rounds, Path results) throws Exception {
        compile();
        for (int count : COUNTS) {
            Path addOns = Files.createDirectories(settings(count).resolve("addons"));
            for (int i = 1; i <= count; i++) {
                pack(i, addOns.resolve(String.format(Locale.ROOT, "net.example.many.n%03d.jar", i)));
            }
        }
        for (int round = -1; round < rounds; round++) {
            for (int count : COUNTS) {
                Path cold = Files.createTempDirectory(scratch, "cache");
                start(round, count, COLD, cold);
                start(round, count, WARM, scratch.resolve("warm-" + count));
            }
        }
        Files.createDirectories(results);
        Files.writeString(results.resolve("bundles.tsv"), raw);
        String summary = summary(rounds);
        Files.writeString(results.resolve("bundles.md"), summary);
        System.out.print(summary);
    }

    private Path settings(int count) {
        return scratch.resolve("settings-" + count);
    }

    /** All of them at once, against the contract that the program brings. */
    private void compile() throws IOException {
        List<String> options = new ArrayList<>(List.of(
                "--release", "17", "-parameters", "-proc:none", "-cp", contract().toString(), "-d", classes().toString()));
        for (int i = 1; i <= COUNTS.get(COUNTS.size() - 1); i++) {
            Path folder = Files.createDirectories(scratch.resolve(String.format(Locale.ROOT, "source/n%03d", i)));
            options.add(Files.writeString(folder.resolve("Many.java"), String.format(Locale.ROOT, SOURCE, i)).toString());
        }
        if (ToolProvider.getSystemJavaCompiler().run(null, null, null, options.toArray(String[]::new)) != 0) {
            throw new IOException("The bundles are not compiled.");
        }
    }

    private Path classes() {
        return scratch.resolve("classes");
    }

    private static Path contract() throws IOException {
        try (Stream<Path> libraries = Files.list(PROGRAM.resolve("lib"))) {
            return libraries.filter(jar -> jar.getFileName().toString().startsWith("org.hidewright.api.contract"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private void pack(int i, Path jar) throws IOException {
        Manifest manifest = new Manifest();
        Attributes headers = manifest.getMainAttributes();
        String name = String.format(Locale.ROOT, "net.example.many.n%03d", i);
        headers.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        headers.putValue("Bundle-ManifestVersion", "2");
        headers.putValue("Bundle-SymbolicName", name);
        headers.putValue("Bundle-Version", "1.0.0");
        headers.putValue("Service-Component", "OSGI-INF/" + name + ".Many.xml");
        headers.putValue("Import-Package", "org.hidewright.api.calculator;version=\"[1.0,2)\","
                + "org.hidewright.api.measure;version=\"[1.0,2)\"");
        Path folder = Path.of("net", "example", "many", name.substring(name.lastIndexOf('.') + 1));
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest);
                Stream<Path> compiled = Files.list(classes().resolve(folder))) {
            for (Path file : compiled.sorted().toList()) {
                put(out, classes().relativize(file).toString(), Files.readAllBytes(file));
            }
            put(out, folder.resolve("messages.properties").toString(), text(TEXTS, i));
            put(out, "OSGI-INF/" + name + ".Many.xml", text(COMPONENT, i));
        }
    }

    private static byte[] text(String pattern, int i) {
        return String.format(Locale.ROOT, pattern, i).getBytes(StandardCharsets.UTF_8);
    }

    private static void put(JarOutputStream out, String name, byte[] bytes) throws IOException {
        out.putNextEntry(new ZipEntry(name.replace('\\', '/')));
        out.write(bytes);
        out.closeEntry();
    }

    private void start(int round, int count, String notes, Path cache) throws Exception {
        // The shell tells the processor time of what it ran, which a busy machine falsifies less than the time that passed.
        List<String> command = new ArrayList<>(List.of(
                "sh", "-c", "\"$0\" \"$@\"; code=$?; times >&2; exit $code", PROGRAM.resolve("hidewright").toString()));
        command.addAll(List.of("--settings", settings(count).toString()));
        command.addAll(COMMAND);
        ProcessBuilder builder = new ProcessBuilder(command);
        Path told = scratch.resolve("told");
        builder.redirectError(told.toFile());
        builder.environment().put("XDG_CACHE_HOME", cache.toString());
        Instant now = Instant.now();
        long begun = System.nanoTime();
        builder.environment()
                .put("HIDEWRIGHT_TIMINGS", String.valueOf(now.getEpochSecond() * 1_000_000_000L + now.getNano()));
        Process process = builder.start();
        long answered;
        try (InputStream said = process.getInputStream()) {
            said.read();
            answered = System.nanoTime();
            said.readAllBytes();
        }
        int code = process.waitFor();
        long ended = System.nanoTime();
        List<String> lines = Files.readAllLines(told, StandardCharsets.UTF_8);
        if (code != 0 || !lines.stream().allMatch(line -> line.startsWith("timing\t") || CPU.matcher(line).matches())) {
            throw new IOException("A start ended with code " + code + ": " + lines);
        }
        if (round < 0) {
            return;
        }
        note(round, count, notes, "first answer", (answered - begun) / 1e6);
        note(round, count, notes, "end", (ended - begun) / 1e6);
        note(round, count, notes, PROCESSOR, processorMs(lines.get(lines.size() - 1)));
        for (String line : lines.stream().filter(line -> line.startsWith("timing")).toList()) {
            String[] parts = line.split("\t");
            if (!steps.contains(parts[1])) {
                steps.add(parts[1]);
            }
            note(round, count, notes, parts[1], Long.parseLong(parts[2].replace(" us", "")) / 1000.0);
        }
    }

    /** Of the processes that the shell ran, by user and system. */
    private static double processorMs(String line) {
        Matcher times = CPU.matcher(line);
        if (!times.matches()) {
            throw new IllegalStateException(line);
        }
        return 1000 * (60 * Double.parseDouble(times.group(1)) + Double.parseDouble(times.group(2))
                + 60 * Double.parseDouble(times.group(3)) + Double.parseDouble(times.group(4)));
    }

    private void note(int round, int count, String notes, String what, double ms) {
        raw.append(String.format(Locale.ROOT, "%d\t%d\t%s\t%s\t%.2f%n", round, count, notes, what, ms));
        measured.computeIfAbsent(key(count, notes, what), any -> new ArrayList<>()).add(ms);
    }

    private static String key(int count, String notes, String what) {
        return count + " " + notes + " " + what;
    }

    private double median(int count, String notes, String what) {
        List<Double> sorted = measured.get(key(count, notes, what)).stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }

    /** By how much a bundle more makes it later: the line nearest to the medians, by least squares. */
    private double slope(String notes, String what) {
        double countMean = COUNTS.stream().mapToInt(count -> count).average().orElseThrow();
        double mean = COUNTS.stream().mapToDouble(count -> median(count, notes, what)).average().orElseThrow();
        double up = 0;
        double across = 0;
        for (int count : COUNTS) {
            up += (count - countMean) * (median(count, notes, what) - mean);
            across += (count - countMean) * (count - countMean);
        }
        return up / across;
    }

    private String summary(int rounds) throws IOException {
        StringBuilder text = new StringBuilder("# A start with many bundles\n\n");
        text.append(machine()).append("\n\n`").append(String.join(" ", COMMAND)).append("`, medians of ").append(rounds)
                .append(" rounds, in ms; “warm” with the notes of an earlier start, “cold” without. The aim is ")
                .append(String.format(Locale.ROOT, "%.0f ms for each bundle.%n%n", AIM_MS));
        text.append("| what | notes |");
        COUNTS.forEach(count -> text.append(" ").append(count).append(" bundles |"));
        text.append(" each bundle |\n|---|---|").append("---|".repeat(COUNTS.size() + 1)).append('\n');
        for (String what : List.of("first answer", "end", PROCESSOR)) {
            for (String notes : List.of(WARM, COLD)) {
                line(text, what, notes);
            }
        }
        text.append("\nWhere a start is, by the launcher’s own clock.\n\n| step reached | notes |");
        COUNTS.forEach(count -> text.append(" ").append(count).append(" bundles |"));
        text.append(" each bundle |\n|---|---|").append("---|".repeat(COUNTS.size() + 1)).append('\n');
        for (String notes : List.of(WARM, COLD)) {
            steps.forEach(step -> line(text, step, notes));
        }
        return text.toString();
    }

    private void line(StringBuilder text, String what, String notes) {
        text.append("| ").append(what).append(" | ").append(notes).append(" |");
        COUNTS.forEach(count -> text.append(String.format(Locale.ROOT, " %.0f |", median(count, notes, what))));
        text.append(String.format(Locale.ROOT, " %.2f |%n", slope(notes, what)));
    }

    private static String machine() throws IOException {
        Path info = Path.of("/proc/cpuinfo");
        String model = Files.exists(info)
                ? Files.readAllLines(info).stream()
                        .filter(line -> line.startsWith("model name"))
                        .map(line -> line.replaceFirst(".*: ", ""))
                        .findFirst()
                        .orElse("unknown processor")
                : "unknown processor";
        Path load = Path.of("/proc/loadavg");
        return "Machine: " + model + ", " + Runtime.getRuntime().availableProcessors() + " cores, "
                + System.getProperty("os.name") + " " + System.getProperty("os.arch") + ", Java "
                + System.getProperty("java.runtime.version")
                + (Files.exists(load) ? ", load at the end " + Files.readString(load).split(" ")[0] : "") + ".";
    }
}
