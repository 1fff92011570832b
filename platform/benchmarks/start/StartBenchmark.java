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
import javax.tools.ToolProvider;

/**
 * Cold start of the built program against an empty JVM, both measured in turns in one run, so that a busy machine weighs
 * on both. Every start is a new process; the disk is warm. Arguments: the rounds, the folder for the results, the command
 * with its arguments.
 */
public final class StartBenchmark {

    private static final String PROGRAM = "platform/distribution/target/hidewright/hidewright";
    private static final String EMPTY = "empty JVM";
    private static final String ANSWER = "first answer";
    private static final String END = "end of the process";
    private static final String FRESH = "first answer, empty cache";

    private final StringBuilder raw = new StringBuilder("round\twhat\tms\n");
    private final Map<String, List<Double>> measured = new LinkedHashMap<>();
    private final Path scratch = Files.createTempDirectory("start");

    private StartBenchmark() throws IOException {}

    public static void main(String[] arguments) throws Exception {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 21;
        Path results = Path.of(arguments.length > 1 ? arguments[1] : "platform/benchmarks/start/results");
        List<String> command = arguments.length > 2
                ? List.of(arguments).subList(2, arguments.length)
                : List.of("work", "thickness", "thickness=2-3 oz");
        new StartBenchmark().run(rounds, results, command);
    }

    private void run(int rounds, Path results, List<String> command) throws Exception {
        List<String> empty = emptyProgram();
        List<String> ours = new ArrayList<>(List.of(PROGRAM));
        ours.addAll(command);
        for (int round = -2; round < rounds; round++) {
            note(round, EMPTY, start(empty, Map.of(), round).endMs());
            Start start = start(ours, Map.of(), round);
            note(round, ANSWER, start.answerMs());
            note(round, END, start.endMs());
            Path cache = Files.createTempDirectory(scratch, "cache");
            note(round, FRESH, start(ours, Map.of("XDG_CACHE_HOME", cache.toString()), -1).answerMs());
        }
        Files.createDirectories(results);
        Files.writeString(results.resolve("start.tsv"), raw);
        String summary = summary(rounds, command);
        Files.writeString(results.resolve("start.md"), summary);
        System.out.print(summary);
    }

    private record Start(double answerMs, double endMs) {}

    /** Starts a process and waits; the launcher’s steps go into the table of rounds from 0 on. */
    private Start start(List<String> command, Map<String, String> environment, int round) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command);
        Path told = scratch.resolve("told");
        builder.redirectError(told.toFile());
        Instant now = Instant.now();
        long begun = System.nanoTime();
        builder.environment()
                .put("HIDEWRIGHT_TIMINGS", String.valueOf(now.getEpochSecond() * 1_000_000_000L + now.getNano()));
        builder.environment().putAll(environment);
        Process process = builder.start();
        long answered;
        try (InputStream said = process.getInputStream()) {
            said.read();
            answered = System.nanoTime();
            said.readAllBytes();
        }
        int code = process.waitFor();
        long ended = System.nanoTime();
        if (code != 0) {
            throw new IOException("A start ended with code " + code + ": " + Files.readString(told));
        }
        for (String line : Files.readAllLines(told, StandardCharsets.UTF_8)) {
            String[] parts = line.split("\t");
            if (parts[0].equals("timing") && round >= 0) {
                note(round, "step: " + parts[1], Long.parseLong(parts[2].replace(" us", "")) / 1000.0);
            }
        }
        return new Start((answered - begun) / 1e6, (ended - begun) / 1e6);
    }

    private void note(int round, String what, double ms) {
        if (round >= 0) {
            raw.append(String.format(Locale.ROOT, "%d\t%s\t%.2f%n", round, what, ms));
            measured.computeIfAbsent(what, key -> new ArrayList<>()).add(ms);
        }
    }

    private List<String> emptyProgram() throws IOException {
        Path source = Files.writeString(
                scratch.resolve("Empty.java"), "class Empty { public static void main(String[] none) {} }");
        ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-d", scratch.toString(), source.toString());
        return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", scratch.toString(),
                "Empty");
    }

    private String summary(int rounds, List<String> command) throws IOException {
        StringBuilder text = new StringBuilder("# Start of `hidewright " + String.join(" ", command) + "`\n\n");
        text.append(machine()).append("\n\nMedians of ").append(rounds).append(" rounds, in ms.\n\n");
        text.append("| what | median | least | times an empty JVM |\n|---|---|---|---|\n");
        for (String what : List.of(EMPTY, ANSWER, END, FRESH)) {
            text.append(String.format(Locale.ROOT, "| %s | %.0f | %.0f | %.2f |%n",
                    what, median(what), least(what), median(what) / median(EMPTY)));
        }
        text.append("\nWhere a start is, after it was asked for; and what each step takes.\n\n");
        text.append("| step | reached at | takes |\n|---|---|---|\n");
        double before = 0;
        for (String what : measured.keySet()) {
            if (what.startsWith("step: ")) {
                text.append(String.format(Locale.ROOT, "| %s | %.0f | %.0f |%n",
                        what.substring(6), median(what), median(what) - before));
                before = median(what);
            }
        }
        text.append(String.format(Locale.ROOT, "| %s | %.0f | %.0f |%n", END, median(END), median(END) - before));
        return text.toString();
    }

    private double median(String what) {
        List<Double> sorted = measured.get(what).stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }

    private double least(String what) {
        return measured.get(what).stream().mapToDouble(ms -> ms).min().orElseThrow();
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
