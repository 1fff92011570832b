package org.hidewright.layout.open;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Searches all strips of a folder, one after another, and prints for each how dense its layout was after so many seconds. */
public final class LayoutTable {
    private LayoutTable() {}

    /** Called with the folder, how long each is searched in seconds, how many seeds, and the seconds that are looked at. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length < 4) {
            throw new IllegalArgumentException("Use: FOLDER SECONDS SEEDS LOOK…");
        }
        double seconds = Double.parseDouble(arguments[1]);
        int seeds = Integer.parseInt(arguments[2]);
        List<Double> looks = new ArrayList<>();
        for (int at = 3; at < arguments.length; at++) {
            looks.add(Double.parseDouble(arguments[at]));
        }
        StringBuilder head = new StringBuilder("instance\tseed\tfirst layout after s\tits density");
        looks.forEach(look -> head.append("\tat ").append(look).append(" s"));
        System.out.println(head.append("\tplaces tried each second"));
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of(arguments[0]))) {
            files = all.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        for (Path file : files) {
            for (int seed = 1; seed <= seeds; seed++) {
                row(file, seconds, seed, looks);
            }
        }
    }

    private static void row(Path file, double seconds, int seed, List<Double> looks) throws Exception {
        OpenInstance instance = OpenInstance.read(file);
        LayoutBenchmark.Clock clock = new LayoutBenchmark.Clock(seconds);
        StripRun run = new StripRun(instance, clock);
        int workers = Runtime.getRuntime().availableProcessors();
        long tried = run.search(new RunBudget(seed, workers, places -> clock.spent()));
        StringBuilder row = new StringBuilder(instance.name()).append('\t').append(seed);
        run.marks().stream()
                .findFirst()
                .ifPresent(first ->
                        row.append(String.format(Locale.ROOT, "\t%.2f\t%.2f", first.seconds(), first.density())));
        for (double look : looks) {
            double density = run.marks().stream()
                    .filter(mark -> mark.seconds() <= look)
                    .mapToDouble(StripRun.Mark::density)
                    .max()
                    .orElse(0);
            row.append(String.format(Locale.ROOT, "\t%.2f", density));
        }
        System.out.println(row.append(String.format(Locale.ROOT, "\t%.0f", tried / clock.elapsed())));
    }
}
