package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One field finds slips, questions, what is told and what is installed, and leads there. */
class FindWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        real.press("deed.find");
        real.settle();
    }

    @AfterEach
    void close() {
        real.close();
    }

    private void search(String words) {
        real.find(Text.class, "find.words").setText(words);
    }

    private Stream<TreeItem> items() {
        return Stream.of(real.find(Tree.class, "find.found").getItems()).flatMap(group -> Stream.of(group.getItems()));
    }

    private List<String> found() {
        return items().map(TreeItem::getText).toList();
    }

    private void enter(Control control) {
        control.notifyListeners(SWT.DefaultSelection, new Event());
    }

    @Test
    void enterOnTheFirstThatIsFoundLeadsToTheQuestionOfItsSlip() {
        search("bag width");
        assertTrue(found().get(0).startsWith("Width – "), found().toString());
        enter(real.find(Text.class, "find.words"));
        assertSame(
                real.find(Text.class, "bag/width"), real.display().getFocusControl(), "the cursor is in the question");
    }

    /** As somebody types: what was first among fewer letters may be found still, and further down. */
    @Test
    void otherWordsChooseWhatComesFirstThen() {
        search("bag");
        Tree tree = real.find(Tree.class, "find.found");
        tree.setSelection(items().reduce((one, next) -> next).orElseThrow());
        search("bag ");
        assertEquals(items().findFirst().orElseThrow(), tree.getSelection()[0]);
    }

    @Test
    void aQuestionLeftToItsPresetIsBroughtOut() {
        search("roll lay");
        enter(real.find(Text.class, "find.words"));
        assertEquals("Two strands", real.text("roll/lay"));
    }

    @Test
    void aCalculatorIsOfferedAndOnlyThenAddedAsASlip() {
        int before = real.window.project().orElseThrow().project().slips().size();
        search("cord");
        Tree tree = real.find(Tree.class, "find.found");
        TreeItem cord = items().filter(item -> item.getParentItem().getText().equals("Calculators"))
                .findFirst()
                .orElseThrow();
        tree.setSelection(cord);
        enter(tree);
        assertEquals(
                before, real.window.project().orElseThrow().project().slips().size(), "it is only offered");
        assertTrue(real.find(Link.class, "find.go").isFocusControl());
        real.press("find.go");
        real.settle();
        assertEquals(
                before + 1,
                real.window.project().orElseThrow().project().slips().size());
    }

    @Test
    void whatIsToldOnASlipIsFound() {
        real.type("roll/round", "2 sheep");
        search("sheep");
        assertTrue(found().stream().anyMatch(text -> text.endsWith("– Roll")), found().toString());
    }

    @Test
    void nothingFoundIsSaidAndASlipOfThePenPutRight() {
        search("aeroplane");
        assertEquals(
                "Nothing found. Fewer or other words may help.",
                real.find(Label.class, "find.count").getText());
        assertFalse(real.find(Link.class, "find.go").getVisible());
        search("eyeltes");
        assertEquals(
                "Nothing found. Perhaps “Eyelets”?",
                real.find(Label.class, "find.count").getText());
    }
}
