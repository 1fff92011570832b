import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Values;
import org.hidewright.catalogue.ThreadGuard;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Guard;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.straps.KeeperLength;
import org.hidewright.straps.MeasuredNeutralLine;
import org.hidewright.straps.StrapLayout;
import org.hidewright.straps.StrapWidth;
import org.hidewright.straps.StripCount;
import org.hidewright.thickness.GaugeReadings;
import org.hidewright.thickness.LeatherSuits;
import org.hidewright.thickness.PieceWeight;
import org.hidewright.thickness.Skive;
import org.hidewright.thickness.Stack;
import org.hidewright.thickness.Thickness;

/**
 * What it costs that calculators are called on a thread of the guard: one call after another, with pauses between, with
 * other work on all cores; and the ranges of the sample projects. Guarded and not guarded in turns, in one run. Argument:
 * the folder for the results.
 */
public final class GuardBenchmark {
    /** The work of a calculator done at once, as if nobody could misbehave. */
    private static final Guard NONE = new Guard() {
        @Override
        public <T> T call(String bundle, Supplier<T> code) {
            return code.get();
        }

        @Override
        public void run(String bundle, Runnable code, BooleanSupplier may) {
            code.run();
        }
    };

    private static final int ROUNDS = 21;
    private static final int WARM = 5;
    private static final int CALLS = 20_000;
    private static final int PAUSED_CALLS = 200;
    private static final long PAUSE_NS = 5_000_000;
    private static final Path SAMPLES = Path.of("samples/projects");

    private final Guard guard = new ThreadGuard();
    private final StringBuilder raw = new StringBuilder("what\tguarded\tround\tmicroseconds\n");
    private final StringBuilder table = new StringBuilder();

    public static void main(String[] arguments) throws IOException {
        new GuardBenchmark().run(Path.of(arguments.length > 0 ? arguments[0] : "platform/benchmarks/guard/results"));
    }

    private void run(Path results) throws IOException {
        int cores = Runtime.getRuntime().availableProcessors();
        row("# The guard of bundles\n");
        row("Machine: " + System.getProperty("os.name") + " " + System.getProperty("os.arch") + ", " + cores
                + " cores, Java " + Runtime.version() + ", load at the start " + load() + ".\n");
        row("Medians of " + ROUNDS + " rounds after " + WARM + " to warm up, guarded and not in turns.\n");
        calls(cores);
        ranges();
        Files.createDirectories(results);
        Files.writeString(results.resolve("guard.tsv"), raw);
        Files.writeString(results.resolve("guard.md"), table);
        System.out.print(table);
    }

    private void row(String line) {
        table.append(line).append('\n');
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.2f" : "%.1f", value);
    }

    private static String load() throws IOException {
        Path load = Path.of("/proc/loadavg");
        return Files.isReadable(load) ? Files.readString(load).split(" ")[0] : "unknown";
    }

    private static DeclaredCalculator[] calculators() {
        return Stream.<Calculator<?, ?>>of(
                        new Thickness(),
                        new Stack(),
                        new Skive(),
                        new PieceWeight(),
                        new LeatherSuits(),
                        new GaugeReadings(),
                        new StrapLayout(),
                        new StrapWidth(),
                        new StripCount(),
                        new KeeperLength(),
                        new MeasuredNeutralLine())
                .map(RecordCalculator::of)
                .toArray(DeclaredCalculator[]::new);
    }

    /** A calculator called as the catalogue of installed bundles calls it; its own class is not open to others. */
    private record Called(DeclaredCalculator calculator, Guard guard) implements DeclaredCalculator {
        @Override
        public Declaration declaration() {
            return calculator.declaration();
        }

        @Override
        public Outcome<Values> work(Values questions, Working working) {
            return guard.call("benchmark", () -> calculator.work(questions, working));
        }

        @Override
        public Texts texts() {
            return calculator.texts();
        }
    }

    private static Catalogue catalogue(Guard guard) {
        return Catalogue.of(
                "benchmark",
                Arrays.stream(calculators())
                        .map(calculator -> new Called(calculator, guard))
                        .toArray(DeclaredCalculator[]::new));
    }

    /** What was asked of the calculator of a project of one slip. */
    private static Values asked(DeclaredCalculator calculator, String questions) {
        List<Values> asked = new ArrayList<>();
        DeclaredCalculator listening = new DeclaredCalculator() {
            @Override
            public Declaration declaration() {
                return calculator.declaration();
            }

            @Override
            public Outcome<Values> work(Values values, Working working) {
                asked.add(values);
                return calculator.work(values, working);
            }

            @Override
            public Texts texts() {
                return calculator.texts();
            }
        };
        Project project = ProjectReader.read("{\"hidewright\": 1, \"slips\": [{\"id\": \"s\", \"calculator\": \""
                        + calculator.declaration().id() + "\", \"questions\": " + questions + "}]}")
                .project()
                .orElseThrow();
        new Bench(Catalogue.of("benchmark", listening)).work(project);
        return asked.get(0);
    }

