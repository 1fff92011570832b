package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two slips of a kind side by side: what if, taken over or dropped. */
class CompareWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
    }

    @AfterEach
    void close() {
        real.close();
    }

    @Test
    void whatIfComparesACopyWithItsDifferencesMarked() {
        real.press("roll/what-if");
        assertTrue(real.text("compare.count").startsWith("Nothing differs yet"), real.text("compare.count"));
        real.type("roll-2/round", "55 mm");
        assertEquals("2 things differ", real.text("compare.count"));
        Table table = real.find(Table.class, "compare.lines");
        List<String> marked = Stream.of(table.getItems())
                .filter(item -> item.getText(0).equals("≠"))
                .map(item -> item.getText(1) + " " + item.getText(2) + " " + item.getText(3))
                .toList();
        assertEquals(List.of("Length 100.0\u00A0mm 110.0\u00A0mm", "Round 50 mm 55 mm"), marked);
        real.press("compare.back");
        assertFalse(table.isVisible());
    }

    @Test
    void whatWasTriedOutIsTakenOverOrDropped() {
        real.press("roll/what-if");
        real.type("roll-2/round", "55 mm");
        assertEquals(
                List.of("roll"),
                List.copyOf(
                        real.window.project().orElseThrow().worked().orElseThrow().toMake().slips().keySet().stream()
                                .filter(id -> id.startsWith("roll"))
                                .toList()),
                "it is not made");
        real.press("roll-2/take");
        assertFalse(real.has(Text.class, "roll-2/round"));
        assertEquals("55 mm", real.text("roll/round"));
        assertTrue(real.answers("bag").contains("116.0\u00A0mm"), real.answers("bag"));
        real.press("roll/what-if");
        real.press("roll-2/drop");
        assertFalse(real.has(Text.class, "roll-2/round"));
        real.press("deed.undo");
        assertTrue(real.has(Text.class, "roll-2/round"));
    }

    @Test
    void anotherOfTheKindIsChosenToCompareWith() {
        real.press("roll/compare");
        assertEquals("Hem", real.text("compare.right"));
        Table table = real.find(Table.class, "compare.lines");
        TableItem length = Stream.of(table.getItems())
                .filter(item -> item.getText(1).equals("Length"))
                .findFirst()
                .orElseThrow();
        assertEquals("106.0\u00A0mm", length.getText(3));
    }
}
