package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.slip.SlipBoard;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slips in a real window: every kind of editor, links, tables, folding. */
class SlipWindowTest {
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

    private String project() {
        return real.window.project().orElseThrow().project().text();
    }

    private List<String> slips() {
        return real.window.project().orElseThrow().project().slips().stream()
                .map(slip -> slip.id())
                .toList();
    }

    @Test
    void whatIsTypedIsEchoedAsItWasUnderstood() {
        real.type("roll/round", "2 in");
        assertEquals("= 50.8\u00A0mm", real.text("roll/round/told"));
        real.type("roll/round", "50.8 mm");
        assertEquals("", real.text("roll/round/told"));
    }

    @Test
    void aFieldSaysWhatIsUsual() {
        Text field = real.find(Text.class, "roll/round");
        assertTrue(field.getToolTipText().contains("Round the roll."), field.getToolTipText());
        assertTrue(field.getToolTipText().contains("50-300 mm"), field.getToolTipText());
    }

    @Test
    void nonsenseIsRefusedWhereItWasTyped() {
        real.type("roll/round", "2 sheep");
        assertTrue(real.text("roll/round/told").contains("sheep"), real.text("roll/round/told"));
        assertEquals("2 sheep", real.text("roll/round"));
        assertEquals("Refused: no answer until it is mended", real.answers("roll"));
        assertTrue(real.text("project.look").contains("thing"), real.text("project.look"));
        real.press("deed.undo");
        assertTrue(real.answers("roll").contains("100.0"), real.answers("roll"));
    }

    @Test
    void questionsLeftToTheirPresetsStandBehindALine() {
        assertFalse(real.has(Combo.class, "roll/lay"));
        real.press("roll/rest");
        assertEquals("Two strands", real.text("roll/lay"));
        real.choose("roll/lay", "Three strands");
        assertTrue(project().contains("\"lay\": \"three\""), project());
        assertEquals("Three strands", real.text("roll/lay"));
    }

    @Test
    void aYesOrNoIsChosen() {
        real.press("roll/rest");
        real.choose("roll/waxed", "yes");
        assertTrue(project().contains("\"waxed\": \"yes\""), project());
    }

    @Test
    void aVariantBringsItsQuestionsAndKeepsWhatWasTypedForTheOther() {
        real.press("roll/rest");
        real.choose("roll/end", "With a loop");
        real.type("roll/end.loop.round", "30 mm");
        assertTrue(real.answers("roll").contains("130.0\u00A0mm"), real.answers("roll"));
        real.choose("roll/end", "Plain");
        assertFalse(real.has(Text.class, "roll/end.loop.round"));
        real.choose("roll/end", "With a loop");
        assertEquals("30 mm", real.text("roll/end.loop.round"));
    }

    @Test
    void whatIsWrongInsideAVariantIsStillAskedThere() {
        real.press("roll/rest");
        real.choose("roll/end", "With a loop");
        real.type("roll/end.loop.round", "a knot");
        assertEquals("With a loop", real.text("roll/end"));
        assertEquals("a knot", real.text("roll/end.loop.round"));
        assertTrue(real.find(Label.class, "roll/end.loop.round/told").getVisible());
        assertEquals("One thing to look at", real.text("project.look"), "what waits for it is not counted");
    }

    @Test
    void oneAnswerOfAPresetGroupIsChangedWithoutTheOther() {
        real.press("bag/rest");
        real.type("bag/room.above", "9 mm");
        assertTrue(real.answers("bag").contains("Cut height 89.0\u00A0mm"), real.answers("bag"));
        assertTrue(real.answers("bag").contains("Cut width 106.0\u00A0mm"), "the room beside is still there");
        assertTrue(project().contains("\"beside\": \"3 mm\""), project());
    }

    @Test
    void aLinkedQuestionShowsItsValueAndItsSource() {
        assertEquals("100\u00A0mm", real.text("bag/width"));
        assertEquals("⇠ Roll, Length", real.text("bag/width/told"));
    }

    @Test
    void whatIsTypedTakesTheWholePlaceOfALink() {
        Text field = real.find(Text.class, "bag/width");
        Event key = new Event();
        key.character = '7';
        key.keyCode = '7';
        field.notifyListeners(SWT.KeyDown, key);
        assertEquals(field.getText(), field.getSelectionText(), "the first letter replaces all of it");
        field.insert("7");
        field.insert("7 mm");
        real.settle();
        assertEquals("77 mm", field.getText());
        assertTrue(real.answers("bag").contains("Cut width 83.0\u00A0mm"), real.answers("bag"));
        real.press("deed.undo");
        assertEquals("⇠ Roll, Length", real.text("bag/width/told"));
    }

