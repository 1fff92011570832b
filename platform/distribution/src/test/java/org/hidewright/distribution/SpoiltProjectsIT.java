package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.Test;

/**
 * Sample projects spoilt at random, as by a slip of the hand, a bad disk or another program: each loads or is told with its
 * place, none fails, hangs or is changed. 20,000 in the long verification.
 */
class SpoiltProjectsIT {
    private static final int TRIALS = Boolean.getBoolean("hidewright.long") ? 20_000 : 1_000;
    private final Spoiler spoiler = new Spoiler(20_000);
    private final Map<String, Integer> kinds = new TreeMap<>();

    private static List<String> samples() throws IOException {
        try (Stream<Path> found = Files.list(Path.of("../../samples/projects"))) {
            return found.sorted()
                    .map(path -> {
                        try {
                            return Files.readString(path);
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                    })
                    .toList();
        }
    }

    private void count(String kind) {
        kinds.merge(kind, 1, Integer::sum);
    }

    @Test
    void eachLoadsOrIsToldWithItsPlace() throws Exception {
        Bench bench = new Bench(BundledCalculators.catalogue());
        List<String> samples = samples();
        long longest = 0;
        int loaded = 0;
        int worked = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            String text = spoiler.spoilt(samples.get(trial % samples.size()));
            long start = System.nanoTime();
            ProjectReader.Result read = ProjectReader.read(text);
            if (read.project().isPresent()) {
                loaded++;
                worked += worked(bench, read.project().get(), text) ? 1 : 0;
            } else {
                assertFalse(read.remarks().isEmpty(), () -> "nothing is said of: " + text);
                Remark first = read.remarks().get(0);
                assertTrue(first.place() != null, () -> first.key() + " names no place in: " + text);
                count(first.key());
            }
            longest = Math.max(longest, System.nanoTime() - start);
        }
        long heap = Spoiler.heap();
        System.out.printf(
                "%d spoilt projects: %d loaded, %d of them without a stop; longest %d ms, heap %d MiB at most%n%s%n",
                TRIALS, loaded, worked, longest / 1_000_000, heap >> 20, kinds);
        assertTrue(longest < Spoiler.LONGEST_NS, "one took " + longest + " ns");
        assertTrue(heap < Spoiler.MOST_HEAP, "the heap grew to " + heap);
        assertTrue(loaded > 0 && loaded < TRIALS, "spoiling does not spoil, or spoils all: " + loaded);
    }

    /** Works what could be loaded; whether no slip stopped. */
    private boolean worked(Bench bench, Project project, String text) {
        assertEquals(text, project.text(), "the text is not changed by reading it");
        WorkedProject worked = bench.work(project);
        boolean all = true;
        for (WorkedSlip slip : worked.slips().values()) {
            assertTrue(slip.state() != WorkedSlip.State.BROKEN, () -> slip.remarks() + " in: " + text);
            if (slip.answers().isEmpty()) {
                all = false;
                Remark why = slip.remarks().stream()
                        .filter(Remark::stops)
                        .findFirst()
                        .orElseGet(() -> slip.remarks().stream().findFirst().orElse(null));
                assertTrue(
                        why != null || slip.slip().calculator().isEmpty(),
                        () -> "nothing is said of slip " + slip.slip().id() + " in: " + text);
                count(why == null ? "no calculator" : why.key());
            }
        }
        return all;
    }
}
