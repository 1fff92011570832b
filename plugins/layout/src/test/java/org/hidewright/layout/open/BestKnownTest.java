package org.hidewright.layout.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BestKnownTest {
    @TempDir
    Path folder;

    /** Means over seeds by hand: 90 %, 95 % and 100 % of the records; what has none does not count. */
    @Test
    void medianAndWorstAreThoseOfTheMeansOfInstances() throws IOException {
        Path strips = Files.createDirectory(folder.resolve("strip"));
        Files.writeString(folder.resolve("instances.tsv"), """
                file\trecord_density_recomputed
                strip/one.json\t80
                strip/two.json\t90
                strip/three.json\t50
                strip/free.json\t
                hides/four.json\t70
                """);
        BestKnown best = BestKnown.beside(strips);
        assertEquals(80, best.of("one").orElseThrow());
        assertTrue(best.of("free").isEmpty());
        assertTrue(best.of("four").isEmpty());
        best.add("one", new double[] {40, 71});
        best.add("one", new double[] {40, 73});
        best.add("two", new double[] {45, 85.5});
        best.add("three", new double[] {20, 50});
        best.add("free", new double[] {1, 1});
        assertEquals(3, best.instances());
        assertEquals(50, best.median(0), 1e-9);
        assertEquals(40, best.worst(0), 1e-9);
        assertEquals(95, best.median(1), 1e-9);
        assertEquals(90, best.worst(1), 1e-9);
    }

    @Test
    void withoutAListNothingIsKnown() throws IOException {
        BestKnown best = BestKnown.beside(folder.resolve("strip"));
        assertTrue(best.of("one").isEmpty());
        assertEquals(0, best.instances());
    }
}
