package org.hidewright.layout.open;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Searches all instances of a folder, one after another, and prints for each what its layout was after so many seconds: for strips
 * how dense, for hides and panels how many sheets were used and how many pieces left over.
 */
public final class LayoutTable {
    private final double seconds;
    private final List<Double> looks;

    private LayoutTable(double seconds, List<Double> looks) {
        this.seconds = seconds;
        this.looks = looks;
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
        LayoutTable table = new LayoutTable(Double.parseDouble(arguments[1]), looks);
        for (Path file : files) {
            for (int seed = 1; seed <= seeds; seed++) {
                table.row(OpenInstance.read(file), seed);
            }
        }
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
    }
}
