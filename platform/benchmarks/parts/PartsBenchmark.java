import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.Parallel;
import org.hidewright.api.geometry.PathData;
import org.hidewright.api.geometry.Spacing;
import org.hidewright.api.geometry.Spot;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.StitchLine;
import org.hidewright.core.item.ItemChecks;
import org.hidewright.core.item.ItemFacts;

/**
 * A part of 8 segments (lines, arcs, cubics), 7 windows and slots and 120 holes: made from its path, its stitch line laid
 * beside the outline and spaced, all checks, all facts. Argument: the folder for the results.
 */
public final class PartsBenchmark {
    private static final int ROUNDS = 9;
    private static final long ROUND_NS = 1_000_000_000L;
    /** 8 segments round a body with two rounded corners below and a curved mouth above. */
    private static final String OUTLINE =
            "M 12 0 H 138 A 12 12 0 0 1 150 12 V 90 C 140 84 110 80 75 80 C 40 80 10 84 0 90 V 40 C -3 30 -3 24 0 12 A 12 12 0 0 1 12 0 Z";

    private final StringBuilder raw = new StringBuilder("what\tround\tparts a second\n");
    private final StringBuilder table = new StringBuilder();
    private long sink;

    public static void main(String[] arguments) throws IOException {
        new PartsBenchmark().run(Path.of(arguments.length > 0 ? arguments[0] : "platform/benchmarks/parts/results"));
    }

    private void run(Path results) throws IOException {
        Item item = item();
        Part part = item.parts().get(0);
        int checks = ItemChecks.of(item).size();
        row("# Parts with all checks\n");
        row("Machine: " + System.getProperty("os.name") + " " + System.getProperty("os.arch") + ", "
                + Runtime.getRuntime().availableProcessors() + " cores, Java " + Runtime.version()
                + "; one thread.\n");
        row("The part: " + part.outline().segments().size() + " segments, "
                + part.cutOuts().size() + " windows and slots, "
                + (part.holes().size() + part.stitchLines().stream().mapToInt(line -> line.holes().size()).sum())
                + " holes; " + checks + " checks found. Medians of " + ROUNDS + " rounds of a second after three to warm up.\n");
        row("| what | parts a second | share of the whole |");
        row("|---|---|---|");
        double whole = measure("whole: read, laid, spaced, checked, measured", () -> {
            Item made = item();
            return ItemChecks.of(made).size() + ItemFacts.rows(made).size();
        });
        row(whole, whole, "whole: read, laid, spaced, checked, measured");
        for (Step step : List.of(
                new Step("read, stitch line laid and spaced", () -> item().parts().size()),
                new Step("all checks", () -> ItemChecks.of(item).size()),
                new Step("facts", () -> ItemFacts.rows(item).size()))) {
            row(measure(step.name(), step.work()), whole, step.name());
        }
        Files.createDirectories(results);
        Files.writeString(results.resolve("parts.tsv"), raw);
        Files.writeString(results.resolve("parts.md"), table);
        System.out.print(table);
        System.err.println(sink);
    }

    private record Step(String name, Supplier<Integer> work) {}

    private void row(String line) {
        table.append(line).append('\n');
    }

    private void row(double rate, double whole, String name) {
        row("| " + name + " | " + String.format(Locale.ROOT, "%.0f", rate) + " | "
                + String.format(Locale.ROOT, "%.2f", whole / rate) + " |");
    }

    private double measure(String name, Supplier<Integer> work) {
        double[] rates = new double[ROUNDS];
        for (int round = -3; round < ROUNDS; round++) {
            long start = System.nanoTime();
            long done = 0;
            while (System.nanoTime() - start < ROUND_NS) {
                sink += work.get();
                done++;
            }
            double rate = done * 1e9 / (System.nanoTime() - start);
            if (round >= 0) {
                rates[round] = rate;
                raw.append(name).append('\t').append(round).append('\t').append(rate).append('\n');
            }
        }
        Arrays.sort(rates);
        return rates[ROUNDS / 2];
    }

    private static Item item() {
        Curve outline;
        try {
            outline = PathData.read(OUTLINE);
        } catch (PathData.Unreadable e) {
            throw new IllegalStateException(e);
        }
        Curve line = Parallel.of(outline, 4, Corner.ROUND).get(0);
        List<Point> stitches = Spacing.of(line, line.length() / 112, AtCorners.PASS).marks().stream()
                .map(Spot::point)
                .toList();
        Part.Builder part = Part.of("body", "Body", outline.path(Role.CUT)).thickness(2);
        for (int i = 0; i < 7; i++) {
            Point corner = Point.of(20 + 16 * i, 30 + 3 * (i % 2));
            part.cutOut((i % 2 == 0
                            ? Outlines.roundedRectangle(corner, 8, 18, 3)
                            : Outlines.ellipse(corner.plus(4, 9), 8, 18))
                    .path(Role.INNER_CUT));
        }
        for (int i = 0; i < 8; i++) {
            part.hole(Hole.of("h" + i, Point.of(16 + 16 * i, 64), 3));
        }
        part.stitchLine(StitchLine.of("rim", line.path(Role.STITCH), stitches));
        return Item.builder()
                .part(part.build())
                .fitting(Fitting.of("rivet", "Rivet", List.of(new OnPart("body", "h0"))))
                .build();
    }
}
