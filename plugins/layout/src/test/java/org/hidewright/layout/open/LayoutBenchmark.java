package org.hidewright.layout.open;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import org.hidewright.api.calculator.Budget;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.check.LayoutFault;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Sheet;

/** Searches a layout for a published instance within a time, and tells how good it is and what the check says of it. */
public final class LayoutBenchmark {
    private static final String USE = "INSTANCE [--seconds N] [--seed S] [--workers W] [--json]";

    private LayoutBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        Path file = null;
        double seconds = 30;
        long seed = 1;
        int workers = Runtime.getRuntime().availableProcessors();
        boolean json = false;
        for (int at = 0; at < arguments.length; at++) {
            switch (arguments[at]) {
                case "--seconds" -> seconds = Double.parseDouble(arguments[++at]);
                case "--seed" -> seed = Long.parseLong(arguments[++at]);
                case "--workers" -> workers = Integer.parseInt(arguments[++at]);
                case "--json" -> json = true;
                default -> {
                    if (arguments[at].startsWith("-") || file != null) {
                        throw new IllegalArgumentException(arguments[at] + " is not known. Use: " + USE);
                    }
                    file = Path.of(arguments[at]);
                }
            }
        }
        if (file == null) {
            throw new IllegalArgumentException("An instance is missing. Use: " + USE);
        }
        OpenInstance instance = OpenInstance.read(file);
        run(instance, new Clock(seconds), seed, workers, json, System.out);
    }

    private static void run(OpenInstance instance, Clock clock, long seed, int workers, boolean json, PrintStream out)
            throws Exception {
        Run run = Run.of(instance, clock);
        CountedBudget budget = new CountedBudget(new RunBudget(seed, workers, places -> clock.spent()));
        long tried = run.search(budget);
        double elapsed = clock.elapsed();
        ObjectNode result = new ObjectMapper().createObjectNode();
        result.put("instance", instance.name());
        result.put("pieces", instance.pieces().size());
        result.put("seed", seed);
        result.put("seconds", clock.seconds());
        result.put("workers", workers);
        result.put("elapsed", elapsed);
        result.put("placesTriedEachSecond", tried / elapsed);
        result.put("bytesAllocatedForEachPlace", (double) budget.bytes().sum() / tried);
        run.tell(result);
        result.put("verdict", verdict(instance, run));
        ArrayNode placed = result.putArray("placed");
        for (Laid laid : run.laid()) {
            placed.addObject()
                    .put("piece", instance.pieces().get(laid.piece()).name())
                    .put("sheet", laid.sheet())
                    .put("degrees", Math.toDegrees(laid.angle()))
                    .put("dx", laid.dx())
                    .put("dy", laid.dy());
        }
        if (!json) {
            result.remove(List.of("placed", "curve"));
        }
        ObjectMapper writer = new ObjectMapper();
        out.println(
                json
                        ? writer.writeValueAsString(result)
                        : writer.writerWithDefaultPrettyPrinter().writeValueAsString(result));
    }

    /** What the check says once more, of the layout as it is told. */
    static String verdict(OpenInstance instance, Run run) {
        List<LayoutFault> faults = LayoutCheck.faults(instance.pieces(), run.sheets(), run.laid(), 0);
        return faults.isEmpty() ? "can be cut" : "cannot be cut: " + faults;
    }

    /** The time that a run may take, from when it was made. */
    record Clock(double seconds, long started) {
        Clock(double seconds) {
            this(seconds, System.nanoTime());
        }

        double elapsed() {
            return (System.nanoTime() - started) / 1e9;
        }

        double spent() {
            return elapsed() / seconds;
        }
    }

    /** A search of one kind of instance. */
    interface Run {
        static Run of(OpenInstance instance, Clock clock) {
            return instance.stripHeight().isPresent() ? new StripRun(instance, clock) : new SheetsRun(instance, clock);
        }

        long search(Budget budget);

        /** The best layout. */
        List<Laid> laid();

        /** What it lies on. */
        List<Sheet> sheets();

        /** When the first layout was found, in seconds. */
        double first();

        /** What this kind of instance is judged by, of the best layout found until then. */
        String at(double seconds);

        /** Writes what this kind of instance is judged by, and how it came about. */
        void tell(ObjectNode result);
    }
}
