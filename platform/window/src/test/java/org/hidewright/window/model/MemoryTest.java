package org.hidewright.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MemoryTest {
    @TempDir
    Path folder;

    private Memory memory() {
        return Memory.in(folder.resolve("settings"));
    }

    @Test
    void theProjectOpenedLastComesFirstAndEachOnce() {
        Path one = folder.resolve("one.json").toAbsolutePath();
        Path two = folder.resolve("two.json").toAbsolutePath();
        memory().opened(one);
        memory().opened(two);
        memory().opened(one);
        assertEquals(List.of(one, two), memory().recent());
    }

    @Test
    void noMoreThanADozenAreKept() {
        for (int i = 0; i < 20; i++) {
            memory().opened(folder.resolve(i + ".json"));
        }
        assertEquals(12, memory().recent().size());
        assertTrue(memory().recent().get(0).endsWith("19.json"));
    }

    @Test
    void theScreenAndWhatIsFoldedAreKept() {
        Path project = folder.resolve("a = b.json");
        memory().measured(3.75);
        memory().fold(project, Set.of("roll", "hem"));
        assertEquals(3.75, memory().pixelsPerMm().orElseThrow());
        assertEquals(Set.of("roll", "hem"), memory().folded(project));
        assertEquals(Set.of(), memory().folded(folder.resolve("other.json")));
        memory().fold(project, Set.of());
        assertEquals(Set.of(), memory().folded(project));
    }

    @Test
    void aTornFileIsAsIfThereWereNone() throws Exception {
        Files.createDirectories(folder.resolve("settings"));
        Files.writeString(folder.resolve("settings/window.properties"), "pixels-per-mm=wide\nrecent.0=\\uZZZZ");
        assertTrue(memory().pixelsPerMm().isEmpty());
        assertEquals(List.of(), memory().recent());
    }

    @Test
    void theWorkshopAndTheFoldersOfProjectsAreKnownTheNextTime() {
        Path settings = folder.resolve("settings");
        Memory memory = Memory.in(settings);
        assertEquals(Optional.empty(), memory.workshop());
        memory.workshop(folder.resolve("bench.json"));
        memory.lookInto(folder.resolve("old"));
        memory.lookInto(folder.resolve("new"));
        memory.lookInto(folder.resolve("old"));
        assertEquals(
                Optional.of(folder.resolve("bench.json")), Memory.in(settings).workshop());
        assertEquals(
                List.of(folder.resolve("old"), folder.resolve("new")),
                Memory.in(settings).folders());
    }

    @Test
    void whatIsNotSavedIsLeftUntilItIsDropped() throws Exception {
        UnsavedCopy copy = new UnsavedCopy(folder.resolve("settings"), folder.resolve("one.json"));
        assertEquals(Optional.empty(), copy.left("{}"));
        copy.want("{\"a\": 1}");
        copy.write();
        assertEquals(Optional.of("{\"a\": 1}"), copy.left("{}"));
        copy.drop();
        assertEquals(Optional.of("{\"a\": 1}"), copy.left("{}"), "nobody has said what becomes of it");
        assertEquals(Optional.empty(), copy.left("{\"a\": 1}"), "it was saved after all");
        assertEquals(
                Optional.empty(),
                new UnsavedCopy(folder.resolve("settings"), folder.resolve("two.json")).left("{}"),
                "each project has its own");
        copy.dropLeft();
        assertEquals(Optional.empty(), copy.left("{}"));
    }

    @Test
    void whatWasDroppedMeanwhileIsNotWrittenAnyMore() throws Exception {
        UnsavedCopy copy = new UnsavedCopy(folder.resolve("settings"), folder.resolve("one.json"));
        copy.want("{\"a\": 1}");
        copy.drop();
        copy.write(); // it was on its way already
        assertEquals(Optional.empty(), copy.left("{}"));
    }
}
