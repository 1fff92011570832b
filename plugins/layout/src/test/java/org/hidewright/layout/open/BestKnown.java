package org.hidewright.layout.open;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** The best known densities of strips, and how those of a table compare: the median and the worst of all instances. */
final class BestKnown {
    private static final String LIST = "instances.tsv";

    private final Map<String, Double> known = new HashMap<>();

    /** For each instance with a record the densities of its rows, in percent of the best known. */
    private final Map<String, List<double[]>> rows = new TreeMap<>();

    /** Reads the list beside a folder of instances; without one nothing is known. */
    static BestKnown beside(Path folder) throws IOException {
        BestKnown best = new BestKnown();
        Path list = folder.toAbsolutePath().resolveSibling(LIST);
        if (Files.exists(list)) {
            List<String> lines = Files.readAllLines(list);
            List<String> head = Arrays.asList(lines.get(0).split("\t", -1));
            int file = head.indexOf("file");
            int record = head.indexOf("record_density_recomputed");
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split("\t", -1);
                String prefix = folder.getFileName() + "/";
                if (cells[file].startsWith(prefix) && !cells[record].isEmpty()) {
                    String name = cells[file].substring(prefix.length()).replace(".json", "");
                    best.known.put(name, Double.parseDouble(cells[record]));
                }
            }
        }
        return best;
    }

    OptionalDouble of(String instance) {
        return known.containsKey(instance) ? OptionalDouble.of(known.get(instance)) : OptionalDouble.empty();
    }

    /** Remembers a row: the density at each look. */
    void add(String instance, double[] densities) {
        of(instance)
                .ifPresent(best -> rows.computeIfAbsent(instance, name -> new ArrayList<>())
                        .add(Arrays.stream(densities)
                                .map(density -> 100 * density / best)
                                .toArray()));
    }

    /** How many instances with a record there are rows of. */
    int instances() {
        return rows.size();
    }

    /** The median over all instances of their means over all seeds. */
    double median(int look) {
        double[] means = means(look);
        int half = means.length / 2;
        return means.length % 2 == 1 ? means[half] : (means[half - 1] + means[half]) / 2;
    }

    /** The worst mean of an instance over all seeds. */
    double worst(int look) {
        return means(look)[0];
    }

    private double[] means(int look) {
        return rows.values().stream()
                .mapToDouble(all ->
                        all.stream().mapToDouble(row -> row[look]).average().orElseThrow())
                .sorted()
                .toArray();
    }
}
