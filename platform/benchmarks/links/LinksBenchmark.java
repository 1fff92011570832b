import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.function.IntUnaryOperator;
import java.util.function.LongSupplier;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.thickness.Stack;
import org.hidewright.thickness.Thickness;

/**
 * Projects of many linked slips: worked whole, worked again after one edit, in one long chain, at growing sizes; and what
 * ranges cost against working the same once. Each slip is a real calculator, one thickness to the next. Argument: the
 * folder for the results.
 */
public final class LinksBenchmark {
    private static final int ROUNDS = 9;
    private static final int WARM = 3;
    private static final long WARM_NS = 2_000_000_000L;

    private final Bench bench =
            new Bench(Catalogue.of("benchmark", RecordCalculator.of(new Thickness()), RecordCalculator.of(new Stack())));
    private final StringBuilder raw = new StringBuilder("what\tround\tms\n");
    private final StringBuilder table = new StringBuilder();

    public static void main(String[] arguments) throws IOException {
        new LinksBenchmark().run(Path.of(arguments.length > 0 ? arguments[0] : "platform/benchmarks/links/results"));
    }

    private void run(Path results) throws IOException {
        row("# Linked slips and ranges\n");
        row("Machine: " + System.getProperty("os.name") + " " + System.getProperty("os.arch") + ", "
                + Runtime.getRuntime().availableProcessors() + " cores, Java " + Runtime.version() + ".\n");
        row("Medians of " + ROUNDS + " rounds after " + WARM + " rounds and two seconds at least to warm up, in ms.\n");
        edits();
        editGrowth();
        growth();
        ranges();
        chainRanges();
        Files.createDirectories(results);
        Files.writeString(results.resolve("links.tsv"), raw);
        Files.writeString(results.resolve("links.md"), table);
        System.out.print(table);
    }

    private void row(String line) {
        table.append(line).append('\n');
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.3f" : "%.1f", value);
    }

    private static String slip(int i, String thickness) {
        return "{\"id\":\"s" + i + "\",\"calculator\":\"thickness\",\"questions\":{\"thickness\":" + thickness + "}}";
    }

    /** Chains of a length beside each other; a slip is fed by the one before it, the first of each chain is typed. */
    private static Project project(int slips, int chain) {
        return project(slips, i -> i % chain == 0
                ? slip(i, "\"2 mm\"")
                : slip(i, "{\"from\":\"s" + (i - 1) + "\",\"answer\":\"millimetres\"}"));
    }

    private static Project project(int slips, IntFunction<String> slip) {
        StringBuilder text = new StringBuilder("{\"hidewright\":1,\"slips\":[");
        for (int i = 0; i < slips; i++) {
            text.append(i == 0 ? "" : ",\n").append(slip.apply(i));
        }
        return ProjectReader.read(text.append("]}").toString()).project().orElseThrow();
    }

    /** The median of what a piece of work says it took. */
    private double median(String what, LongSupplier nanoseconds) {
        double[] ms = new double[ROUNDS];
        long start = System.nanoTime();
        for (int round = 0; round < WARM || System.nanoTime() - start < WARM_NS; round++) {
            nanoseconds.getAsLong();
        }
        for (int round = 0; round < ROUNDS; round++) {
            ms[round] = nanoseconds.getAsLong() / 1e6;
            raw.append(what).append('\t').append(round).append('\t').append(number(ms[round])).append('\n');
        }
        Arrays.sort(ms);
        return ms[ROUNDS / 2];
    }

    private static long took(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return System.nanoTime() - start;
    }

    private void edits() {
        Project project = project(10_000, 51);
        double full = median("10000 slips, full", () -> took(() -> bench.work(project)));
        WorkedProject worked = bench.work(project);
        double edit = edit("10000 slips, one edit", project, worked);
        Project long10k = project(10_000, 10_000);
        WorkedProject workedLong = bench.work(long10k);
        int[] turn = {0};
        double still = median("chain of 10000, an edit that changes no answer", () -> {
            String typed = turn[0]++ % 2 == 0 ? "\"0.2 cm\"" : "\"2.0 mm\"";
            return took(() -> bench.work(answering(long10k, "s0", typed), workedLong));
        });
        double chain = median("chain of 10000, full", () -> took(() -> bench.work(long10k)));
        row("| 10,000 slips | ms | share of full |\n|---|---|---|");
        row("| full, in chains of 51 | " + number(full) + " | 1 |");
        row("| one edit that reaches 50 more | " + number(edit) + " | 1/" + Math.round(full / edit) + " |");
        row("| full, in one chain of 10,000 | " + number(chain) + " | " + number(chain / full) + " |");
        row("| one edit at its head that changes no answer | " + number(still) + " | 1/" + Math.round(chain / still)
                + " of the chain |\n");
    }