    private void calls(int cores) {
        DeclaredCalculator thickness = RecordCalculator.of(new Thickness());
        Values questions = asked(thickness, "{\"thickness\": \"2 mm\"}");
        DeclaredCalculator plain = new Called(thickness, NONE);
        DeclaredCalculator guarded = new Called(thickness, guard);
        row("| calls | not guarded, µs each | guarded, µs each | ratio | the guard adds, µs |\n|---|---|---|---|---|");
        compare("nothing, one call after another", call -> call.call("benchmark", () -> null));
        compare(
                "calculator `thickness`, one call after another",
                call -> (call == NONE ? plain : guarded).work(questions, Working.NONE));
        List<Thread> others = busy(cores);
        compare(
                "the same, while " + cores + " other threads keep the cores busy",
                call -> (call == NONE ? plain : guarded).work(questions, Working.NONE));
        others.forEach(Thread::interrupt);
        paused(questions, plain, guarded);
        row("");
    }

    private interface Work {
        void with(Guard guard);
    }

    private void compare(String what, Work work) {
        median(what, call -> {
            long start = System.nanoTime();
            for (int i = 0; i < CALLS; i++) {
                work.with(call);
            }
            return (System.nanoTime() - start) / 1e3 / CALLS;
        });
    }

    /** The single call that a worker makes who types and looks: both threads have gone to sleep since the one before. */
    private void paused(Values questions, DeclaredCalculator plain, DeclaredCalculator guarded) {
        median("the same, with " + PAUSE_NS / 1_000_000 + " ms of rest before each", call -> {
            DeclaredCalculator calculator = call == NONE ? plain : guarded;
            long took = 0;
            for (int i = 0; i < PAUSED_CALLS; i++) {
                LockSupport.parkNanos(PAUSE_NS);
                long start = System.nanoTime();
                calculator.work(questions, Working.NONE);
                took += System.nanoTime() - start;
            }
            return took / 1e3 / PAUSED_CALLS;
        });
    }

    private static List<Thread> busy(int threads) {
        List<Thread> busy = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            Thread thread = new Thread(() -> {
                while (!Thread.currentThread().isInterrupted()) {
                    Thread.onSpinWait();
                }
            });
            thread.setDaemon(true);
            thread.start();
            busy.add(thread);
        }
        return busy;
    }

    private interface Measured {
        double microseconds(Guard guard);
    }

    private void median(String what, Measured work) {
        double[] plain = new double[ROUNDS];
        double[] guarded = new double[ROUNDS];
        for (int round = -WARM; round < ROUNDS; round++) {
            double without = work.microseconds(NONE);
            double with = work.microseconds(guard);
            if (round >= 0) {
                plain[round] = without;
                guarded[round] = with;
                raw.append(what).append("\tno\t").append(round).append('\t').append(number(without)).append('\n');
                raw.append(what).append("\tyes\t").append(round).append('\t').append(number(with)).append('\n');
            }
        }
        Arrays.sort(plain);
        Arrays.sort(guarded);
        double without = plain[ROUNDS / 2];
        double with = guarded[ROUNDS / 2];
        row("| " + what + " | " + number(without) + " | " + number(with) + " | " + number(with / without) + " | "
                + number(with - without) + " |");
    }

    /** Every slip's ranges, of a project worked anew each time, since ranges are worked once and kept. */
    private void ranges() throws IOException {
        row("| sample project | not guarded, µs | guarded, µs | ratio | the guard adds, µs |\n|---|---|---|---|---|");
        Bench plain = new Bench(catalogue(NONE));
        Bench guarded = new Bench(catalogue(guard));
        List<Path> samples;
        try (Stream<Path> files = Files.list(SAMPLES)) {
            samples = files.sorted().toList();
        }
        for (Path sample : samples) {
            Project project =
                    ProjectReader.read(Files.readString(sample)).project().orElseThrow();
            String name = sample.getFileName().toString();
            median(name + ", worked", call -> took(() -> (call == NONE ? plain : guarded).work(project)));
            int calls = calledForRanges(project);
            if (calls > 0) {
                median(name + ", its ranges (" + calls + " calls)", call -> {
                    WorkedProject worked = (call == NONE ? plain : guarded).work(project);
                    return took(() -> askRanges(worked));
                });
            }
        }
    }

    private static void askRanges(WorkedProject worked) {
        worked.project().slips().forEach(slip -> worked.ranges(slip.id()));
    }

    private static int calledForRanges(Project project) {
        int[] calls = {0};
        WorkedProject worked = new Bench(catalogue(new Guard() {
                    @Override
                    public <T> T call(String bundle, Supplier<T> code) {
                        calls[0]++;
                        return code.get();
                    }

                    @Override
                    public void run(String bundle, Runnable code, BooleanSupplier may) {
                        code.run();
                    }
                }))
                .work(project);
        calls[0] = 0;
        askRanges(worked);
        return calls[0];
    }

    private static double took(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e3;
    }
}
