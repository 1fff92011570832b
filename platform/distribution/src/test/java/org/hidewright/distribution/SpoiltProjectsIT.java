package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
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
    private static final long LONGEST_NS = 5_000_000_000L;
    private static final long MOST_HEAP = 1L << 30;
    private static final List<String> TOKENS = List.of(
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "\"",
            "\\",
            "null",
            "true",
            "-",
            "1e999",
            "0.1.2",
            "\u0000",
            "\uD800",
            "é",
            "½",
            "\n",
            "{\"from\": \"closing-strap\", \"answer\": \"cut-length\"}",
            "9999999999999999999999",
            "[[[[[[[[[[",
            " mm",
            " oz",
            "-5 mm",
            "1000 km",
            "2-1 mm",
            "± 3 mm",
            "<script>",
            "=1+1",
            "//",
            "/*");

    private final SplittableRandom random = new SplittableRandom(20_000);
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

    /** One to four spoilt places. */
    private String spoilt(String text) {
        String spoilt = text;
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            int at = random.nextInt(spoilt.length() + 1);
            int to = Math.min(spoilt.length(), at + random.nextInt(1, 40));
            String before = spoilt.substring(0, at);
            String token = TOKENS.get(random.nextInt(TOKENS.size()));
            spoilt = switch (random.nextInt(7)) {
                case 0 -> before + spoilt.substring(to);
                case 1 -> before + token + spoilt.substring(at);
                case 2 -> before + token + spoilt.substring(to);
                case 3 -> before + spoilt.substring(at, to) + spoilt.substring(at);
                case 4 -> before + (char) random.nextInt(1, 0x300) + spoilt.substring(to);
                case 5 ->
                    random.nextInt(8) == 0
                            ? before
                            : before + token.repeat(random.nextInt(1, 200)) + spoilt.substring(at);
                default -> number(spoilt, at);
            };
        }
        return spoilt;
    }

    /** The first digit after a place becomes another. */
    private String number(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            if (Character.isDigit(text.charAt(i))) {
                return text.substring(0, i) + random.nextInt(10) + text.substring(i + 1);
            }
        }
        return text;
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
            String text = spoilt(samples.get(trial % samples.size()));
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
        long heap = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(SpoiltProjectsIT::peak)
                .sum();
        System.out.printf(
                "%d spoilt projects: %d loaded, %d of them without a stop; longest %d ms, heap %d MiB at most%n%s%n",
                TRIALS, loaded, worked, longest / 1_000_000, heap >> 20, kinds);
        assertTrue(longest < LONGEST_NS, "one took " + longest + " ns");
        assertTrue(heap < MOST_HEAP, "the heap grew to " + heap);
        assertTrue(loaded > 0 && loaded < TRIALS, "spoiling does not spoil, or spoils all: " + loaded);
    }

    private static long peak(MemoryPoolMXBean pool) {
        return pool.getPeakUsage().getUsed();
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
