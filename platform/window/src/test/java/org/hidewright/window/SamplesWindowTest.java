package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.piece.PieceView;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Samples on the page to begin at: opened as copies, so that they never change. */
class SamplesWindowTest {
    @TempDir
    Path folder;

    private Path sample;
    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        Path projects = Files.createDirectories(folder.resolve("samples/projects"));
        Path templates = Files.createDirectories(folder.resolve("samples/templates"));
        sample = Nets.bag(projects);
        Files.writeString(
                templates.resolve("cord.json"),
                "{\"hidewright\": 1, \"name\": \"A cord\", \"slips\": [{\"id\": \"c\", \"calculator\": \"cord\"}]}");
        Files.writeString(templates.resolve("torn.json"), "{");
        real = new RealWindow(folder.resolve("settings"), Nets.catalogue());
    }

    @AfterEach
    void close() {
        real.close();
    }

    private List<Link> samples() {
        return real.all(Link.class, "start.sample");
    }

    @Test
    void eachStandsThereByItsName() {
        assertEquals(
                List.of("Bag for nets", "A cord"),
                samples().stream()
                        .map(link -> link.getText().replaceAll("</?a>", ""))
                        .toList());
    }

    @Test
    void eachHasAPictureOnceItIsWorkedOut() {
        List<PieceView> pictures = real.all(PieceView.class, "start.picture");
        assertEquals(2, pictures.size());
        assertEquals("bag", pictures.get(0).shown().get(0).key());
        assertFalse(pictures.get(0).isEnabled(), "to be looked at alone");
    }

    @Test
    void withoutATemplateItIsToldThatThereIsNothingToBeginWith() {
        real.press("start.begin");
        assertTrue(real.text("told.text").startsWith("No template is installed"), real.text("told.text"));
        assertTrue(real.has(Link.class, "start.begin"));
    }

    @Test
    void openingOneOpensACopy() throws Exception {
        String before = Files.readString(sample);
        samples().get(0).notifyListeners(SWT.Selection, new Event());
        real.settle();
        assertEquals("Bag for nets", real.text("project.name"));
        assertTrue(real.window.project().orElseThrow().isUntitled());
        assertFalse(real.window.project().orElseThrow().unsaved(), "it can be had again as it is");
        real.type("roll/round", "60 mm");
        assertTrue(real.window.project().orElseThrow().unsaved());
        Path mine = folder.resolve("mine.json");
        real.files.add(mine);
        real.press("deed.save");
        assertTrue(Files.readString(mine).contains("60 mm"));
        assertEquals(before, Files.readString(sample));
    }

    @Test
    void oneThatWasOnlyLookedAtIsLeftWithoutAQuestion() {
        samples().get(0).notifyListeners(SWT.Selection, new Event());
        real.settle();
        real.press("deed.close");
        assertTrue(real.has(Link.class, "start.sample"));
        assertTrue(real.window.project().isEmpty());
    }
}
