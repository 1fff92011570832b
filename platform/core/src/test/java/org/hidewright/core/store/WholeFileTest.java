package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    private static final byte[] NEW = "new".getBytes(StandardCharsets.US_ASCII);

    @TempDir
    Path folder;

    @Test
    void aFileIsMadeOrReplacedAndNothingElseIsLeft() throws Exception {
        Path file = folder.resolve("card.csv");
        WholeFile.write(file, "old".getBytes(StandardCharsets.US_ASCII));
        assertEquals("old", Files.readString(file));
        Saved.write(Beside.newVersion(file), "half-written by a run that was killed");
        WholeFile.write(file, NEW);
        assertEquals("new", Files.readString(file));
        assertEquals(List.of("card.csv"), Saved.names(folder));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void otherNamesOfWhatWasThereStillLeadToIt() throws Exception {
        Path mine = Saved.write(folder.resolve("mine"), "mine");
        Path second = Files.createLink(folder.resolve("second"), mine);
        Path link = Files.createSymbolicLink(folder.resolve("link"), mine);
        WholeFile.write(second, NEW);
        WholeFile.write(link, NEW);
        assertEquals("mine", Files.readString(mine));
        assertEquals("new", Files.readString(second));
        assertTrue(Files.isRegularFile(link, LinkOption.NOFOLLOW_LINKS));
    }

    @Test
    void whoReadsWhileItIsReplacedSeesOneVersionWhole() throws Exception {
        Path file = folder.resolve("card.csv");
        byte[][] versions = {new byte[1_000_000], new byte[700_000]};
        Arrays.fill(versions[1], (byte) 1);
        WholeFile.write(file, versions[0]);
        AtomicBoolean done = new AtomicBoolean();
        CompletableFuture<Integer> reader = CompletableFuture.supplyAsync(() -> {
            int reads = 0;
            for (; !done.get(); reads++) {
                try {
                    byte[] read = Files.readAllBytes(file);
                    assertTrue(
                            Arrays.equals(read, versions[0]) || Arrays.equals(read, versions[1]),
                            () -> read.length + " bytes");
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
            return reads;
        });
        for (int i = 1; i <= 50; i++) {
            WholeFile.write(file, versions[i % 2]);
        }
        done.set(true);
        assertTrue(reader.get() > 50, "reads: " + reader.get());
    }
}
