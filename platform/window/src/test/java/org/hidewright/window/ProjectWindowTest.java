package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.model.SlipFace;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A project in a real window: opened, changed, saved, left, found again. */
class ProjectWindowTest {
    @TempDir
    Path folder;

    private Path file;
    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        file = Nets.bag(folder);
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), file);
    }

    @AfterEach
    void close() {
        real.close();
    }

    private String saved() throws Exception {
        return Files.readString(file);
    }

    @Test
    void aProjectIsShownWithItsNameAndWhatItComesTo() {
        assertEquals("Bag for nets", real.text("project.name"));
        assertEquals("All worked out", real.text("project.look"));
        assertTrue(real.answers("roll").contains("Length 100.0\u00A0mm"), real.answers("roll"));
        assertTrue(real.answers("bag").contains("Cut width 106.0\u00A0mm"), real.answers("bag"));
        assertEquals("Bag for nets – Hidewright", real.shell.getText());
    }

    @Test
    void withoutAProjectItAsksWhatToOpen() {
        real.press("deed.close");
        assertTrue(real.has(Link.class, "start.open"));
        assertEquals(
                List.of("bag.json"),
                real.all(Link.class, "start.recent").stream()
                        .map(link -> link.getText().replaceAll("</?a>", ""))
                        .toList());
        real.press("start.recent");
        assertEquals("Bag for nets", real.text("project.name"));
    }

    @Test
    void aProjectIsOpenedByTheMakersChoice() throws Exception {
        real.press("deed.close");
        Nets.file(folder);
        real.files.add(folder.resolve("nets.json"));
        real.press("start.open");
        assertEquals("Nets", real.text("project.name"));
        assertEquals("One thing to look at", real.text("project.look"));
    }

    @Test
    void aFileThatIsNoProjectIsToldAndTheOpenOneStays() throws Exception {
        real.files.add(Files.writeString(folder.resolve("torn.json"), "{\"hidewright\": "));
        real.press("deed.open");
        assertTrue(real.text("told.text").length() > 20, real.text("told.text"));
        assertEquals("Bag for nets", real.text("project.name"));
        real.press("told.seen");
        assertFalse(real.find(Composite.class, "told").getVisible());
    }

    @Test
    void aNewProjectIsAFileFromTheBeginning() throws Exception {
        Path fresh = folder.resolve("trawl.json");
        real.files.add(fresh);
        real.press("deed.new");
        assertEquals("trawl", real.text("project.name"));
        assertTrue(Files.readString(fresh).contains("\"name\": \"trawl\""));
        real.press("add.cord");
        assertTrue(real.has(Text.class, "cord/round"));
        real.type("cord/round", "70 mm");
        assertTrue(real.answers("cord").contains("140.0\u00A0mm"), real.answers("cord"));
    }

    @Test
    void whatIsTypedShowsOnEverySlipThatHangsOnIt() {
        real.type("roll/round", "60 mm");
        assertTrue(real.answers("roll").contains("Length 120.0\u00A0mm"), real.answers("roll"));
        assertTrue(real.answers("bag").contains("Cut width 126.0\u00A0mm"), real.answers("bag"));
        assertTrue(real.answers("hem").contains("Length 126.0\u00A0mm"), real.answers("hem"));
        assertTrue(real.text("project.name").endsWith("*"));
    }

    @Test
    void theOldValueStandsBesideTheNewForAWhileOnceTheFieldIsLeft() {
        real.find(Text.class, "roll/round").setFocus();
        real.type("roll/round", "60 mm");
        assertTrue(real.answers("roll").contains("[100.0\u00A0mm]"), real.answers("roll"));
        real.find(Text.class, "bag/height").setFocus();
        real.until(() -> !real.answers("roll").contains("["));
        assertTrue(real.answers("roll").contains("120.0\u00A0mm"));
    }

    @Test
    void theDrawingFollows() {
        var before = real.window.view().piece().view().shown();
        real.type("roll/round", "60 mm");
        var after = real.window.view().piece().view().shown();
        assertEquals(
                20,
                after.get(0).drawing().bounds().width()
                        - before.get(0).drawing().bounds().width(),
                1e-6);
    }

    @Test
    void aPieceThatCannotBeMadeSaysForWhomItWaits() {
        real.type("roll/round", "2 sheep");
        var view = real.window.view().piece().view();
        assertTrue(view.shown().isEmpty(), "no drawing of another slip stands for it");
        assertEquals("There is no piece as long as “Bag” cannot be worked out.", view.instead());
        SlipFace bag = real.window
                .project()
                .orElseThrow()
                .face()
                .orElseThrow()
                .slip("bag")
                .orElseThrow();
        assertEquals("Waits for “Roll”", bag.stateText());
        real.press("deed.undo");
        assertFalse(view.shown().isEmpty());
        assertEquals("", view.instead());
    }

    @Test
    void lettersOfOneFieldAreTakenBackTogether() {
        real.type("roll/round", "60 mm");
        real.press("roll/rest");
        real.type("roll/spare", "5 mm");
        real.press("deed.undo");
        assertEquals("", real.text("roll/spare"));
        real.press("deed.undo");
        assertEquals("50 mm", real.text("roll/round"));
        assertTrue(real.answers("hem").contains("106.0\u00A0mm"), real.answers("hem"));
        real.press("deed.redo");
        assertEquals("60 mm", real.text("roll/round"));
        assertTrue(real.answers("hem").contains("126.0\u00A0mm"), real.answers("hem"));
    }

    @Test
    void whatWasTakenBackIsNotOfferedTheNextTime() throws Exception {
        real.type("roll/round", "60 mm");
        Path copies = folder.resolve("settings/unsaved");
        real.until(() -> Files.isDirectory(copies) && !isEmpty(copies));
        real.press("deed.undo");
        real.window.shell().close();
        real.close();
        assertTrue(isEmpty(copies));
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), folder.resolve("bag.json"));
        assertFalse(real.has(Link.class, "told.take"));
    }

    private static boolean isEmpty(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aKeyWorksAlsoWhereItsMenuWasGreyWhenItWasSeen() {
        MenuItem undo = real.find(MenuItem.class, "deed.undo");
        undo.getParent().notifyListeners(SWT.Show, new Event());
        assertFalse(undo.getEnabled());
        undo.getParent().notifyListeners(SWT.Hide, new Event());
        assertTrue(undo.getEnabled(), "or the system would not let the key through");
        real.press("deed.undo");
        assertEquals("50 mm", real.text("roll/round"), "nothing is there to take back");
    }

    @Test
    void whatCannotBeTakenBackIsGrey() {
        assertFalse(real.find(MenuItem.class, "deed.undo").getEnabled());
        real.type("roll/round", "60 mm");
        assertTrue(real.find(MenuItem.class, "deed.undo").getEnabled());
    }

    @Test
    void aSaveIsInTheFileAndFoundAgain() throws Exception {
        real.type("roll/round", "60 mm");
        assertTrue(saved().contains("50 mm"));
        real.press("deed.save");
        assertTrue(saved().contains("\"round\": \"60 mm\""));
        assertFalse(real.text("project.name").endsWith("*"));
        assertTrue(real.text("project.told").contains("bag.json"), real.text("project.told"));
        real.press("deed.close");
        real.window.open(file);
        real.settle();
        assertEquals("60 mm", real.text("roll/round"));
    }

    @Test
    void aSaveUnderAnotherNameGoesOnThere() throws Exception {
        Path other = folder.resolve("other.json");
        real.type("roll/round", "60 mm");
        real.files.add(other);
        real.press("deed.save-as");
        assertTrue(Files.readString(other).contains("60 mm"));
        assertTrue(saved().contains("50 mm"));
        real.type("roll/round", "70 mm");
        real.press("deed.save");
        assertTrue(Files.readString(other).contains("70 mm"));
    }

    @Test
    void aFileThatAnotherProgramChangedIsNotWrittenOver() throws Exception {
        String others = saved().replace("50 mm", "55 mm");
        Files.writeString(file, others);
        real.type("roll/round", "60 mm");
        real.press("deed.save");
        assertEquals(others, saved());
        assertTrue(real.text("told.text").contains(".unsaved"), real.text("told.text"));
    }

    @Test
    void whatIsNotSavedIsAskedAboutBeforeItIsLeft() throws Exception {
        real.type("roll/round", "60 mm");
        real.press("deed.close");
        assertEquals("There are changes that are not saved.", real.text("told.text"));
        real.press("told.stay");
        assertEquals("60 mm", real.text("roll/round"));
        real.press("deed.close");
        real.press("told.save");
        assertTrue(saved().contains("60 mm"));
        assertTrue(real.has(Link.class, "start.open"));
    }

    @Test
    void theWindowStaysWhenItIsClosedWithChanges() throws Exception {
        real.type("roll/round", "60 mm");
        real.shell.close();
        assertFalse(real.shell.isDisposed());
        real.press("told.lose");
        assertTrue(real.shell.isDisposed());
        assertTrue(saved().contains("50 mm"));
    }

    @Test
    void whatWasNotSavedWhenTheProgramEndedIsOfferedAgain() {
        real.type("roll/round", "60 mm");
        real.until(() -> Files.isDirectory(folder.resolve("settings/unsaved")));
        real.settle();
        real.shell.dispose(); // as when the power fails
        real.close();
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), file);
        assertEquals("50 mm", real.text("roll/round"));
        assertEquals("The last time, changes of the project “Bag for nets” were not saved.", real.text("told.text"));
        real.press("told.take");
        assertEquals("60 mm", real.text("roll/round"));
        assertTrue(real.answers("hem").contains("126.0\u00A0mm"));
        real.press("deed.undo");
        assertEquals("50 mm", real.text("roll/round"), "taking over can be taken back");
    }

    @Test
    void whatWasLeftOfAProjectWithoutANameIsOfferedByItsFile() throws Exception {
        Path nameless = folder.resolve("nameless.json");
        Files.writeString(nameless, saved().replace("\"name\": \"Bag for nets\",", ""));
        real.window.open(nameless);
        real.settle();
        real.type("roll/round", "60 mm");
        real.until(() -> Files.isDirectory(folder.resolve("settings/unsaved")));
        real.settle();
        real.shell.dispose(); // as when the power fails
        real.close();
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), nameless);
        assertEquals("The last time, changes of the project “nameless.json” were not saved.", real.text("told.text"));
    }

    @Test
    void whatWasLeftUnsavedOutlivesNewChangesAndLeaving() throws Exception {
        real.type("roll/round", "60 mm");
        real.until(() -> Files.isDirectory(folder.resolve("settings/unsaved")));
        real.settle();
        real.shell.dispose(); // as when the power fails
        real.close();
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), file);
        real.type("roll/round", "70 mm"); // without a word on what was left
        real.press("deed.close");
        real.press("told.lose");
        real.window.open(file);
        real.settle();
        assertEquals("The last time, changes of the project “Bag for nets” were not saved.", real.text("told.text"));
        real.press("told.take");
        assertEquals("60 mm", real.text("roll/round"));
        real.press("deed.save");
        real.press("deed.close");
        real.window.open(file);
        real.settle();
        assertFalse(
                real.find(Composite.class, "told").getVisible(), "once taken over and saved it is not offered again");
    }

    @Test
    void oneSwitchShowsEverythingInInches() {
        real.press("project.units");
        assertEquals("Show millimetres", real.text("project.units"));
        assertTrue(real.answers("roll").contains("in"), real.answers("roll"));
        assertFalse(real.answers("roll").contains("mm"), real.answers("roll"));
        assertEquals("50 mm", real.text("roll/round"), "what was typed stays as it was typed");
        real.type("roll/round", "2 1/2");
        assertTrue(
                real.window.project().orElseThrow().project().text().contains("\"2 1/2 in\""),
                "a bare number is of the unit that is seen");
        assertTrue(real.answers("roll").contains("5.000\u00A0in"), real.answers("roll"));
        real.press("deed.units");
        assertTrue(real.answers("roll").contains("mm"));
    }

    @Test
    void whatIsTakenBackIsNoChangeAnyMore() {
        real.type("roll/round", "60 mm");
        assertTrue(real.answers("roll").contains("[100.0\u00A0mm]"), real.answers("roll"));
        real.press("deed.undo");
        assertFalse(real.answers("roll").contains("["), real.answers("roll"));
    }

    @Test
    void aProjectThatIsLeftWhileItIsWorkedOutIsNotShownAnyMore() throws Exception {
        real.window.open(Nets.write(folder.resolve("other.json"), Files.readString(file)));
        real.window.open(file);
        real.window.close();
        real.settle();
        assertTrue(real.has(Link.class, "start.open"));
        assertEquals("Hidewright", real.shell.getText());
    }

    @Test
    void whatBreaksIsToldAndTheWorkGoesOn() {
        real.window.broke(new IllegalStateException("a thread snapped"));
        assertTrue(real.text("told.text").contains("a thread snapped"), real.text("told.text"));
        real.press("told.seen");
        real.type("roll/round", "60 mm");
        assertTrue(real.answers("roll").contains("120.0"), real.answers("roll"));
    }

    @Test
    void recentProjectsStandInTheMenu() {
        MenuItem recent = real.find(MenuItem.class, "recent");
        assertEquals(file.toAbsolutePath().normalize().toString(), Mnemonics.plain(recent.getText()));
        recent.notifyListeners(SWT.Selection, new Event());
        real.settle();
        assertEquals("Bag for nets", real.text("project.name"));
    }
}
