package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Range;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.range.Spread;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.RangedInput;
import org.hidewright.core.work.WorkedProject;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The ranges of each sample project against a Monte Carlo calculation of its own (JCGM 101): every range typed anew at random
 * as a maker would type one value, the whole project worked each time. 100,000 times in the long verification.
 */
class SampleRangesIT {
    private static final Pattern RANGE = Pattern.compile("\"\\d+(\\.\\d+)?-\\d+(\\.\\d+)? (oz|mm)\"");
    private static final int TRIALS = Boolean.getBoolean("hidewright.long") ? 100_000 : 1_000;

    static Stream<Path> samples() throws IOException {
        try (Stream<Path> found = Files.list(Path.of("../../samples/projects"))) {
            return found.sorted().toList().stream();
        }
    }

    /** Sums of one answer over all trials, beside its nominal value. */
    private static final class Sums {
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;
        private double sum;
        private double squares;

        void add(double value, double nominal) {
            least = Math.min(least, value);
            most = Math.max(most, value);
            sum += value - nominal;
            squares += (value - nominal) * (value - nominal);
        }

        double mean() {
            return sum / TRIALS;
        }

        double deviation() {
            return Math.sqrt((squares - sum * mean()) / (TRIALS - 1));
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aMonteCarloCalculationFindsTheSame(Path sample) throws Exception {
        Bench bench = new Bench(BundledCalculators.catalogue());
        Project project = ProjectReader.read(Files.readString(sample)).project().orElseThrow();
        WorkedProject worked = bench.work(project);
        Map<String, RangedInput> inputs = new HashMap<>();
        worked.slips()
                .keySet()
                .forEach(id -> worked.ranges(id)
                        .ifPresent(ranges -> ranges.inputs()
                                .forEach(input -> inputs.put(input.slip() + " " + input.path(), input))));
        assertEquals(
                RANGE.matcher(Files.readString(sample)).find(),
                !inputs.isEmpty(),
                "what is typed as a range is an input");
        Map<String, Sums> sums = new HashMap<>();
        SplittableRandom random = new SplittableRandom(20_261_125);
        for (int trial = 0; trial < TRIALS && !inputs.isEmpty(); trial++) {
            Project tried = project;
            for (RangedInput input : inputs.values()) {
                Range range = input.typed().range();
                double value = range.low() + random.nextDouble() * (range.high() - range.low());
                String text = input.typed().unit().fromBase(value) + " "
                        + input.typed().unit().symbol();
                tried = input.slip().isEmpty()
                        ? inWorkshop(tried, input, text)
                        : tried.answering(input.slip(), input.path(), "\"" + text + "\"");
            }
            WorkedProject one = bench.work(tried, worked);
            worked.slips()
                    .keySet()
                    .forEach(id -> worked.ranges(id).ifPresent(ranges -> {
                        Values answers = one.slips().get(id).answers().orElseThrow();
                        ranges.study()
                                .spreads()
                                .forEach((place, spread) -> number(answers, place)
                                        .ifPresent(value -> sums.computeIfAbsent(id + " " + place, key -> new Sums())
                                                .add(value, spread.nominal())));
                    }));
        }
        Set<String> compared = new TreeSet<>();
        worked.slips()
                .keySet()
                .forEach(id -> worked.ranges(id)
                        .ifPresent(ranges -> ranges.study().spreads().forEach((place, spread) -> {
                            Sums found = sums.get(id + " " + place);
                            if (found != null && spread.moves()) {
                                compare(id + " " + place, spread, found);
                                compared.add(id);
                            }
                        })));
        assertEquals(inputs.isEmpty(), compared.isEmpty(), "something that is ranged was compared");
        inputs.values().stream()
                .filter(input -> !input.slip().isEmpty())
                .forEach(input ->
                        assertTrue(compared.contains(input.slip()), "nothing of " + input.slip() + " was compared"));
    }

    /** The project with another text in the copy it keeps of a cell. */
    private static Project inWorkshop(Project project, RangedInput input, String text) throws Exception {
        String copies = project.kept().orElseThrow().text();
        String typed = '"' + input.typed().text() + '"';
        assertEquals(copies.indexOf(typed), copies.lastIndexOf(typed), "the cell is the only one to say this");
        return project.keeping(copies.replace(typed, '"' + text + '"'));
    }

    private static Optional<Double> number(Values answers, String place) {
        return answers.get(place)
                .filter(value -> value instanceof Quantity || value instanceof Double)
                .map(value -> value instanceof Quantity<?> quantity ? quantity.base() : (Double) value);
    }

    private static void compare(String what, Spread spread, Sums found) {
        double width = spread.high() - spread.low();
        assertTrue(found.least >= spread.low() - 1e-6 * width, what + ": " + found.least + " is below " + spread);
        assertTrue(found.most <= spread.high() + 1e-6 * width, what + ": " + found.most + " is above " + spread);
        double deviation = found.deviation();
        // standard error of a standard deviation is no more than s / √(2 N) for a spread no more peaked than a bell
        double error = 4 * deviation / Math.sqrt(2.0 * TRIALS);
        double meanError = 4 * deviation / Math.sqrt(TRIALS);
        if (spread.firstOrderHolds()) {
            assertEquals(spread.firstOrder().standardUncertainty(), deviation, error + 0.01 * deviation, what);
            assertEquals(0, found.mean(), meanError + 0.01 * deviation, what);
        } else {
            boolean apart = Math.abs(spread.firstOrder().standardUncertainty() - deviation) > 0.1 * deviation
                    || Math.abs(found.mean()) > 0.1 * deviation;
            assertTrue(apart, what + " was said to bend, but does not: " + spread + ", found " + deviation);
        }
        // the small sample tells the deviation to 4 %
        assertEquals(spread.sampleDeviation(), deviation, error + 0.16 * deviation, what);
    }
}
