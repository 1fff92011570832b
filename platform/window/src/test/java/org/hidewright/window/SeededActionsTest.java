package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;
import org.hidewright.core.addons.CatalogueWithAddOns;
import org.hidewright.window.kit.FakeWriters;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.kit.NetsBundles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A maker who does anything, in any order, for a long time: nothing breaks, and what the window holds of the system and of the
 * memory comes back to what it was. Seeded, so that a failure can be played again.
 */
class SeededActionsTest {
    private static final int ACTIONS = Boolean.getBoolean("hidewright.long") ? 100_000 : 600;
    private static final int LOOKS = 10;
    /** So much is done before it is looked round again. */
    private static final int AT_A_LOOK = 12;

    private static final long SEED = 20_261_129;
    /** A project with more slips is cut back, or it would only grow. */
    private static final int MOST_SLIPS = 8;

    private static final List<String> TYPED = List.of(
            "10 mm",
            "2 in",
            "50 +- 2 mm",
            "3",
            "",
            "2 sheep",
            "1/2",
            "-4 mm",
            "900 mm",
            "7,5 cm",
            "x",
            "{\"a\": 1}",
            "0");

    private static final List<String> WORDS = List.of(
            "rest",
            "cautions",
            "working",
            "sources",
            "tables",
            "add",
            "remove",
            "up",
            "down",
            "fit",
            "true-size",
            "larger",
            "smaller",
            "likeness",
            "units",
            "look",
            "back",
            "turn",
            "seen");

    private static final List<String> DEEDS = List.of(
            "deed.undo",
            "deed.redo",
            "deed.units",
            "deed.save",
            "deed.fold-all",
            "deed.unfold-all",
            "deed.next-urgent",
            "deed.fit",
            "deed.likeness",
            "deed.papers",
            "deed.bundles",
            "deed.measure-screen",
            "add.cord",
            "add.bag");

    private static final List<String> SLIP_DEEDS =
            List.of("fold", "draw", "what-if", "compare", "copy", "up", "down", "remove");

    @TempDir
    Path folder;

    private final Random random = new Random(SEED);
    private RealWindow real;
    private Path file;
    private String original;

    @Test
    void nothingBreaksAndNothingIsLeftBehind() throws Exception {
        NetsBundles bundles = new NetsBundles();
        file = Nets.bag(folder);
        original = Files.readString(file);
        real = new RealWindow(
                folder.resolve("settings"),
                new CatalogueWithAddOns(bundles, () -> bundles),
                bundles,
                FakeWriters.all());
        List<Integer> resources = new ArrayList<>();
        List<Long> heap = new ArrayList<>();
        int done = 0;
        for (int look = 0; look < LOOKS; look++) {
            afresh();
            while (done < ACTIONS * (look + 1) / LOOKS) {
                done += someActions();
            }
            bundles.turn("org.example.bags", true);
            bundles.turn("org.example.cords", true);
            bundles.takeEffect();
            afresh();
            resources.add(real.resources());
            heap.add(used());
        }
        real.close();
        int half = LOOKS / 2;
        for (int look = half; look < LOOKS; look++) {
            assertEquals(resources.get(half), resources.get(look), "what is held of the system: " + resources);
        }
        long first = heap.get(half);
        long last = heap.get(LOOKS - 1);
        assertTrue(last < first + first / 10 + 1_000_000, "memory in use after collection, in bytes: " + heap);
    }

    /** The project as it was at first, opened anew. */
    private void afresh() throws Exception {
        if (real.window.project().isPresent()) {
            real.press("deed.close");
            if (real.has(Link.class, "told.lose")) {
                real.press("told.lose");
            }
        }
        Files.writeString(file, original);
        real.window.open(file);
        real.settle();
        real.window.view().foldAll(false);
        real.settle();
    }

    private static long used() throws InterruptedException {
        Runtime runtime = Runtime.getRuntime();
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            System.gc();
            Thread.sleep(30);
            least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
        }
        return least;
    }

    /** Looks round once and does some of what can be done; how much was done. */
    private int someActions() throws Exception {
        if (real.window.project().isEmpty()) {
            afresh();
        }
        if (real.window.project().orElseThrow().project().slips().size() > MOST_SLIPS) {
            afresh();
        }
        List<Widget> there =
                real.everything().stream().filter(SeededActionsTest::canAct).toList();
        int done = 0;
        for (int i = 0; i < AT_A_LOOK; i++) {
            done += act(there) ? 1 : 0;
            real.dispatch();
        }
        real.settle();
        return Math.max(1, done);
    }

    private boolean act(List<Widget> there) {
        Widget widget = there.get(random.nextInt(there.size()));
        if (widget.isDisposed()) {
            return false;
        }
        if (widget instanceof Text text && text.getEditable()) {
            text.setText(TYPED.get(random.nextInt(TYPED.size())));
            return true;
        } else if (widget instanceof Combo combo && combo.getItemCount() > 0) {
            combo.select(random.nextInt(combo.getItemCount()));
            combo.notifyListeners(SWT.Selection, new Event());
            return true;
        } else if (widget instanceof org.eclipse.swt.widgets.List rows && rows.getItemCount() > 0) {
            rows.select(random.nextInt(rows.getItemCount()));
            rows.notifyListeners(SWT.Selection, new Event());
            return true;
        } else if (widget instanceof Link || widget instanceof MenuItem) {
            widget.notifyListeners(SWT.Selection, new Event());
            return true;
        }
        return false;
    }

    private static boolean canAct(Widget widget) {
        if (!(widget.getData("id") instanceof String id)) {
            return false;
        }
        return widget instanceof Text
                || widget instanceof Combo
                || widget instanceof org.eclipse.swt.widgets.List
                || widget instanceof Link && WORDS.contains(last(id))
                || widget instanceof MenuItem && (DEEDS.contains(id) || SLIP_DEEDS.contains(last(id)));
    }

    private static String last(String id) {
        return id.substring(Math.max(id.lastIndexOf('/'), id.lastIndexOf('.')) + 1);
    }
}
