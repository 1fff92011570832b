package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SaveLockTest {
    private static final Duration SHORT = Duration.ofMillis(50);

    @TempDir
    Path folder;

    @Test
    void oneSaveHoldsItAndLeavesNothingBehind() throws Exception {
        Path file = folder.resolve("strap.json");
        try (SaveLock held = SaveLock.take(file)) {
            assertEquals(file, held.file());
            assertThrows(HeldByAnother.class, () -> SaveLock.take(file, SHORT));
            SaveLock.take(folder.resolve("other.json"), SHORT).close();
            assertEquals(List.of(".strap.json.lock"), Saved.names(folder));
        }
        SaveLock.take(file, SHORT).close();
        assertEquals(List.of(), Saved.names(folder));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aFileByTwoWaysToItsFolderHasOneLock() throws Exception {
        Path drawer = Files.createDirectory(folder.resolve("drawer"));
        Path other = Files.createSymbolicLink(folder.resolve("other"), drawer);
        try (SaveLock held = SaveLock.take(drawer.resolve("strap.json"))) {
            assertThrows(
                    HeldByAnother.class,
                    () -> SaveLock.take(other.resolve(held.file().getFileName()), SHORT));
        }
        SaveLock.take(other.resolve("strap.json"), SHORT).close();
    }

    @Test
    void aLockFileLeftOverBlocksNobody() throws Exception {
        Path file = folder.resolve("strap.json");
        Saved.write(Beside.lock(file), "left by a program that was killed");
        SaveLock.take(file, SHORT).close();
        assertEquals(List.of(), Saved.names(folder));
    }

    @Test
    void aLockFileThatMayOnlyBeReadIsTakenAwayWhereNobodyHoldsIt() throws Exception {
        Path lock = Saved.write(folder.resolve(".strap.json.lock"), "left by somebody else");
        assertTrue(SaveLock.isGoneOrHeld(lock));
        assertFalse(Files.exists(lock));
        assertTrue(SaveLock.isGoneOrHeld(lock), "gone meanwhile");
    }

    @Test
    void aLockFileThatCannotBeMadeIsNotHeldForEver() throws Exception {
        Path file = folder.resolve("up/strap.json");
        assertThrows(IOException.class, () -> SaveLock.take(file, SHORT));
        Files.createDirectory(folder.resolve("up"));
        SaveLock.take(file, SHORT).close();
    }

    @Test
    void whoIsInterruptedWhileWaitingIsToldAndStaysInterrupted() throws Exception {
        Path file = folder.resolve("strap.json");
        try (SaveLock held = SaveLock.take(file)) {
            assertEquals(file, held.file());
            Thread.currentThread().interrupt();
            assertThrows(java.io.InterruptedIOException.class, () -> SaveLock.take(file, Duration.ofMinutes(1)));
            assertTrue(Thread.interrupted());
        }
    }

    @Test
    void whileItIsHeldTheLockOfTheSystemIsToo() throws Exception {
        Path file = folder.resolve("strap.json");
        try (SaveLock held = SaveLock.take(file);
                FileChannel other = FileChannel.open(Beside.lock(held.file()), StandardOpenOption.WRITE)) {
            assertThrows(OverlappingFileLockException.class, () -> other.tryLock(Long.MAX_VALUE - 1, 1, false));
        }
    }

    @Test
    void aLockOfTheSystemThatThisProgramHoldsByAnotherNameIsRespected() throws Exception {
        Path file = folder.resolve("strap.json");
        try (FileChannel other =
                FileChannel.open(Beside.lock(file), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            assertTrue(other.tryLock(Long.MAX_VALUE - 1, 1, false).isValid());
            assertThrows(HeldByAnother.class, () -> SaveLock.take(file, SHORT));
        }
        SaveLock.take(file, SHORT).close();
    }

    /** Another Java, since a lock of the system binds programs and not threads. */
    @Test
    void anotherProgramThatHoldsItIsWaitedForAndItsDeathFreesIt() throws Exception {
        Path file = folder.resolve("strap.json");
        Process other = Child.start(LockHolder.class, file.toString());
        try {
            assertEquals("held", new String(other.getInputStream().readNBytes(4), "US-ASCII"));
            assertThrows(HeldByAnother.class, () -> SaveLock.take(file, SHORT));
            assertTrue(SaveLock.isGoneOrHeld(Beside.lock(file)));
            assertTrue(Files.exists(Beside.lock(file)), "the lock file of another stays");
        } finally {
            other.destroyForcibly().waitFor();
        }
        assertTrue(Files.exists(Beside.lock(file)), "a killed program takes nothing away");
        SaveLock.take(file, SHORT).close();
        assertFalse(Files.exists(Beside.lock(file)));
    }

    @Test
    void neverTwoAtOnceWhileManyTakeItAndGiveItBack() throws Exception {
        Path file = folder.resolve("strap.json");
        AtomicInteger inside = new AtomicInteger();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<Integer>> all = new ArrayList<>();
            for (int t = 0; t < 4; t++) {
                all.add(threads.submit(() -> {
                    int most = 0;
                    for (int i = 0; i < 25; i++) {
                        try (SaveLock held = SaveLock.take(file, Duration.ofSeconds(30))) {
                            most = Math.max(most, inside.incrementAndGet());
                            assertEquals(file, held.file());
                            inside.decrementAndGet();
                        }
                    }
                    return most;
                }));
            }
            for (Future<Integer> each : all) {
                assertEquals(1, each.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
