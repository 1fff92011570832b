package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.StockCheck;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.core.workshop.WorkshopReader;
import org.junit.jupiter.api.Test;

/**
 * The sample workshop spoilt at random, with a project that takes from it: each loads or is told with its place, what cannot be
 * taken is told on the slip that takes it, none fails, hangs or is changed. 20,000 in the long verification.
 */
class SpoiltWorkshopsIT {
    private static final int TRIALS = Boolean.getBoolean("hidewright.long") ? 20_000 : 1_000;

    private final Map<String, Integer> kinds = new TreeMap<>();

    private void count(Remark remark) {
        kinds.merge(remark.key(), 1, Integer::sum);
    }

    @Test
    void eachLoadsOrIsToldWithItsPlace() throws Exception {
        Spoiler spoiler = new Spoiler(20_001);
        Catalogue catalogue = BundledCalculators.catalogue();
        String sample = Files.readString(Path.of("../../samples/workshops/field-bench.json"));
        Project project = ProjectReader.read(
                        Files.readString(Path.of("../../samples/projects/plant-press-straps.json")))
                .project()
                .orElseThrow()
                .keeping("{}");
        long longest = 0;
        int loaded = 0;
        int worked = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            String text = spoiler.spoilt(sample);
            long start = System.nanoTime();
            WorkshopReader.Result read = WorkshopReader.read(text);
            if (read.workshop().isPresent()) {
                loaded++;
                worked += worked(catalogue, project, read.workshop().get(), text) ? 1 : 0;
            } else {
                assertFalse(read.remarks().isEmpty(), () -> "nothing is said of: " + text);
                assertTrue(read.remarks().get(0).place() != null, () -> "no place is named in: " + text);
                count(read.remarks().get(0));
            }
            longest = Math.max(longest, System.nanoTime() - start);
        }
        long heap = Spoiler.heap();
        System.out.printf(
                "%d spoilt workshops: %d loaded, with %d of them every slip was worked; longest %d ms, heap %d MiB at"
                        + " most%n%s%n",
                TRIALS, loaded, worked, longest / 1_000_000, heap >> 20, kinds);
        assertTrue(longest < Spoiler.LONGEST_NS, "one took " + longest + " ns");
        assertTrue(heap < Spoiler.MOST_HEAP, "the heap grew to " + heap);
        assertTrue(loaded > 0 && loaded < TRIALS, "spoiling does not spoil, or spoils all: " + loaded);
        assertTrue(worked > 0 && worked < loaded, "spoiling never reaches what is taken, or always: " + worked);
    }

    /** Looks the workshop over and works a project with it; whether every slip has answers. */
    private boolean worked(Catalogue catalogue, Project project, Workshop workshop, String text) throws Exception {
        assertTrue(text.contains(workshop.text()), "the text is not changed by reading it");
        for (Remark remark : StockCheck.of(workshop, catalogue.tables())) {
            assertTrue(remark.place() != null, () -> remark + " names no place in: " + text);
            count(remark);
        }
        WorkedProject worked = new Bench(catalogue, Stock.of(catalogue::tables).with(workshop)).work(project);
        boolean all = true;
        for (WorkedSlip slip : worked.slips().values()) {
            assertTrue(slip.state() != WorkedSlip.State.BROKEN, () -> slip.remarks() + " in: " + text);
            if (slip.answers().isEmpty()) {
                all = false;
                assertTrue(
                        slip.remarks().stream().anyMatch(Remark::stops),
                        () -> "nothing is said of slip " + slip.slip().id() + " in: " + text);
            }
        }
        Project kept = project.keeping(new Copies(worked.shelf(), worked.stock()).json(false));
        WorkedProject alone = new Bench(catalogue).work(kept);
        if (all) {
            assertEquals(List.of(), kept.remarks(), () -> "copies of: " + text);
            worked.slips()
                    .forEach((id, slip) -> assertEquals(
                            slip.answers(), alone.slips().get(id).answers(), () -> "with copies of: " + text));
        }
        return all;
    }
}