    @Test
    void theWheelOverAChoiceMovesTheBoardAndNotTheAnswer() {
        real.shell.setSize(900, 300);
        real.settle();
        real.press("roll/rest");
        Combo lay = real.find(Combo.class, "roll/lay");
        SlipBoard board = board(lay);
        board.setOrigin(0, 0);
        int chosen = lay.getSelectionIndex();
        Event wheel = new Event();
        wheel.count = -3;
        lay.notifyListeners(SWT.MouseVerticalWheel, wheel);
        assertFalse(wheel.doit);
        assertEquals(chosen, lay.getSelectionIndex());
        assertTrue(board.getOrigin().y > 0, "it has moved");
    }

    private static SlipBoard board(Control control) {
        return control instanceof SlipBoard board ? board : board(control.getParent());
    }

    @Test
    void answersThatAreTablesAreReadInColumns() {
        real.press("bag/tables");
        Table punched = real.find(Table.class, "tables.punched");
        assertEquals("From the left", punched.getColumn(1).getText());
        assertEquals("left", punched.getItem(0).getText(0));
        assertEquals("10.0\u00A0mm", punched.getItem(0).getText(1));
        real.press("tables.back");
        assertFalse(real.has(Table.class, "tables.punched"));
    }

    @Test
    void aKeyThatErasesTakesTheLinkAway() {
        Text field = real.find(Text.class, "bag/width");
        Event key = new Event();
        key.keyCode = SWT.DEL;
        field.notifyListeners(SWT.KeyDown, key);
        real.settle();
        assertEquals("", field.getText());
        real.type("bag/width", "77 mm");
        assertTrue(real.answers("bag").contains("Cut width 83.0\u00A0mm"), real.answers("bag"));
    }

    @Test
    void aQuestionIsLinkedByItsMenu() {
        Menu menu = real.find(Text.class, "hem/round").getMenu();
        menu.notifyListeners(SWT.Show, new Event());
        List<String> offered = Stream.of(menu.getItems())
                .map(MenuItem::getText)
                .map(Mnemonics::plain)
                .toList();
        assertEquals(List.of("Take the answer away", "Take from Roll", "Take from Bag"), offered);
        MenuItem height = Stream.of(menu.getItem(2).getMenu().getItems())
                .filter(item -> item.getData("id").equals("bag.cut-height"))
                .findFirst()
                .orElseThrow();
        height.notifyListeners(SWT.Selection, new Event());
        real.settle();
        assertEquals("⇠ Bag, Cut height", real.text("hem/round/told"));
        assertTrue(real.answers("hem").contains("84.0\u00A0mm"), real.answers("hem"));
    }

    @Test
    void anAnswerIsDraggedToAQuestion() {
        real.hands.drag(real.find(Canvas.class, "roll/answers"), 20, 12, real.find(Text.class, "hem/round"));
        real.until(() -> real.text("hem/round/told").equals("⇠ Roll, Length"));
        real.settle();
        assertTrue(real.answers("hem").contains("100.0\u00A0mm"), real.answers("hem"));
    }

    @Test
    void nothingIsDroppedWhereItWouldGoInACircle() {
        real.hands.drag(real.find(Canvas.class, "hem/answers"), 20, 12, real.find(Text.class, "roll/round"));
        real.settle();
        assertEquals("50 mm", real.text("roll/round"));
        assertFalse(project().contains("\"from\": \"hem\""), project());
    }

    @Test
    void anAnswerSaysWhatHangsOnIt() {
        Canvas answers = real.find(Canvas.class, "roll/answers");
        Event move = new Event();
        move.y = 2;
        answers.notifyListeners(SWT.MouseMove, move);
        assertTrue(answers.getToolTipText().contains("Bag, Width"), answers.getToolTipText());
    }

    @Test
    void aRangeIsToldWithWhatMovesIt() {
        real.type("roll/round", "50 +- 2 mm");
        assertTrue(real.answers("roll").contains("(96.0–104.0\u00A0mm)"), real.answers("roll"));
        assertTrue(real.answers("hem").contains("(102.0–110.0\u00A0mm)"), real.answers("hem"));
    }

    @Test
    void workingAndSourcesAreFoldedAway() {
        assertEquals("", real.text("bag/working.lines"));
        real.press("bag/working");
        assertTrue(real.text("bag/working.lines").contains("W = w + 2 · r"), real.text("bag/working.lines"));
        real.press("bag/sources");
        assertTrue(
                real.text("bag/sources.lines").contains("Width with room on either side"),
                real.text("bag/sources.lines"));
        real.press("bag/working");
        assertEquals("", real.text("bag/working.lines"));
    }

