package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.addons.FolderChange.Wanted;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.launcher.DecidedChange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A change that a disk keeps from being done: all is as it was, also when the undoing itself is ended in the middle. */
class UndoneChangeTest {
    @TempDir
    Path scratch;

    @Test
    void whatFailsInTheMiddleIsUndoneWhereverThatIs() throws Exception {
        for (int fails = 0; ; fails++) {
            Path settings = ChangedShop.shop(scratch.resolve("fail-" + fails));
            int[] left = {fails};
            try {
                ChangedShop.change(settings, () -> {
                    if (left[0]-- == 0) {
                        throw new IOException("a full disk");
                    }
                });
            } catch (FileTrouble told) {
                assertTrue(Files.exists(settings.resolve("addons/goes.jar")), "fails at deed " + fails);
                assertEquals(ChangedShop.OLD, ChangedShop.read(settings), "fails at deed " + fails);
                continue;
            }
            assertEquals(ChangedShop.NEW, ChangedShop.read(settings), "fails at deed " + fails);
            if (left[0] >= 0) {
                return; // went through without the fault
            }
        }
    }

    @Test
    void oneWhoseUndoingIsKilledIsUndoneByTheNextStart() throws Exception {
        for (int killed = 0; ; killed++) {
            Path settings = ChangedShop.shop(scratch.resolve("undo-" + killed));
            int[] left = {killed};
            boolean[] undoing = {false};
            try {
                new FolderChange(settings, new DecidedChange(() -> {
                            if (Files.exists(settings.resolve("addons-change/undo"))) {
                                undoing[0] = true;
                                if (left[0]-- == 0) {
                                    throw new Killed();
                                }
                            } else if (!undoing[0]
                                    && Files.exists(settings.resolve("addons-change"))
                                    && !Files.exists(settings.resolve("addons/goes.jar"))) {
                                throw new IOException("a full disk");
                            }
                        }))
                        .make(ChangedShop.WANTED);
            } catch (FileTrouble told) {
                assertEquals(ChangedShop.OLD, ChangedShop.read(settings));
                assertTrue(killed > 5, "deeds of the undoing: " + killed);
                return;
            } catch (Killed asByAKill) {
                assertEquals("", new DecidedChange(() -> {}).apply(settings.toFile()));
                assertEquals(
                        ChangedShop.OLD,
                        ChangedShop.read(settings),
                        "killed before deed " + killed + " of the undoing");
            }
        }
    }

    @Test
    void twoAtOnceWaitForEachOther() throws Exception {
        Path settings = ChangedShop.shop(scratch.resolve("both"));
        List<FileTrouble> told = Collections.synchronizedList(new ArrayList<>());
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            String jar = i + ".jar";
            threads.add(new Thread(() -> {
                try {
                    new FolderChange(settings, new DecidedChange(() -> {}))
                            .make(new Wanted(Map.of(jar, new byte[] {1}), List.of(), Optional.empty()));
                } catch (FileTrouble e) {
                    told.add(e);
                }
            }));
        }
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
        assertEquals(List.of(), told);
        for (int i = 0; i < 4; i++) {
            assertTrue(Files.exists(settings.resolve("addons/" + i + ".jar")), "jar " + i);
        }
    }

    /** Nothing that comes after it is done. */
    private static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }
}
