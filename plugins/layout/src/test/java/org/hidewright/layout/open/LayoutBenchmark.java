package org.hidewright.layout.open;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.check.LayoutFault;
import org.hidewright.layout.engine.Found;
import org.hidewright.layout.engine.Halt;
import org.hidewright.layout.engine.StripLayouts;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Sheet;

/** Searches a layout for a published instance within a time, and tells how dense it is and what the check says of it. */
public final class LayoutBenchmark {
    private static final String USE = "layout-benchmark INSTANCE [--seconds N] [--seed S] [--workers W] [--json]";

    private record Mark(double seconds, double density) {}

    private final OpenInstance instance;
    private final double seconds;
    private final long seed;
    private final int workers;
    private final long started = System.nanoTime();
    private final List<Mark> marks = Collections.synchronizedList(new ArrayList<>());
    private volatile Found best;

    private LayoutBenchmark(OpenInstance instance, double seconds, long seed, int workers) {
        this.instance = instance;
        this.seconds = seconds;
        this.seed = seed;
        this.workers = workers;
    }

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
        new LayoutBenchmark(OpenInstance.read(file), seconds, seed, workers).run(json, System.out);
    }

    private void run(boolean json, PrintStream out) throws Exception {
        double height =
                instance.stripHeight().orElseThrow(() -> new IllegalArgumentException("Only strips can be searched."));
        Halt clock = tried -> elapsed() / seconds;
        long tried = new StripLayouts(instance.pieces(), height)
                .search(seed, Collections.nCopies(workers, clock), this::better);
        ObjectNode result = result(height, tried);
        if (json) {
            out.println(new ObjectMapper().writeValueAsString(result));
        } else {
            out.printf(
                    Locale.ROOT,
                    "%s, seed %d: density %.3f %% after %.1f s, length %.4f; first layout after %.2f s with %.2f %%; %s%n",
                    instance.name(),
                    seed,
                    result.get("density").asDouble(),
                    elapsed(),
                    best.length(),
                    marks.get(0).seconds(),
                    marks.get(0).density(),
                    result.get("verdict").asText());
        }
    }

    private void better(Found found) {
        best = found;
        marks.add(new Mark(elapsed(), density(found)));
    }

    private double elapsed() {
        return (System.nanoTime() - started) / 1e9;
    }

    private double density(Found found) {
        return 100 * instance.area() / (instance.stripHeight().getAsDouble() * found.length());
    }

    private ObjectNode result(double height, long tried) {
        ObjectNode result = new ObjectMapper().createObjectNode();
        result.put("instance", instance.name());
        result.put("pieces", instance.pieces().size());
        result.put("seed", seed);
        result.put("seconds", seconds);
        result.put("workers", workers);
        result.put("placesTriedEachSecond", tried / elapsed());
        result.put("length", best.length());
        result.put("height", height);
        result.put("density", density(best));
        // the check once more, of the layout as it is printed
        double edge = best.length() * 1e-9;
        Sheet strip = Sheet.plain("strip", Outline.rectangle(-edge, -edge, best.length() + edge, height + edge));
        List<LayoutFault> faults = LayoutCheck.faults(instance.pieces(), List.of(strip), best.laid(), 0);
        boolean whole = best.laid().size() == instance.pieces().size();
        result.put("verdict", faults.isEmpty() && whole ? "can be cut" : "cannot be cut: " + faults);
        ArrayNode curve = result.putArray("curve");
        for (Mark mark : marks) {
            curve.addObject().put("seconds", mark.seconds()).put("density", mark.density());
        }
        ArrayNode placed = result.putArray("placed");
        for (Laid laid : best.laid()) {
            placed.addObject()
                    .put("piece", instance.pieces().get(laid.piece()).name())
                    .put("degrees", Math.toDegrees(laid.angle()))
                    .put("dx", laid.dx())
                    .put("dy", laid.dy());
        }
        return result;
    }
}
