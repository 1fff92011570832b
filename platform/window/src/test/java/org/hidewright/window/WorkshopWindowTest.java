package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.kit.Bench;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workshop in a real window, with a project beside it that takes from it. */
class WorkshopWindowTest {
    @TempDir
    Path folder;

    private Path file;
    private String before;
    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        file = Bench.workshop(folder);
        before = Files.readString(file);
        real = RealWindow.at(folder.resolve("settings"), Bench.catalogue(), Bench.project(folder));
        real.window.workshop().open(file);
        real.settle();
        real.press("deed.workshop");
        settle();
    }

    @AfterEach
    void close() {
        real.close();
    }

    private void settle() {
        real.settle();
        real.settle();
    }

    private Table rows() {
        return real.find(Table.class, "workshop.rows");
    }

    private List<String> ids() {
        return Arrays.stream(rows().getItems()).map(item -> item.getText(0)).toList();
    }

    private void table(String title) {
        org.eclipse.swt.widgets.List tables = real.find(org.eclipse.swt.widgets.List.class, "workshop.tables");
        for (int i = 0; i < tables.getItemCount(); i++) {
            if (tables.getItem(i).startsWith(title)) {
                tables.select(i);
                tables.notifyListeners(SWT.Selection, new Event());
                settle();
                return;
            }
        }
        throw new AssertionError(title + " is not among " + List.of(tables.getItems()));
    }

    private void row(int index) {
        rows().setSelection(index);
        rows().notifyListeners(SWT.Selection, new Event());
        settle();
    }

    private void press(String id) {
        real.press(id);
        settle();
    }

    @Test
    void aTableHasItsColumnsWithUnitsAndEachCellAsItIsRead() {
        assertEquals("Net loft", real.text("workshop.title"));
        table("Leather");
        assertEquals(List.of("side"), ids());
        assertEquals("Thickness, mm", rows().getColumn(3).getText());
        assertFalse(rows().getColumn(3).getToolTipText().isEmpty());
        assertEquals("2.2-2.6 mm", rows().getItem(0).getText(3), "as the maker wrote it");
        assertEquals("Vegetable", rows().getItem(0).getText(2));
        assertTrue(real.text("workshop.wrong").contains("“odd”"), real.text("workshop.wrong"));
    }

    @Test
    void aCellIsTypedUnderstoodRefusedTakenBackAndSavedWithAllElseAsItWas() throws Exception {
        table("Leather");
        real.type("workshop/leather[side].thickness", "2-3 oz");
        settle();
        assertEquals("= 0.794–1.191\u00A0mm", real.text("workshop/leather[side].thickness/told"));
        assertEquals("Net loft *", real.text("workshop.title"));
        real.type("workshop/leather[side].thickness", "thick");
        settle();
        assertTrue(
                real.text("workshop/leather[side].thickness/told").contains("thick"),
                real.text("workshop/leather[side].thickness/told"));
        assertTrue(real.find(org.eclipse.swt.widgets.List.class, "workshop.tables")
                .getItem(0)
                .endsWith("!"));
        real.type("workshop/leather[side].thickness", "2-3 oz");
        settle();
        press("deed.save");
        assertEquals(before.replace("2.2-2.6 mm", "2-3 oz"), Files.readString(file));
        assertEquals("Net loft", real.text("workshop.title"));
        press("deed.undo");
        press("deed.save");
        assertEquals(before, Files.readString(file));
        press("deed.redo");
        assertEquals("2-3 oz", real.text("workshop/leather[side].thickness"));
    }

    @Test
    void rowsAreAddedCopiedMovedTakenOutAndTakenBack() {
        table("Round punches");
        assertEquals(List.of("two", "three", "five"), ids());
        press("workshop/add");
        assertEquals(List.of("two", "three", "punches-3", "five"), ids());
        assertEquals(2, rows().getSelectionIndex(), "the new row is chosen");
        assertEquals("Still to be filled in", real.text("workshop/punches[punches-3].name/told"));
        Text id = real.find(Text.class, "workshop.id");
        id.setText("two");
        id.notifyListeners(SWT.DefaultSelection, new Event());
        assertTrue(real.text("workshop.id.told").contains("“two”"), real.text("workshop.id.told"));
        id.setText("four");
        id.notifyListeners(SWT.DefaultSelection, new Event());
        settle();
        assertEquals(List.of("two", "three", "four", "five"), ids());
        press("workshop/up");
        assertEquals(List.of("two", "four", "three", "five"), ids());
        row(0);
        press("workshop.copy");
        assertEquals(List.of("two", "two-2", "four", "three", "five"), ids());
        assertEquals("20 mm", real.text("workshop/punches[two-2].diameter"));
        press("workshop/remove");
        assertEquals(List.of("two", "four", "three", "five"), ids());
        for (int i = 0; i < 5; i++) {
            press("deed.undo");
        }
        assertEquals(before, real.window.workshop().shown().orElseThrow().text());
    }

    @Test
    void rowsOfASpreadsheetArePasted() {
        table("Round punches");
        Clipboard clipboard = new Clipboard(real.display());
        clipboard.setContents(
                new Object[] {"Name\tDiameter\nÖlpunch groß\t6 mm\n\t7"}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
        press("workshop/paste");
        assertEquals(List.of("two", "three", "olpunch-gross", "punches-4", "five"), ids());
        assertEquals("7 mm", rows().getItem(3).getText(2));
        press("deed.undo");
        assertEquals(before, real.window.workshop().shown().orElseThrow().text(), "all of it with one key");
    }

    @Test
    void aRowOfABundleIsOnlyReadAndCanBeCopiedAmongTheMakersOwn() {
        table("Round punches");
        row(2);
        assertEquals("org.example.punches; sizes: measured by the smith", real.text("workshop.row-from"));
        assertTrue(real.text("workshop.row-read").contains("Diameter  5 mm"), real.text("workshop.row-read"));
        assertFalse(real.has(Text.class, "workshop/punches[five].diameter"));
        press("workshop/remove");
        assertEquals(List.of("two", "three", "five"), ids());
        press("workshop.take-from-bundle");
        assertEquals(List.of("two", "three", "five", "five"), ids());
        assertEquals("5 mm", real.text("workshop/punches[five].diameter"));
    }

    private String text() {
        return real.window.workshop().shown().orElseThrow().text();
    }

    @Test
    void whatWasMeasuredIsAppendedWithTheDayAndCanBeTakenBack() {
        press("deed.record");
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        assertEquals(List.of("measured-1"), ids());
        assertEquals(
                new Wording(Locale.ENGLISH, UnitSystem.METRIC).date(today),
                real.text("workshop/measured[measured-1].day"),
                "a day in words");
        assertTrue(text().contains("\"day\": \"" + today + "\""), "and in the file as ISO 8601 has it");
        real.type("workshop/measured[measured-1].day", "1 Mar 2026");
        settle();
        assertTrue(text().contains("\"day\": \"2026-03-01\""), text());
        assertEquals("1 Mar 2026", real.text("workshop/measured[measured-1].day"), "nothing moves under the keys");
        real.find(Combo.class, "workshop/measured[measured-1].leather").setFocus();
        real.choose("workshop/measured[measured-1].leather", "Side (side)");
        settle();
        assertEquals("1 March 2026", real.text("workshop/measured[measured-1].day"));
        real.type("workshop/measured[measured-1].ratio", "0.42");
        settle();
        assertTrue(text().contains("\"leather\": \"side\", \"ratio\": \"0.42\""));
        press("deed.undo");
        press("deed.undo");
        press("deed.undo");
        press("deed.undo");
        assertEquals(before, real.window.workshop().shown().orElseThrow().text());
    }

    @Test
    void anAnswerOfASlipIsRecorded() {
        press("workshop.back");
        press("roll/recorded");
        String text = real.window.workshop().shown().orElseThrow().text();
        assertTrue(text.contains("\"name\": \"Roll, Length\""), text);
        assertTrue(text.contains("\"length\": \"40.0 mm\""), text);
    }

    @Test
    void whoTakesARowIsToldWithWhatHasChangedSince() {
        table("Round punches");
        row(0);
        Table uses = real.find(Table.class, "uses.lines");
        assertEquals("One question of your projects takes this row", real.text("uses.head"));
        assertEquals("Cords", uses.getItem(0).getText(0));
        assertEquals("Roll, Round", uses.getItem(0).getText(1));
        assertEquals("as it is now", uses.getItem(0).getText(2));
        real.type("workshop/punches[two].diameter", "25 mm");
        settle();
        assertEquals("Diameter: was 20 mm, is 25 mm", uses.getItem(0).getText(2));
        row(1);
        assertEquals("No project that is known takes this row", real.text("uses.head"));
        assertEquals(0, uses.getItemCount());
    }

    @Test
    void theProjectTellsAtOnceWhatDiffersAndTakesItOver() {
        assertFalse(real.find(Link.class, "project.differs").getVisible());
        String answers = real.answers("roll");
        table("Round punches");
        real.type("workshop/punches[two].diameter", "25 mm");
        settle();
        assertEquals("Workshop: one thing to settle", real.text("project.differs"));
        assertEquals(answers, real.answers("roll"), "the project works with its copy");
        press("workshop.back");
        press("project.differs");
        assertEquals(
                "“Round punches, Two, Diameter” is 20 mm in the project and 25 mm in the workshop now.",
                real.text("told.text"));
        press("told.renew");
        assertFalse(real.find(Link.class, "project.differs").getVisible());
        assertFalse(answers.equals(real.answers("roll")));
        press("deed.undo");
        assertEquals(answers, real.answers("roll"));
    }

    @Test
    void whatAnotherProgramWroteIsNotWrittenOverAndCanBeRead() throws Exception {
        table("Round punches");
        real.type("workshop/punches[two].diameter", "25 mm");
        settle();
        String other = before.replace("Net loft", "Rope walk");
        Files.writeString(file, other);
        press("workshop.save");
        assertTrue(real.text("workshop.told").contains("another program"), real.text("workshop.told"));
        assertEquals(other, Files.readString(file));
        assertEquals("Net loft *", real.text("workshop.title"), "nothing is lost");
        press("workshop.read-again");
        assertEquals("Rope walk", real.text("workshop.title"));
        press("deed.undo");
        assertEquals("25 mm", real.text("workshop/punches[two].diameter"));
    }

    @Test
    void unsavedChangesAreAskedForBeforeTheWindowCloses() throws Exception {
        table("Round punches");
        real.type("workshop/punches[two].diameter", "25 mm");
        settle();
        real.shell.close();
        settle();
        assertFalse(real.shell.isDisposed());
        assertTrue(real.text("told.text").contains("workshop"), real.text("told.text"));
        press("told.save");
        assertTrue(real.shell.isDisposed());
        assertEquals(before.replace("20 mm", "25 mm"), Files.readString(file));
    }
}
