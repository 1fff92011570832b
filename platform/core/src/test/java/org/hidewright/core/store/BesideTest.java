package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.inOrder;
import static org.mockito.Mockito.mock;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hidewright.api.calculator.NoticeKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mockito.AdditionalAnswers;
import org.mockito.ArgumentMatchers;
import org.mockito.InOrder;

/** What stands beside a file, under which name, and how it gets there. */
class BesideTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void names() throws Exception {
        file = folder.toRealPath().resolve("strap.json");
    }

    @Test
    void whatIsPutAsideTakesTheFirstNameThatIsFree() throws Exception {
        for (String name : List.of("strap.json.unsaved", "strap.json.unsaved-2", "strap.json.unsaved-3")) {
            assertEquals(file.resolveSibling(name), Beside.unsaved(file));
            Saved.write(file.resolveSibling(name), "taken");
        }
        assertEquals(file.resolveSibling("strap.json.broken"), Beside.broken(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {".strap.json.new", ".strap.json.before.new", ".strap.json.lock"})
    void anyOneOfThreeFilesShowsThatASaveWasCutShort(String name) throws Exception {
        Saved.write(file, "one");
        Saved.write(file.resolveSibling("strap.json.before"), "kept on purpose");
        assertFalse(Beside.hasLeftovers(file));
        Saved.write(file.resolveSibling(name), "");
        assertTrue(Beside.hasLeftovers(file));
    }

    @Test
    void aVersionThatCannotBeMovedAsideIsNamedWhereItIs() throws Exception {
        try (NewVersion version = NewVersion.write(file, new byte[] {1}, Disk.REAL)) {
            Files.delete(Beside.newVersion(file));
            assertEquals(Beside.newVersion(file), version.putAside());
            Saved.write(Beside.newVersion(file), "what the folder gives back");
        }
        assertTrue(Files.exists(Beside.newVersion(file)), "what is named to the maker stays");
    }

    /** That what was forced outlasts a loss of power no test can see; that it was forced, and when, this one does. */
    @Test
    void aNewVersionIsForcedToTheDiskAfterItsLastByte() throws Exception {
        List<FileChannel> made = new ArrayList<>();
        Disk listening = new Disk() {
            @Override
            public FileChannel create(Path fresh, FileAttribute<?>... attributes) throws IOException {
                made.add(mock(FileChannel.class, AdditionalAnswers.delegatesTo(Disk.REAL.create(fresh, attributes))));
                return made.get(0);
            }
        };
        try (NewVersion version = NewVersion.write(file, new byte[] {1, 2, 3}, listening)) {
            version.place();
        }
        InOrder order = inOrder(made.get(0));
        order.verify(made.get(0)).write(ArgumentMatchers.any(ByteBuffer.class));
        order.verify(made.get(0)).force(true);
        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(file));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void onlyTheNextVersionOfAFileBeginsHiddenFromOthers() throws Exception {
        assertEquals(0, Rights.toBegin(file).length, "a new file has the rights its maker gives to new files");
        Saved.write(file, "one");
        assertEquals(1, Rights.toBegin(file).length);
        assertEquals("posix:permissions", Rights.toBegin(file)[0].name());
        assertEquals(0, Rights.toBegin(folder).length, "a folder is no earlier version");
        assertTrue(Rights.areKept(file));
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void theEndOfALinkIsFoundAlsoWhereNothingIs() throws Exception {
        Path real = folder.toRealPath();
        Path drawer = Files.createDirectory(real.resolve("drawer"));
        Path way = Files.createSymbolicLink(real.resolve("way"), drawer);
        assertEquals(drawer.resolve("strap.json"), LinkEnd.of(way.resolve("strap.json")));
        assertEquals(way, LinkEnd.of(way), "a folder stays as it is named");
        Path nowhere = real.resolve("none/strap.json");
        assertEquals(nowhere, LinkEnd.of(nowhere));
        Path dangling = Files.createSymbolicLink(real.resolve("dangling"), drawer.resolve("later.json"));
        assertEquals(drawer.resolve("later.json"), LinkEnd.of(dangling));
    }

    @Test
    void aTextIsReadWithItsBytes() throws Exception {
        Saved.write(file, "\uFEFFKäfer\r\n");
        TextFile read = TextFile.read(file);
        assertEquals("\uFEFFKäfer\r\n", read.text());
        assertArrayEquals(Files.readAllBytes(file), read.bytes());
    }

    @Test
    void allNoticesAreListed() throws Exception {
        Set<Object> declared = new HashSet<>();
        for (var field : StoreNotices.class.getFields()) {
            if (Modifier.isStatic(field.getModifiers()) && field.getType() == NoticeKind.class) {
                declared.add(field.get(null));
            }
        }
        assertFalse(declared.isEmpty());
        assertEquals(declared, Set.copyOf(StoreNotices.all()), () -> Arrays.toString(declared.toArray()));
    }
}