    @Test
    void rowsAreShownAndTheChosenOneIsAsked() {
        var lines = real.find(org.eclipse.swt.widgets.List.class, "bag/eyelets/rows");
        assertEquals(2, lines.getItemCount());
        assertTrue(lines.getItem(0).contains("left") && lines.getItem(0).contains("10 mm"), lines.getItem(0));
        choose(lines, 1);
        real.type("bag/eyelets[right].across", "88 mm");
        assertTrue(lines.getItem(1).contains("88 mm"), lines.getItem(1));
        assertTrue(project().contains("\"across\": \"88 mm\""), project());
    }

    private void choose(org.eclipse.swt.widgets.List lines, int row) {
        lines.select(row);
        lines.notifyListeners(SWT.Selection, new Event());
        real.settle();
    }

    @Test
    void rowsAreAddedMovedAndTakenOut() {
        var lines = real.find(org.eclipse.swt.widgets.List.class, "bag/eyelets/rows");
        real.press("bag/eyelets/add");
        assertEquals(3, lines.getItemCount());
        assertTrue(project().contains("\"row-3\""), project());
        choose(lines, 2);
        real.type("bag/eyelets[row-3].across", "50 mm");
        real.type("bag/eyelets[row-3].up", "20 mm");
        real.press("bag/eyelets/up");
        assertTrue(lines.getItem(1).startsWith("row-3"), Arrays.toString(lines.getItems()));
        assertEquals(1, lines.getSelectionIndex(), "it stays chosen");
        real.press("bag/eyelets/remove");
        assertEquals(2, lines.getItemCount());
        assertFalse(project().contains("row-3"));
        real.press("deed.undo");
        assertEquals(3, lines.getItemCount());
    }

    @Test
    void rowsArePastedFromASpreadsheet() {
        Clipboard clipboard = new Clipboard(real.display());
        clipboard.setContents(
                new Object[] {"Across\tUp\n30 mm\t12 mm\n40 mm\t12 mm\n"}, new Transfer[] {TextTransfer.getInstance()});
        real.press("bag/eyelets/paste");
        clipboard.dispose();
        var lines = real.find(org.eclipse.swt.widgets.List.class, "bag/eyelets/rows");
        assertEquals(4, lines.getItemCount(), "the line with the names of the columns is no row");
        assertTrue(lines.getItem(3).contains("40 mm"), lines.getItem(3));
        assertTrue(real.answers("bag").contains("Cut width"), real.answers("bag"));
        real.press("deed.undo");
        assertEquals(2, lines.getItemCount(), "what was pasted goes as one");
    }

    @Test
    void aSlipIsCopiedMovedAndTakenOut() {
        real.press("roll/copy");
        assertEquals(List.of("roll", "roll-2", "bag", "hem"), slips());
        assertTrue(real.answers("roll-2").contains("100.0\u00A0mm"));
        real.press("roll-2/down");
        assertEquals(List.of("roll", "bag", "roll-2", "hem"), slips());
        real.press("roll-2/remove");
        assertEquals(List.of("roll", "bag", "hem"), slips());
        assertEquals("", real.answers("roll-2"));
    }

    @Test
    void whatWasLinkedToASlipThatIsGoneSaysSo() {
        real.press("bag/remove");
        assertTrue(real.text("hem/round/told").contains("bag"), real.text("hem/round/told"));
        real.press("deed.undo");
        assertTrue(real.answers("hem").contains("106.0\u00A0mm"), real.answers("hem"));
    }

    @Test
    void aSlipGetsTheMakersTitle() {
        real.press("bag/title");
        Text field = real.find(Text.class, "bag/title-field");
        field.setText("Trawl bag");
        real.settle();
        field.notifyListeners(SWT.DefaultSelection, new Event());
        real.settle();
        assertTrue(project().contains("\"title\": \"Trawl bag\""), project());
        assertFalse(real.has(Text.class, "bag/title-field"));
    }

    @Test
    void aFoldedSlipShowsWhatLeadsAndStaysFolded() throws Exception {
        real.press("bag/fold");
        assertFalse(real.has(Text.class, "bag/width"));
        assertFalse(real.find(Canvas.class, "bag/answers").getVisible());
        real.close();
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), folder.resolve("bag.json"));
        assertFalse(real.has(Text.class, "bag/width"), "also the next time");
        real.press("bag/fold");
        assertTrue(real.has(Text.class, "bag/width"));
    }

    @Test
    void theNextThingToLookAtIsOpenedAndBroughtIntoView() {
        real.press("deed.fold-all");
        assertFalse(real.has(Text.class, "roll/round"));
        real.press("deed.unfold-all");
        real.type("roll/round", "2 sheep");
        real.press("deed.fold-all");
        real.press("project.look");
        assertTrue(real.find(Text.class, "roll/round").isFocusControl(), "what is wrong is opened, to be typed over");
        assertTrue(real.has(Link.class, "roll/menu"));
    }
}
