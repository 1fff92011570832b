package org.hidewright.layout.open;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Sheet;

/**
 * Searches all instances of a folder, one after another, and prints for each what its layout was after so many seconds: for strips
 * how dense, for hides and panels how many sheets were used and how many pieces left over.
 */
public final class LayoutTable {
    private final double seconds;
    private final List<Double> looks;
    private final BestKnown best;

    /** How many rows of panels used so many sheets more than their area asks for; "left over" where not all had room. */
    private final Map<String, Integer> beyond = new TreeMap<>();

    private LayoutTable(double seconds, List<Double> looks, BestKnown best) {
        this.seconds = seconds;
        this.looks = looks;
        this.best = best;
    }

    /** Called with the folder, how long each is searched in seconds, how many seeds, and the seconds that are looked at. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length < 4) {
            throw new IllegalArgumentException("Use: FOLDER SECONDS SEEDS LOOK…");
        }
        int seeds = Integer.parseInt(arguments[2]);
        List<Double> looks = new ArrayList<>();
        for (int at = 3; at < arguments.length; at++) {
            looks.add(Double.parseDouble(arguments[at]));
        }
        StringBuilder head =
                new StringBuilder("instance\tseed\tplaces tried each second\tverdict\tfirst layout after s\tit");
        looks.forEach(look -> head.append("\tat ").append(look).append(" s"));
        System.out.println(head);
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of(arguments[0]))) {
            // beside Terashima's panels lie layouts of theirs that are known to be best, which are no instances
            files = all.filter(file -> file.toString().endsWith(".json")
                            || file.getFileName().toString().matches("T.*\\.txt"))
                    .sorted()
                    .toList();
        }
        BestKnown best = BestKnown.beside(Path.of(arguments[0]));
        LayoutTable table = new LayoutTable(Double.parseDouble(arguments[1]), looks, best);
        for (Path file : files) {
            for (int seed = 1; seed <= seeds; seed++) {
                table.row(OpenInstance.read(file), seed);
            }
        }
        table.summary();
    }

    private void summary() {
        if (best.instances() > 0) {
            StringBuilder median =
                    new StringBuilder("median of " + best.instances() + " in % of the best known\t\t\t\t\t");
            StringBuilder worst = new StringBuilder("worst of them, mean of its seeds\t\t\t\t\t");
            for (int look = 0; look < looks.size(); look++) {
                median.append(String.format(Locale.ROOT, "\t%.2f", best.median(look)));
                worst.append(String.format(Locale.ROOT, "\t%.2f", best.worst(look)));
            }
            System.out.println(median);
            System.out.println(worst);
        }
        beyond.forEach((sheets, rows) -> System.out.println("sheets beyond their area: " + sheets + "\t" + rows));
    }

    private void row(OpenInstance instance, int seed) {
        LayoutBenchmark.Clock clock = new LayoutBenchmark.Clock(seconds);
        LayoutBenchmark.Run run = LayoutBenchmark.Run.of(instance, clock);
        int workers = Runtime.getRuntime().availableProcessors();
        long tried = run.search(new RunBudget(seed, workers, places -> clock.spent()));
        StringBuilder row = new StringBuilder(instance.name())
                .append(String.format(
                        Locale.ROOT,
                        "\t%d\t%.0f\t%s\t%.2f\t%s",
                        seed,
                        tried / clock.elapsed(),
                        LayoutBenchmark.verdict(instance, run),
                        run.first(),
                        run.at(run.first())));
        looks.forEach(look -> row.append('\t').append(run.at(look)));
        System.out.println(row);
        if (instance.stripHeight().isPresent()) {
            best.add(
                    instance.name(),
                    looks.stream()
                            .mapToDouble(look -> Double.parseDouble(run.at(look)))
                            .toArray());
        } else {
            count(instance, run.laid());
        }
    }

    private void count(OpenInstance instance, List<Laid> laid) {
        double largest =
                instance.sheets().stream().mapToDouble(Sheet::area).max().orElseThrow();
        // to the last digit: Terashima's pieces fill their panels exactly
        long least = (long) Math.ceil(instance.area() / largest - 1e-9);
        long used = laid.stream().mapToInt(Laid::sheet).distinct().count();
        String more = laid.size() < instance.pieces().size() ? "left over" : Long.toString(used - least);
        beyond.merge(more, 1, Integer::sum);
    }
}