    /** The first slip answered anew and everything worked that hangs on it: from the typed text to the worked project. */
    private double edit(String what, Project project, WorkedProject worked) {
        int[] turn = {0};
        return median(what, () -> {
            String typed = "\"2." + (1 + turn[0]++ % 8) + " mm\"";
            return took(() -> bench.work(answering(project, "s0", typed), worked));
        });
    }

    private static Project answering(Project project, String slip, String json) {
        try {
            return project.answering(slip, "thickness", json);
        } catch (JsonTrouble e) {
            throw new IllegalStateException(e);
        }
    }

    /** What an edit that reaches 50 more costs beside ever more slips that it does not reach. */
    private void editGrowth() {
        row("| slips in chains of 51 | one edit that reaches 50 more, ms | µs a slip reached |\n|---|---|---|");
        for (int slips : new int[] {100, 1_000, 10_000, 100_000}) {
            Project project = project(slips, 51);
            double edit = edit(slips + " slips, one edit", project, bench.work(project));
            row("| " + slips + " | " + number(edit) + " | " + number(edit * 1000 / 51) + " |");
        }
        row("");
    }

    private void growth() {
        row("| slips in one chain | ms | µs a slip | MiB held |\n|---|---|---|---|");
        for (int slips : new int[] {100, 1_000, 10_000, 100_000}) {
            Project project = project(slips, slips);
            double full = median(slips + " in a chain", () -> took(() -> bench.work(project)));
            long before = used();
            WorkedProject held = bench.work(project);
            long after = used();
            row("| " + held.slips().size() + " | " + number(full) + " | " + number(full * 1000 / slips) + " | "
                    + number((after - before) / 1048576.0) + " |");
        }
        row("");
    }

    private static long used() {
        System.gc();
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private void ranges() {
        row("| ranges of one slip | worked once, ms | its ranges, ms | ratio | calls |\n|---|---|---|---|---|");
        range("one range, one slip", project(1, i -> slip(i, "\"2-3 oz\"")), "s0");
        range(
                "one range, at the head of a chain of 10",
                project(10, i -> i == 0
                        ? slip(0, "\"2-3 oz\"")
                        : slip(i, "{\"from\":\"s" + (i - 1) + "\",\"answer\":\"millimetres\"}")),
                "s9");
        for (int layers : new int[] {1, 4, 8, 16}) {
            StringBuilder rows = new StringBuilder();
            for (int i = 0; i < layers; i++) {
                rows.append(i == 0 ? "" : ",").append("{\"id\":\"l").append(i).append("\",\"thickness\":\"2-3 oz\"}");
            }
            Project stack = project(
                    1, i -> "{\"id\":\"s0\",\"calculator\":\"stack\",\"questions\":{\"layers\":[" + rows + "]}}");
            range("a stack of " + layers + " ranged layers", stack, "s0");
        }
        range("no range", project(1, i -> slip(i, "\"2 mm\"")), "s0");
    }

    /** The ranges of every slip of a chain with one range at its head, asked from its head or from its end; one round each. */
    private void chainRanges() {
        row("\n| ranges of all slips of a chain | asked from the head, ms | from the end, ms | µs a slip and value, from the head |"
                + "\n|---|---|---|---|");
        for (int slips : new int[] {10, 100, 300, 1_000}) {
            Project chain = project(slips, i -> i == 0
                    ? slip(0, "\"2-3 oz\"")
                    : slip(i, "{\"from\":\"s" + (i - 1) + "\",\"answer\":\"millimetres\"}"));
            double forward = all(slips + " ranges from the head", chain, i -> i);
            double backward = all(slips + " ranges from the end", chain, i -> slips - 1 - i);
            row("| " + slips + " | " + number(forward) + " | " + number(backward) + " | "
                    + number(forward * 1000 / slips / 443) + " |");
        }
    }

    private double all(String what, Project chain, IntUnaryOperator order) {
        WorkedProject worked = bench.work(chain);
        double ms = took(() -> {
                    for (int i = 0; i < chain.slips().size(); i++) {
                        worked.ranges("s" + order.applyAsInt(i));
                    }
                })
                / 1e6;
        raw.append(what).append("\t0\t").append(number(ms)).append('\n');
        return ms;
    }

    private void range(String what, Project project, String slip) {
        double once = median(what + ", once", () -> took(() -> bench.work(project)));
        int[] calls = {0};
        double ranges = median(what + ", ranges", () -> {
            WorkedProject worked = bench.work(project);
            long took = took(() -> worked.ranges(slip));
            calls[0] = worked.ranges(slip).map(found -> found.study().tried()).orElse(0);
            return took;
        });
        row("| " + what + " | " + number(once) + " | " + number(ranges) + " | " + number(ranges / once) + " | " + calls[0]
                + " |");
    }
}
