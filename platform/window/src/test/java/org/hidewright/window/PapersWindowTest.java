package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.papers.PapersPage;
import org.hidewright.window.papers.Writers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents in a real window: looked at, written, and what stands in the way. */
class PapersWindowTest {
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

    private void look() {
        real.press("deed.papers");
        Canvas sheet = real.find(Canvas.class, "papers.sheet");
        real.until(() -> ((PapersPage) sheet.getParent().getParent()).isShown());
    }

    @Test
    void thePagesAreLookedThrough() {
        look();
        Combo which = real.find(Combo.class, "papers.which");
        assertEquals(2, which.getItemCount(), "job card and patterns: " + List.of(which.getItems()));
        String first = real.text("papers.where");
        assertTrue(first.startsWith("1 of "), first);
        real.press("papers.before");
        assertEquals(first, real.text("papers.where"), "there is none before the first");
        real.press("papers.after");
        assertTrue(real.text("papers.where").startsWith("2 of "), real.text("papers.where"));
        real.press("papers.back");
        assertFalse(real.has(Canvas.class, "papers.sheet"));
        assertTrue(real.has(Canvas.class, "drawing"));
    }

    @Test
    void whatIsOnlyTriedOutIsNotOnThePages() {
        look();
        String without = real.text("papers.where");
        real.press("papers.back");
        real.press("roll/copy");
        look();
        assertFalse(without.equals(real.text("papers.where")), "a slip that is made has its section: " + without);
        real.press("papers.back");
        real.press("deed.undo");
        real.press("roll/what-if");
        look();
        assertEquals(without, real.text("papers.where"));
    }

    @Test
    void aPageIsEnlargedAndScrolled() {
        look();
        Canvas sheet = real.find(Canvas.class, "papers.sheet");
        int whole = sheet.getSize().y;
        assertEquals(sheet.getParent().getClientArea().height, whole, "a whole page is seen");
        real.press("papers.larger");
        real.press("deed.larger");
        real.until(() -> sheet.getSize().y > whole);
        real.press("deed.fit");
        real.until(() -> sheet.getSize().y == whole);
    }

    @Test
    void anotherDocumentBeginsAtItsFirstPage() {
        look();
        real.press("papers.after");
        Combo which = real.find(Combo.class, "papers.which");
        real.choose("papers.which", which.getItem(1));
        assertTrue(real.text("papers.where").startsWith("1 of "), real.text("papers.where"));
    }

    @Test
    void thePacketIsWrittenIntoAFolder() throws Exception {
        Path out = folder.resolve("out");
        export(out, "files.");
        try (Stream<Path> files = Files.list(out)) {
            List<String> names =
                    files.map(file -> file.getFileName().toString()).sorted().toList();
            assertTrue(
                    names.containsAll(List.of("job-card.csv", "job-card.json", "job-card.pdf", "patterns.pdf")),
                    names.toString());
            assertTrue(names.stream().anyMatch(name -> name.endsWith(".svg")), names.toString());
            assertTrue(real.text("project.told").contains(names.size() + " files"), real.text("project.told"));
        }
        assertTrue(Files.readString(out.resolve("job-card.json")).contains("Bag for nets"));
    }

    @Test
    void besideOtherThingsThePacketHasAFolderOfTheProjectsName() throws Exception {
        Path out = Files.createDirectories(folder.resolve("out"));
        Files.writeString(out.resolve("job-card.pdf"), "somebody’s own");
        export(out, "files.");
        assertEquals("somebody’s own", Files.readString(out.resolve("job-card.pdf")));
        assertTrue(Files.readString(out.resolve("bag/job-card.json")).contains("Bag for nets"));
        assertTrue(real.text("project.told").contains(out.resolve("bag") + ": "), real.text("project.told"));
        try (Stream<Path> loose = Files.list(out)) {
            assertEquals(2, loose.count(), "nothing of the packet lies among what was there");
        }
    }

    @Test
    void whereItsOwnPacketIsAlreadyItIsWrittenAgain() throws Exception {
        Path out = folder.resolve("out");
        export(out, "files.");
        Files.writeString(out.resolve("note.txt"), "somebody’s own");
        Files.delete(out.resolve("job-card.csv"));
        export(out, "files.");
        real.until(() -> Files.exists(out.resolve("job-card.csv")));
        assertFalse(Files.exists(out.resolve("bag")));
    }

    @Test
    void whatIsNotOfAPacketIsNotWrittenOver() throws Exception {
        Path own = Files.createDirectories(folder.resolve("out/bag"));
        Files.writeString(own.resolve("job-card.pdf"), "somebody’s own");
        export(folder.resolve("out"), "not of a packet");
        assertEquals("somebody’s own", Files.readString(own.resolve("job-card.pdf")));
    }

    private void export(Path into, String told) {
        real.files.add(into);
        real.press("deed.export");
        real.until(() -> real.text("project.told").contains(told));
    }

    @Test
    void withoutABundleThatWritesPagesItSaysSo() {
        real.close();
        real = new RealWindow(
                folder.resolve("settings"),
                Nets.catalogue(),
                null,
                new Writers(Optional.empty(), Optional.empty(), List.of(), Optional.empty()));
        real.window.open(folder.resolve("bag.json"));
        real.settle();
        real.press("deed.papers");
        assertTrue(real.text("project.told").contains("documents bundle"), real.text("project.told"));
    }

    @Test
    void theScreenIsMeasuredSoThatTrueSizeIsTrue() {
        real.press("deed.measure-screen");
        real.type("screen.length", "two feet of string");
        real.press("screen.keep");
        assertTrue(real.text("screen.told").contains("is no length"), real.text("screen.told"));
        real.type("screen.length", "80 mm");
        real.press("screen.keep");
        assertEquals(5, real.window.view().piece().view().pixelsPerMm(), 1e-9, "400 pixels are 80 mm");
        real.press("screen.back");
        real.close();
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), folder.resolve("bag.json"));
        assertEquals(5, real.window.view().piece().view().pixelsPerMm(), 1e-9, "also the next time");
    }
}
